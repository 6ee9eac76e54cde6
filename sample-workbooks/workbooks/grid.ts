import { address } from "../xlsx/address";
import { type Cell } from "../xlsx/spec";
import { type StyleName } from "../xlsx/style-table";

/** A typed value with its look. */
export const typed = (value: string | number | undefined, style?: StyleName): Cell => ({
  ...(value === undefined ? {} : { value }),
  ...(style === undefined ? {} : { style }),
});

/** A formula, without the equals sign, with its look. */
export const formula = (text: string, style: StyleName): Cell => ({ formula: text, style });

/** Cells by address from rows of cells, the first of them in row 1 and column A unless told otherwise; a gap stays empty. */
export function gridOf(rows: readonly (readonly (Cell | undefined)[])[], { row: top = 0, column: left = 0 } = {}): Map<string, Cell> {
  const cells = new Map<string, Cell>();
  rows.forEach((line, row) => {
    line.forEach((cell, column) => {
      if (cell !== undefined) cells.set(address({ row: top + row, column: left + column }), cell);
    });
  });
  return cells;
}
