import { type ColumnReading, litresPerUnit, type LogQuantity, type LogUnit } from "../../src/index";

/** Where a formula finds one reading of its own row, and the unit that stands there. */
export interface LogCell {
  /** `C5`, or a Table's column of the same row. */
  readonly reference: string;
  readonly unit: LogUnit;
}

/** One row of a log as formulas see it. */
export type LogCells = ReadonlyMap<LogQuantity, LogCell>;

/** The readings of one row, each under the reference that its column has; a column that is not read has none. */
export function logCells(columns: readonly ColumnReading[], referenceOf: (column: number) => string): LogCells {
  const cells = new Map<LogQuantity, LogCell>();
  for (const { column, quantity, unit, read } of columns) {
    if (read && unit !== undefined && !cells.has(quantity))
      cells.set(quantity, { reference: referenceOf(column), unit });
  }
  return cells;
}

/**
 * A Table's column in the formula's own row: `Log[@[Runoff EC]]`; an apostrophe goes before what would end or change
 * the name.
 */
export const inThisRow = (table: string, column: string): string =>
  `${table}[@[${column.replace(/['[\]#@]/g, "'$&")}]]`;

/**
 * The text that reads a cell as the log reader does, and brings it into the engine's unit: what the reader takes is
 * computed, what it leaves out is not. A blank volume stays blank: the desktop hands it over as 0, and a volume of 0 is
 * a reading. It is told by its length, for some sheets take 0="" for true.
 */
export function inEngineUnit({ reference, unit }: LogCell): string {
  const read = `RUNOFF.READING(${reference},"${unit === "" ? "pH" : unit}")`;
  return unit in litresPerUnit ? `IF(LEN(${reference})=0,"",${read})` : read;
}
