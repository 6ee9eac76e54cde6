import { type CellValue } from "../../workbench/host/functions-host";
import { type Style, type StyleName } from "./style-table";

/** One cell to be written. A formula is given as a person types it, without the equals sign. */
export interface Cell {
  readonly value?: CellValue;
  readonly formula?: string;
  /** The range that this formula's answer fills, when it is more than the cell itself. */
  readonly spill?: string;
  /** One of the samples' own looks, or a look given whole. */
  readonly style?: StyleName | Style;
  /** Shown while the pointer rests on the cell. */
  readonly note?: string;
}

export interface TableSpec {
  readonly name: string;
  /** Header row included. */
  readonly ref: string;
  /** In order; a column with a formula is a calculated one. */
  readonly columns: readonly { readonly name: string; readonly formula?: string | undefined }[];
}

/** A format that a condition switches on. Its condition names cells only: the host takes no custom function here. */
export interface ConditionalFormat {
  readonly range: string;
  /** As typed, for the range's first cell: `AND(N2<>"",N2<>"in band")`. */
  readonly when: string;
  readonly look: "marked" | "questioned";
}

export interface Validation {
  /** One range or several, with spaces between them. */
  readonly range: string;
  /** Left out where anything may be typed. */
  readonly allowed?: Allowed;
  /** Shown while the cell is chosen, and when what was typed lies outside; the person may keep it all the same. */
  readonly hint: string;
}

export type Allowed =
  | { readonly between: readonly [low: number, high: number] }
  | { readonly list: readonly string[] }
  /** A date after this day of the sheet's count. */
  | { readonly afterDay: number };

export interface ChartLine {
  /** The cell that names the line, and the cells with its values: `Log!$C$1`, `Log!$C$2:$C$40`. */
  readonly name: string;
  readonly cells: string;
  readonly look: "read" | "given" | "readings";
}

/** A native chart with lines, over a range of cells. */
export interface LineChart {
  readonly at: string;
  readonly title: string;
  /** For people who do not see it. */
  readonly alternative: string;
  /** Without cells the points are counted from 1. */
  readonly across: { readonly cells?: string; readonly title: string; readonly format: string; readonly dates: boolean };
  readonly unit: string;
  /** Ends of the upright axis; the host chooses without them. */
  readonly between?: readonly [low: number, high: number];
  readonly lines: readonly ChartLine[];
}

/** A text that an add-in keeps with a sheet; no cell shows it. */
export interface KeptText {
  readonly name: string;
  readonly text: string;
}

export interface SheetSpec {
  readonly name: string;
  /** By address. */
  readonly cells: ReadonlyMap<string, Cell>;
  /** In characters, from column A on. */
  readonly widths: readonly number[];
  readonly tables?: readonly TableSpec[];
  readonly formats?: readonly ConditionalFormat[];
  readonly validations?: readonly Validation[];
  readonly charts?: readonly LineChart[];
  /** In points, by row counted from 1; other rows take the host's own height. */
  readonly heights?: ReadonlyMap<number, number>;
  /** Rows and columns that stay in view. */
  readonly frozen?: { readonly rows: number; readonly columns: number };
  /** Print rows repeated on every page: `1:1`. */
  readonly printedHeader?: string;
  /** What is printed on one page, `A1:G60`; without it the whole sheet, as wide as a page. */
  readonly printArea?: string;
  readonly portrait?: boolean;
  readonly gridLines?: boolean;
  readonly kept?: KeptText;
}

export interface WorkbookSpec {
  readonly title: string;
  readonly sheets: readonly SheetSpec[];
  readonly names: readonly { readonly name: string; readonly refersTo: string }[];
}
