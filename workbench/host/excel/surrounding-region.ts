import { type Area, areaAt } from "./area";
import { bounding, intersection } from "./area-maths";
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
  const seed = { ...start, rowCount: Math.min(start.rowCount, filled.row + filled.rowCount), columnCount: Math.min(start.columnCount, filled.column + filled.columnCount) };
  return grown(seed, anyFilled);
}

/** Grows one step on each side that touches a filled cell (corners too) until none does. */
function grown(area: Area, anyFilled: (area: Area) => boolean): Area {
  let region = area;
  for (;;) {
    const sides = neighbours(region).filter(anyFilled);
    if (sides.length === 0) return region;
    const next = sides.reduce((all, side) => bounding(all, trimmed(side, region)), region);
    region = next;
  }
}

/** The strips one cell wide around an area, corners included. */
function neighbours({ sheetId, row, column, rowCount, columnCount }: Area): Area[] {
  const [top, left] = [Math.max(0, row - 1), Math.max(0, column - 1)];
  const [height, width] = [row + rowCount + 1 - top, column + columnCount + 1 - left];
  return [
    ...(row > 0 ? [areaAt(sheetId, row - 1, left, 1, width)] : []),
    areaAt(sheetId, row + rowCount, left, 1, width),
    ...(column > 0 ? [areaAt(sheetId, top, column - 1, height, 1)] : []),
    areaAt(sheetId, top, column + columnCount, height, 1),
  ];
}

/** A strip without the corners that its neighbours did not ask for: only its own side grows. */
function trimmed(side: Area, region: Area): Area {
  return side.rowCount === 1 && side.row !== region.row
    ? { ...side, column: region.column, columnCount: region.columnCount }
    : { ...side, row: region.row, rowCount: region.rowCount };
}
