import { type LogGrid } from "./reading";

/** A column's letters, counted from 0: 0 is A, 26 is AA. */
export function columnLetters(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : columnLetters(Math.floor(column / 26) - 1) + letter;
}

/** A column of a grid as its sheet names it. */
export const lettersIn = ({ columnNumbers }: LogGrid, column: number): string => columnLetters(columnNumbers?.[column] ?? column);

/** A row of a grid as its sheet numbers it, from 1. */
export const rowIn = ({ rowNumbers }: LogGrid, row: number): number => (rowNumbers?.[row] ?? row) + 1;
