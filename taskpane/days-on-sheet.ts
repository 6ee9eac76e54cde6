import { type OwnSheet } from "./sheet/own-sheet";
import { type SheetPlace } from "./sheet/selected-place";
import { dayHeading } from "./templates/watch/labels";

/** Columns of the days after, counted from 0. */
const dateColumn = 1;
const readingColumns = [3, 4];

/**
 * Where the days after stand on a sheet of ours, their headings included; `undefined` where nothing was read on any.
 */
export function daysOn({ sheetId, cells }: OwnSheet): SheetPlace | undefined {
  const heading = cells.findIndex((row) => row[dateColumn] === dayHeading);
  if (heading < 0) return undefined;
  const below = cells.slice(heading + 1).findIndex(([first]) => first === "" || first === undefined);
  const rows = below < 0 ? cells.length - heading : below + 1;
  const isRead = cells
    .slice(heading + 1, heading + rows)
    .some((row) => readingColumns.some((column) => typeof row[column] === "number"));
  if (!isRead) return undefined;
  return { sheetId, blocks: [{ row: heading, column: 0, rows, columns: cells[heading]?.length ?? 1 }] };
}
