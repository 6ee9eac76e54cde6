import { quantities, referenceCelsius, standardPercentPerCelsius } from "../../src/index";
import { type LogCell } from "./log-cell";
import { outside, type PlainCell, plainCell, whenRead } from "./plain-cell";

/** A reading of a row as a formula of the sheet takes it: its cell, and a temperature where it is brought to 25 C. */
export interface PlainReading {
  readonly cells: readonly [own: PlainCell, temperature?: PlainCell];
  /** The text of its figure, in the engine's unit. */
  readonly value: string;
}

/** The readings of one row; `undefined` where the log has no such column. */
export type PlainRow<Quantity> = (quantity: Quantity) => PlainReading | undefined;

/** @param temperature of the solution, for an EC that the meter did not bring to 25 C */
export function plainReading(own: LogCell, temperature?: LogCell): PlainReading {
  const cell = plainCell(own);
  if (temperature === undefined) return { cells: [cell], value: cell.value };
  const warm = plainCell(temperature);
  const factor = `(1+${standardPercentPerCelsius / 100}*(${warm.value}-${referenceCelsius}))`;
  return { cells: [cell, warm], value: `(${cell.value}/${factor})` };
}

/** The formula once all of these are read, looked at in this order. */
export function whenAllRead(readings: readonly PlainReading[], then: string): string {
  const cells = readings.flatMap((reading) => reading.cells).filter((cell) => cell !== undefined);
  const once = new Map(cells.map((cell) => [cell.reference, cell]));
  return [...once.values()].reduceRight((inner, cell) => whenRead(cell, inner), then);
}

/** The formula once an EC is one that can be: bringing it to 25 C may have taken it beyond all limits. */
export function whenPossible(readings: readonly PlainReading[], then: string): string {
  const [, highest] = quantities.ec.physical;
  const broughtTo25 = readings.filter(({ cells }) => cells.length > 1);
  return broughtTo25.reduceRight((inner, { value }) => `IF(${value}>${highest},NA(),${inner})`, then);
}

/** A condition: there is a figure, of whatever size. */
export function isTaken({ cells }: PlainReading): string {
  const there = cells.filter((cell) => cell !== undefined);
  return `AND(${there.map(({ reference }) => `ISNUMBER(${reference}),${reference}<>0`).join(",")})`;
}

/** A condition: there is something that is refused. */
export function isRefused({ cells: [own, temperature] }: PlainReading): string {
  if (temperature === undefined) return refuses(own, outside(own));
  return refuses(own, `IF(${outside(own)},TRUE,${refuses(temperature, outside(temperature))})`);
}

const refuses = ({ reference }: PlainCell, measured: string): string =>
  `IF(ISNUMBER(${reference}),IF(${reference}=0,FALSE,${measured}),ISERROR(${reference}))`;
