import { type Area, areaAt, sheetColumns, sheetRows } from "./area";

/** The cells two areas share, or nothing. */
export function intersection(a: Area, b: Area): Area | undefined {
  if (a.sheetId !== b.sheetId) return undefined;
  const [top, left] = [Math.max(a.row, b.row), Math.max(a.column, b.column)];
  const [bottom, right] = [Math.min(a.row + a.rowCount, b.row + b.rowCount), Math.min(a.column + a.columnCount, b.column + b.columnCount)];
  return bottom > top && right > left ? areaAt(a.sheetId, top, left, bottom - top, right - left) : undefined;
}

export const touches = (a: Area, b: Area): boolean => intersection(a, b) !== undefined;

/** The smallest area that holds both. */
export function bounding(a: Area, b: Area): Area {
  const [top, left] = [Math.min(a.row, b.row), Math.min(a.column, b.column)];
  const [bottom, right] = [Math.max(a.row + a.rowCount, b.row + b.rowCount), Math.max(a.column + a.columnCount, b.column + b.columnCount)];
  return areaAt(a.sheetId, top, left, bottom - top, right - left);
}

/** The same rectangle elsewhere, grown or shrunk. @throws {HostError} `InvalidArgument` when it leaves the sheet */
export function moved(area: Area, rows: number, columns: number, moreRows = 0, moreColumns = 0): Area {
  return areaAt(area.sheetId, area.row + rows, area.column + columns, area.rowCount + moreRows, area.columnCount + moreColumns);
}

export const cellCountOf = ({ rowCount, columnCount }: Area): number => rowCount * columnCount;

/** The first cell of an area. */
export const firstCell = (area: Area): Area => ({ ...area, rowCount: 1, columnCount: 1 });

/** Whether the area is made of whole columns or whole rows; the host hands out no values of such an area. */
export function isUnbounded(area: Area): boolean {
  return area.rowCount === sheetRows || area.columnCount === sheetColumns;
}

/** One answer for each cell, in the area's shape. */
export function mapCells<Answer>(area: Area, answer: (row: number, column: number) => Answer): Answer[][] {
  return Array.from({ length: area.rowCount }, (_, i) => Array.from({ length: area.columnCount }, (__, j) => answer(area.row + i, area.column + j)));
}

export type Line = "row" | "column";

/** The first of an area's rows or columns, and how many they are. */
export function span({ row, column, rowCount, columnCount }: Area, line: Line): { readonly first: number; readonly count: number } {
  return line === "row" ? { first: row, count: rowCount } : { first: column, count: columnCount };
}

/** The smallest area that holds all cells told of. */
export class Bounds {
  private top = Infinity;
  private left = Infinity;
  private bottom = -1;
  private right = -1;

  include(row: number, column: number): void {
    [this.top, this.bottom] = [Math.min(this.top, row), Math.max(this.bottom, row)];
    [this.left, this.right] = [Math.min(this.left, column), Math.max(this.right, column)];
  }

  on(sheetId: string): Area | undefined {
    return this.bottom < 0 ? undefined : areaAt(sheetId, this.top, this.left, this.bottom - this.top + 1, this.right - this.left + 1);
  }
}
