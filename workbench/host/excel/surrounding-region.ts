import { type Area, areaAt, sheetColumns, sheetRows } from "./area";
import { intersection, moved } from "./area-maths";
import type { SheetStore } from "./sheet-store";

/** The block of filled cells around an area, as far as the first wholly blank row and column on every side. */
export function surroundingRegion(store: SheetStore, start: Area): Area {
  const filled = store.filledArea(start.sheetId, true);
  if (filled === undefined) return { ...start, rowCount: 1, columnCount: 1 };
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

/** Grows over each side as long as a filled cell touches it (corners too), until no side has one. */
function grown(area: Area, anyFilled: (area: Area) => boolean): Area {
  let region = area;
  for (;;) {
    const before = region;
    for (const { strip, grow } of sides) {
      for (let beside = strip(region); beside !== undefined && anyFilled(beside); beside = strip(region)) region = grow(region);
    }
    if (region === before) return region;
  }
}

/** The strip one cell wide along a side, its corners included, and the area grown by that side. */
const sides: readonly { strip: (area: Area) => Area | undefined; grow: (area: Area) => Area }[] = [
  { strip: (area) => (area.row > 0 ? across(area, area.row - 1) : undefined), grow: (area) => moved(area, -1, 0, 1, 0) },
  { strip: (area) => across(area, area.row + area.rowCount), grow: (area) => moved(area, 0, 0, 1, 0) },
  { strip: (area) => (area.column > 0 ? down(area, area.column - 1) : undefined), grow: (area) => moved(area, 0, -1, 0, 1) },
  { strip: (area) => down(area, area.column + area.columnCount), grow: (area) => moved(area, 0, 0, 0, 1) },
];

function across({ sheetId, column, columnCount }: Area, row: number): Area | undefined {
  const left = Math.max(0, column - 1);
  return row < sheetRows ? areaAt(sheetId, row, left, 1, Math.min(column + columnCount + 1, sheetColumns) - left) : undefined;
}

function down({ sheetId, row, rowCount }: Area, column: number): Area | undefined {
  const top = Math.max(0, row - 1);
  return column < sheetColumns ? areaAt(sheetId, top, column, Math.min(row + rowCount + 1, sheetRows) - top, 1) : undefined;
}
