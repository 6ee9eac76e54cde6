import { Refusal } from "../refusal";

/** One value and when it was read. */
export interface Dated {
  readonly day: number;
  readonly value: number;
}

/**
 * Readings ordered by day, and within one day by value, so that no answer depends on the order of the rows.
 *
 * @throws {Refusal} `not-a-number` when a day or a value is not finite
 */
export function inOrder(readings: readonly Dated[]): readonly Dated[] {
  let isInOrder = true;
  let before = readings[0];
  for (const reading of readings) {
    const { day, value } = reading;
    if (!(Number.isFinite(day) && Number.isFinite(value)))
      throw new Refusal("not-a-number", { quantity: "a reading", given: `${value} on day ${day}` });
    if (before !== undefined && byDay(before, reading) > 0) isInOrder = false;
    before = reading;
  }
  return isInOrder ? readings : [...readings].sort(byDay);
}

const byDay = (a: Dated, b: Dated): number => a.day - b.day || a.value - b.value;

/** Days and values side by side, for counting among them. */
export interface DatedColumns {
  readonly days: Float64Array;
  readonly values: Float64Array;
}

/** The readings as two columns, in their own order. */
export function columnsOf(readings: readonly Dated[]): DatedColumns {
  const [days, values] = [new Float64Array(readings.length), new Float64Array(readings.length)];
  for (const [place, { day, value }] of readings.entries()) {
    days[place] = day;
    values[place] = value;
  }
  return { days, values };
}

/** Days from the first to the last of readings in order of time. */
export const daysSpanned = (ordered: readonly Dated[]): number => (ordered.at(-1)?.day ?? 0) - (ordered[0]?.day ?? 0);
