import { type Dated, inOrder } from "./dated";
import { inversions } from "./inversions";
import { chanceOfTrend } from "./trend-chance";

export interface TrendTest {
  /** Rising pairs less falling pairs: positive when the values rise with the days. */
  readonly s: number;
  /** The chance that values without a trend show one at least this strong in this direction, 0 to 1. */
  readonly oneSided: number;
  /** The same in either direction. */
  readonly twoSided: number;
}

/**
 * Mann-Kendall test: do the values rise or fall with the days, whatever the shape of their course?
 *
 * Feeds the drift's significance and the recovery trend. With fewer than 4 readings no trend can be told from chance
 * (one-sided, 5 %).
 *
 * Formula:  S = sum over pairs of sign(vj - vi) sign(dj - di), in n log n by counting inversions
 *           chance: exact up to 50 readings, beyond by the normal curve with ties in the variance (`chanceOfTrend`)
 * Source:   [mann-1945], [kendall-1975]; the counting [knight-1966]
 *
 * @example mannKendall([5, 6, 11, 8, 10].map((value, day) => ({ day, value }))).s // 6
 */
export function mannKendall(readings: readonly Dated[]): TrendTest {
  const ordered = inOrder(readings);
  const days = tieSizes(ordered.map(({ day }) => day));
  const values = tieSizes(ordered.map(({ value }) => value).sort((a, b) => a - b));
  const both = tieSizes(ordered.map(({ day, value }) => `${day} ${value}`));
  const untied = pairs([ordered.length]) - pairs(days) - pairs(values) + pairs(both);
  const falling = inversions(Float64Array.from(ordered, ({ value }) => value));
  const s = untied - 2 * falling;
  const oneSided = chanceOfTrend(Math.abs(s), ordered, [days, values]);
  return { s, oneSided, twoSided: Math.min(1, 2 * oneSided) };
}

/** The sizes of the runs of equal neighbours that are longer than one. */
function tieSizes(sorted: readonly (number | string)[]): number[] {
  const sizes: number[] = [];
  let size = 0;
  for (const [place, each] of sorted.entries()) {
    size++;
    if (each === sorted[place + 1]) continue;
    if (size > 1) sizes.push(size);
    size = 0;
  }
  return sizes;
}

const pairs = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
