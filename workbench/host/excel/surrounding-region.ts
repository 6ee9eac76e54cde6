import type { Area } from "./area";
import { bounding, firstCell, intersection } from "./area-maths";
import type { SheetStore } from "./sheet-store";

/** The block of filled cells around an area, as far as the first wholly blank row and column on every side. */
export function surroundingRegion(store: SheetStore, start: Area): Area {
  const filled = store.filledArea(start.sheetId, true);
  if (filled === undefined) return firstCell(start);
  const values = store.values(filled);
  const anyFilled = (area: Area): boolean => {
    const part = intersection(area, filled);
    if (part === undefined) return false;
    const rows = values.slice(part.row - filled.row, part.row - filled.row + part.rowCount);
    return rows.some((row) => row.slice(part.column - filled.column, part.column - filled.column + part.columnCount).some((value) => value !== ""));
  };
  // Of whole columns and rows only the part that reaches to the last filled cell counts.
  const rowCount = Math.max(1, Math.min(start.rowCount, filled.row + filled.rowCount - start.row));
  const columnCount = Math.max(1, Math.min(start.columnCount, filled.column + filled.columnCount - start.column));
  return grown({ ...start, rowCount, columnCount }, anyFilled);
}

type Change = (area: Area) => Area;
const above: Change = (area) => ({ ...area, row: area.row - 1, rowCount: 1 });
const below: Change = (area) => ({ ...area, row: area.row + area.rowCount, rowCount: 1 });
const left: Change = (area) => ({ ...area, column: area.column - 1, columnCount: 1 });
const right: Change = (area) => ({ ...area, column: area.column + area.columnCount, columnCount: 1 });
const wider: Change = (area) => ({ ...area, column: area.column - 1, columnCount: area.columnCount + 2 });
const taller: Change = (area) => ({ ...area, row: area.row - 1, rowCount: area.rowCount + 2 });

/** The strip one cell wide along each side, and how it takes in its corners. */
const sides = [[above, wider], [below, wider], [left, taller], [right, taller]] as const;

/** Grows over each side as long as a filled cell touches it (corners too), until no side has one. */
function grown(area: Area, anyFilled: (area: Area) => boolean): Area {
  let region = area;
  for (const [strip, withCorners] of sides) {
    while (anyFilled(withCorners(strip(region)))) region = bounding(region, strip(region));
  }
  return region === area ? area : grown(region, anyFilled);
}
