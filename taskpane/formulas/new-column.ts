import { type Accepts } from "../templates/sheet-template";
import { formulaFor } from "./column-formula";
import { type ComputedColumn, type FormulaOptions } from "./computed-columns";
import { type LogCells } from "./log-cell";

/** A column as it is put beside a log or into its Table: computed, or empty and to be filled in. */
export interface NewColumn {
  readonly header: string;
  readonly numberFormat: string;
  /** What stands in one row; an empty text where the person writes. */
  readonly formula: (cells: LogCells) => string;
  readonly accepts?: Accepts;
}

export const computedAs = (columns: readonly ComputedColumn[], options: FormulaOptions): NewColumn[] =>
  columns.map((column) => ({ ...column, formula: (cells) => formulaFor(column, cells, options) }));
