import { type EcLogUnit, type LogUnit, type TemperatureLogUnit, type VolumeLogUnit } from "../cells/units";
import { type LogQuantity, type LogRow } from "./log";

export type DateOrder = "day first" | "month first";

/** A part of a sheet as the host or a file gives it: raw cell contents, a row an array. */
export interface LogGrid {
  readonly cells: readonly (readonly unknown[])[];
  /** The host's number format codes, shaped like `cells`. */
  readonly numberFormats?: readonly (readonly string[])[];
  /** Whether the workbook's dates count from 1904. */
  readonly date1904?: boolean;
  /** Where rows and columns stand on their sheet, counted from 0: for the words of questions and reasons. */
  readonly rowNumbers?: readonly number[];
  readonly columnNumbers?: readonly number[];
  /** How many rows the sheet hides, which are not among the cells; and which columns of the grid it hides. */
  readonly hiddenRows?: number;
  readonly hiddenColumns?: readonly number[];
}

/** What a person answered; columns counted from 0 within the grid. */
export interface LogAnswers {
  readonly columns?: Readonly<Record<number, ColumnAnswer>>;
  /** ppm per mS/cm: 500, 640 or 700. */
  readonly ppmScale?: number;
  /** For the EC columns whose unit the sheet does not tell. */
  readonly ecUnit?: EcLogUnit;
  readonly volumeUnit?: VolumeLogUnit;
  readonly temperatureUnit?: TemperatureLogUnit;
  readonly dateOrder?: DateOrder;
  /** Row of the grid, counted from 0; -1 when there is none. */
  readonly headerRow?: number;
}

export interface ColumnAnswer {
  readonly quantity: LogQuantity;
  readonly unit?: LogUnit;
}

export type LogQuestionKind =
  | "what is this column"
  | "ppm scale"
  | "EC unit"
  | "volume unit"
  | "temperature unit"
  | "date order"
  | "which row is the header"
  | "layout";

/** What the sheet does not tell and only its keeper knows. */
export interface LogQuestion {
  readonly kind: LogQuestionKind;
  readonly text: string;
  /** Empty where the answer is to be given in the sheet itself. */
  readonly choices: readonly string[];
  /** The columns that wait for the answer, counted from 0 within the grid. */
  readonly columns: readonly number[];
}

export interface ColumnReading {
  readonly column: number;
  /** As the sheet names the column: A, AA. */
  readonly letters: string;
  /** The words over the column, header rows joined. */
  readonly header: string;
  readonly quantity: LogQuantity;
  /** Where another column says row by row which side was measured; `quantity` is "other" then. */
  readonly bySide?: BySide | undefined;
  /** `undefined` while it is not known. */
  readonly unit: LogUnit | undefined;
  /** In words: what the reading of this column rests on. */
  readonly why: string;
  /** Whether its cells go into the rows; a column with an open question waits. */
  readonly read: boolean;
}

/** What a column holds in the rows of input and in those of runoff, and the column that tells them apart. */
export interface BySide {
  readonly column: number;
  readonly input: LogQuantity;
  readonly runoff: LogQuantity;
}

/** A whole row that is not used. */
export interface SetAside {
  readonly row: number;
  readonly column?: number;
  readonly reason: string;
}

/** A cell of a used row: left out, or used with a doubt. */
export interface CellProblem {
  readonly row: number;
  readonly column: number;
  readonly used: boolean;
  readonly reason: string;
}

/** A log, read. Used, set aside, blank and header rows are all rows of the grid, each counted once: see `rowsUsed`. */
export interface LogReading {
  /** Header and units rows; what stands above them is set aside, or blank. */
  readonly headerRows: readonly number[];
  readonly columns: readonly ColumnReading[];
  readonly rows: readonly LogRow[];
  readonly setAside: readonly SetAside[];
  readonly problems: readonly CellProblem[];
  readonly blankRows: number;
  readonly questions: readonly LogQuestion[];
  /**
   * Sentences on the log as a whole, to stand where the judgement stands: rows without a date, columns that wait,
   * hidden rows.
   */
  readonly remarks: readonly string[];
  /** In the order of their first appearance. */
  readonly vessels: readonly string[];
}
