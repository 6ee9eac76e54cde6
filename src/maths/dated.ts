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
  for (const { day, value } of readings) {
    if (Number.isFinite(day) && Number.isFinite(value)) continue;
    throw new Refusal("not-a-number", { quantity: "a reading", given: `${value} on day ${day}` });
  }
  return [...readings].sort((a, b) => a.day - b.day || a.value - b.value);
}

/** Days from the first to the last of readings in order of time. */
export const daysSpanned = (ordered: readonly Dated[]): number => (ordered.at(-1)?.day ?? 0) - (ordered[0]?.day ?? 0);
