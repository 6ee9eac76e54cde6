import type { ConditionalFormatRecord, ValidationRecord } from "./host/excel/book-records";
import type { CellLook } from "./host/excel/sheet-store";
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

/** How a cell looks, blank ones too. */
export interface BookLook extends CellLook {
  readonly numberFormat?: string;
}

/** A rule in the host's own words, and the look it gives. */
export type BookConditionalFormat = Omit<ConditionalFormatRecord, "id" | "area"> & { readonly ranges: readonly string[] };

/** What may be typed, in the host's own words. */
export type BookValidation = Omit<ValidationRecord, "area"> & { readonly ranges: readonly string[] };

export interface BookChart {
  /** In the host's words: `Line`. */
  readonly type: string;
  readonly title: string;
  /** What it draws: `Log!$C$2:$C$40`. */
  readonly sources: readonly string[];
  /** The cells it lies over: `A25:C44`. */
  readonly over: string;
}

/** What a sheet looks like beside its values; only the grid asks for it. */
export interface SheetLooks {
  /** By address. */
  readonly cells: ReadonlyMap<string, BookLook>;
  /** In digits of the usual font, as a file gives them; by column counted from 0. */
  readonly columnWidths: ReadonlyMap<number, number>;
  /** In points, by row counted from 0. */
  readonly rowHeights: ReadonlyMap<number, number>;
  readonly hiddenColumns: ReadonlySet<number>;
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly gridLines: boolean;
  readonly merged: readonly string[];
  readonly isHidden: boolean;
  readonly conditionalFormats: readonly BookConditionalFormat[];
  readonly validations: readonly BookValidation[];
  readonly charts: readonly BookChart[];
  /** By address. */
  readonly notes: ReadonlyMap<string, string>;
}

export interface BookSheet {
  readonly name: string;
  /** By address, `B2`. */
  readonly cells: ReadonlyMap<string, BookCell>;
  readonly tables: readonly BookTable[];
  /** Rows hidden by hand or by a filter, counted from 0. */
  readonly hiddenRows?: ReadonlySet<number>;
  readonly looks?: SheetLooks;
  /** What add-ins keep with the sheet, by name. */
  readonly kept?: ReadonlyMap<string, string>;
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
