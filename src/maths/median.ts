import { Refusal } from "../refusal";

/**
 * The middle value; of an even number of values, the mean of the two in the middle.
 *
 * Feeds every robust figure: half of the readings may be wrong before it follows them.
 *
 * Source:   [hollander-wolfe-1999]
 *
 * @throws {Refusal} `not-enough-readings` of no values, `not-a-number` of a value that is not finite
 * @example median([4, 1, 3, 2]) // 2.5
 */
export function median(values: readonly number[] | Float64Array): number {
  return middleOf(Float64Array.from(values).sort());
}

/** The median of values that are sorted already, with the same refusals. */
export function middleOf(sorted: Float64Array): number {
  const low = sorted[Math.floor((sorted.length - 1) / 2)];
  const high = sorted[Math.floor(sorted.length / 2)];
  if (low === undefined || high === undefined) {
    throw new Refusal("not-enough-readings", { quantity: "median", given: 0, allowed: "1" });
  }
  // What is not finite stands at an end: NaN is sorted last.
  if (Number.isFinite(sorted[0]) && Number.isFinite(sorted.at(-1))) return low + (high - low) / 2;
  throw new Refusal("not-a-number", { quantity: "one of the values", given: "NaN or Infinity" });
}
