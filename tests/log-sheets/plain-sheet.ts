import { parse } from "csv-parse/sync";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { type LogAnswers, type LogGrid, type LogReading } from "../../src/index";

/** A log and its reading, written by hand from what a person would say; rows and columns as the sheet numbers them. */
export interface PlainSheet {
  readonly about: string;
  readonly cells?: LogGrid["cells"];
  readonly numberFormats?: readonly (readonly string[])[];
  readonly date1904?: boolean;
  readonly delimiter?: string;
  readonly answers?: LogAnswers;
  readonly columns: readonly string[];
  readonly headerRows: readonly number[];
  /** The fields of a row that this log holds; all others must be undefined. */
  readonly fields: readonly string[];
  readonly rows: readonly (readonly unknown[])[];
  readonly setAside: readonly (readonly [row: number, says: string])[];
  readonly blankRows?: number;
  readonly problems: readonly (readonly [cell: string, used: "used" | "not used", says: string])[];
  readonly questions: readonly (readonly [kind: string, columns: string])[];
  readonly vessels: readonly string[];
}

const folder = import.meta.dirname;
export const plainSheetNames = readdirSync(folder).flatMap((file) => /^(\d.*)\.json$/.exec(file)?.[1] ?? []);

export function plainSheet(name: string): PlainSheet {
  return JSON.parse(readFileSync(`${folder}/${name}.json`, "utf8")) as PlainSheet;
}

export function plainGrid(name: string, sheet: PlainSheet): LogGrid {
  const csv = `${folder}/${name}.csv`;
  const cells = existsSync(csv)
    ? parse(readFileSync(csv, "utf8"), { delimiter: sheet.delimiter ?? ",", relax_column_count: true })
    : (sheet.cells ?? []);
  return {
    cells,
    ...(sheet.numberFormats === undefined ? {} : { numberFormats: sheet.numberFormats }),
    ...(sheet.date1904 === undefined ? {} : { date1904: sheet.date1904 }),
  };
}

/** Each column as the data writes it: quantity and unit, "?" for a unit that is not known. */
export const columnsSaid = ({ columns }: LogReading): string[] =>
  columns.map(({ quantity, unit }) => (unit === undefined ? `${quantity} ?` : `${quantity} ${unit}`.trim()));
