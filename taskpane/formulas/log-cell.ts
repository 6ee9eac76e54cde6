import { type ColumnReading, ecUnits, litresPerUnit, type LogQuantity, type LogUnit } from "../../src/index";

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
    if (read && unit !== undefined && !cells.has(quantity)) cells.set(quantity, { reference: referenceOf(column), unit });
  }
  return cells;
}

/** A Table's column in the formula's own row: `Log[@[Runoff EC]]`; an apostrophe goes before what would end or change the name. */
export const inThisRow = (table: string, column: string): string => `${table}[@[${column.replace(/['[\]#@]/g, "'$&")}]]`;

/** Where 0 C stands on the Fahrenheit scale, and how many F one C is; both exact. */
const [freezingFahrenheit, fahrenheitPerCelsius] = [32, 1.8];

/** What a unit needs before the engine can take its figure, written so that a person can check it in the cell. */
const conversions: Partial<Record<LogUnit, string>> = {
  "uS/cm": `/${ecUnits["uS/cm"]}`,
  "mS/m": `/${ecUnits["mS/m"]}`,
  "S/m": `/${ecUnits["S/m"]}`,
  L: "",
  mL: "/1000",
  gal: `*${litresPerUnit.gal}`,
  qt: `*${litresPerUnit.qt}`,
  "fl oz": `*${litresPerUnit["fl oz"]}`,
};

/**
 * The text that brings a reading into the engine's unit. A blank stays a blank: arithmetic would make a 0 of it, and a
 * volume of 0 is a reading, so that a bare reference to a blank volume is not safe either.
 */
export function inEngineUnit({ reference, unit }: LogCell): string {
  const scale = /^ppm (\d+)$/.exec(unit)?.[1];
  if (scale !== undefined) return `RUNOFF.ECFROMPPM(${reference},${scale})`;
  const unlessBlank = (text: string): string => `IF(${reference}="","",${text})`;
  if (unit === "F") return unlessBlank(`(${reference}-${freezingFahrenheit})/${fahrenheitPerCelsius}`);
  const conversion = conversions[unit];
  return conversion === undefined ? reference : unlessBlank(`${reference}${conversion}`);
}
