import { type LogQuantity } from "../../src/index";
import { type RootZone } from "../root-zone";
import { workWords as words } from "../words/sheet-work";
import { inExcel } from "../workbook";
import { rangeOf } from "./address";
import { logPlace } from "./log-place";

/** What may stand in a row before anything was measured. */
const written: ReadonlySet<LogQuantity> = new Set<LogQuantity>(["date", "time", "vessel", "notes", "other"]);

/** Where the next reading goes, rows and columns counted from 0, and what is to be done there. */
export interface NextRow {
  readonly row: number;
  readonly column: number;
  readonly words: string;
}

/** The row under the last reading, if no reading stands in it; where the newest stands on top, the row of that one. */
export async function nextRow(zone: RootZone): Promise<NextRow> {
  const { selection: { sheetId, columnNumbers }, reading } = zone;
  const { firstRow, lastRow, firstColumn: column, lastColumn } = logPlace(zone);
  if (isNewestFirst(reading.rows.map(({ day }) => day)))
    return { row: firstRow, column, words: words.newestFirst(firstRow + 1) };
  const row = lastRow + 1;
  const measured = reading.columns.flatMap((each) =>
    each.read && !written.has(each.quantity) ? [(columnNumbers[each.column] ?? each.column) - column] : []);
  const isFree = await inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    const range = rangeOf(sheet, { row, column, rows: 1, columns: lastColumn - column + 1 }).load("values");
    await context.sync();
    return measured.every((place) => (range.values as unknown[][])[0]?.[place] === "");
  });
  return { row, column, words: isFree ? words.nextRow(row + 1) : words.noRowBelow(row + 1) };
}

function isNewestFirst(days: readonly (number | undefined)[]): boolean {
  const known = days.filter((day) => day !== undefined);
  return (known[0] ?? 0) > (known.at(-1) ?? 0);
}
