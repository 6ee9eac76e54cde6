import { cellRef, parseCellRef, parseRange } from "hucre";

/** A place on a sheet, both counted from 0. */
export interface Place {
  readonly row: number;
  readonly column: number;
}

export const address = ({ row, column }: Place): string => cellRef(row, column);

/** The place that an address such as `B2` names. */
export function placeOf(cellAddress: string): Place {
  const { row, col } = parseCellRef(cellAddress);
  return { row, column: col };
}

/** Reading order: by row, then by column. */
export const inReadingOrder = (a: Place, b: Place): number => a.row - b.row || a.column - b.column;

/** Both corners of a range such as `A1:C3`; a single cell is a range of one. */
export function corners(range: string): readonly [first: Place, last: Place] {
  const { startRow, startCol, endRow, endCol } = parseRange(range);
  return [
    { row: startRow, column: startCol },
    { row: endRow, column: endCol },
  ];
}

/** The fewest ranges of one column each that hold these places and no others. */
export function columnRanges(places: readonly Place[]): string[] {
  const runs: { readonly top: Place; bottom: Place }[] = [];
  for (const place of [...places].sort((a, b) => a.column - b.column || a.row - b.row)) {
    const last = runs.at(-1);
    if (last?.bottom.column === place.column && last.bottom.row + 1 === place.row) last.bottom = place;
    else runs.push({ top: place, bottom: place });
  }
  return runs.map(({ top, bottom }) => (top === bottom ? address(top) : `${address(top)}:${address(bottom)}`));
}

/** The addresses of a range, in reading order. */
export function addressesIn(range: string): string[] {
  const [first, last] = corners(range);
  const found: string[] = [];
  for (let row = first.row; row <= last.row; row++) {
    for (let column = first.column; column <= last.column; column++) found.push(address({ row, column }));
  }
  return found;
}
