import { columnLetters } from "../cells/column-letters";
import { type LogGrid } from "./reading";

/** A column of a grid as its sheet names it. */
export const lettersIn = ({ columnNumbers }: LogGrid, column: number): string =>
  columnLetters(columnNumbers?.[column] ?? column);

/** A row of a grid as its sheet numbers it, from 1. */
export const rowIn = ({ rowNumbers }: LogGrid, row: number): number => (rowNumbers?.[row] ?? row) + 1;
