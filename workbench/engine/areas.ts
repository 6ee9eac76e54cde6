import { parseRange, rangeRef } from "hucre";

/** Rows and columns counted from 0, the last ones included. */
export type Area = ReturnType<typeof parseRange>;

/** The area that `B9:A2` or `$B$2` names, whichever corners it is named by. */
export function areaCalled(range: string): Area {
  const { startRow, endRow, startCol, endCol } = parseRange(range.replaceAll("$", "").toUpperCase());
  const [top, bottom, left, right] = [Math.min(startRow, endRow), Math.max(startRow, endRow), Math.min(startCol, endCol), Math.max(startCol, endCol)];
  return { startRow: top, endRow: bottom, startCol: left, endCol: right };
}

export function isMany({ startRow, endRow, startCol, endCol }: Area): boolean {
  return endRow > startRow || endCol > startCol;
}

export function meet(one: Area, other: Area): boolean {
  const rowsMeet = one.startRow <= other.endRow && other.startRow <= one.endRow;
  return rowsMeet && one.startCol <= other.endCol && other.startCol <= one.endCol;
}

export function written({ startRow, startCol, endRow, endCol }: Area): string {
  return rangeRef(startRow, startCol, endRow, endCol);
}

/** A cell's name within a book: `0!B2`. */
export function keyOf(sheet: number, address: string): string {
  return `${sheet}!${address}`;
}
