import { type CellValue } from "./host/functions-host";

/** One cell of a workbook as a file or a person gives it. */
export interface BookCell {
  /** The value typed, or cached beside a formula. */
  readonly value?: CellValue;
  /** As typed, without the equals sign: `RUNOFF.SALTRATIO(B2,C2)`. */
  readonly formula?: string;
  /** The range a file holds an older kind of formula to, which cannot spill beyond it: `B2` or `B2:B9`. */
  readonly fixedTo?: string;
  /** The host's number format code: `yyyy-mm-dd`. */
  readonly numberFormat?: string;
}

export interface BookTable {
  readonly name: string;
  /** Header row included: `A4:K60`. */
  readonly ref: string;
  readonly columns: readonly string[];
  /** Whether the last row holds totals. */
  readonly hasTotals?: boolean;
}

export interface BookSheet {
  readonly name: string;
  /** By address, `B2`. */
  readonly cells: ReadonlyMap<string, BookCell>;
  readonly tables: readonly BookTable[];
  /** Rows hidden by hand or by a filter, counted from 0. */
  readonly hiddenRows?: ReadonlySet<number>;
}

export interface BookName {
  readonly name: string;
  readonly refersTo: string;
  /** The one sheet it is known on, where it is not known on all. */
  readonly onlyOn?: string;
}

export interface Book {
  readonly sheets: readonly BookSheet[];
  /** Defined names: `LimitRatio` refers to `Log!$D$2`. */
  readonly names: readonly BookName[];
  /** Whether dates count from 1904. */
  readonly date1904: boolean;
}

/** What one sheet holds after a calculation. */
export interface ComputedSheet {
  readonly name: string;
  /** Every formula cell and every cell that a formula spilled into, by address. */
  readonly values: ReadonlyMap<string, CellValue>;
  /** The range each spilling formula fills, by its anchor's address. */
  readonly spills: ReadonlyMap<string, string>;
}
