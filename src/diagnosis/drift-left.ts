import { type Dated, inOrder } from "../maths/dated";
import { limitsInOrder } from "../maths/limits";
import { mannKendall } from "../maths/mann-kendall";
import { theilSen } from "../maths/theil-sen";
import { inUnitOfLimits } from "../readings/series-unit";

/** A drift counts when chance alone shows one as strong, up or down, less often than this. Common practice. */
const driftChance = 0.05;

/**
 * Days until the drift of a reading takes it out of the band.
 *
 * Feeds when to act in a quiet week. It says nothing rather than guess: without a drift that stands out of the scatter
 * (5 or more readings) there is no date.
 *
 * Formula:  days = (limit ahead - level) / drift; level = the Theil-Sen line on the last day; 0 when it already stands
 *           outside
 * Valid:    while the pot goes on as it did; Mann-Kendall chance below 5 %, two-sided
 * Source:   [sen-1968], [mann-1945]
 *
 * @returns days from the last reading, 0 or more; `undefined` when the drift is not told from chance, or leads nowhere
 * @throws {Refusal} `order` when low is not below high, `wrong-unit` for readings a hundredfold beyond their limits,
 *   `not-enough-readings` as `drift`
 * @example driftLeft([1, 2, 3, 4, 5].map((value) => ({ day: value, value })), 0, 7) // 2
 */
export function driftLeft(readings: readonly Dated[], low: number, high: number): number | undefined {
  limitsInOrder(low, high);
  inUnitOfLimits(readings.map(({ value }) => value), low, high);
  const { slope, at } = theilSen(readings);
  const { s, twoSided } = mannKendall(readings);
  if (!(twoSided < driftChance) || Math.sign(s) !== Math.sign(slope)) return undefined;
  const level = at(inOrder(readings).at(-1)?.day ?? NaN);
  if (level < low || level > high) return 0;
  return ((slope > 0 ? high : low) - level) / slope;
}
