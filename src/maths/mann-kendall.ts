import { columnsOf, type Dated, inOrder } from "./dated";
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
  const { days, values: inTime } = columnsOf(ordered);
  const values = Float64Array.from(inTime).sort();
  const isRepeated = (column: Float64Array) => (place: number): boolean => column[place] === column[place - 1];
  const [sameDay, sameValue, sameBefore] = [isRepeated(days), isRepeated(values), isRepeated(inTime)];
  const ties = [tieSizes(days.length, sameDay), tieSizes(days.length, sameValue)] as const;
  const both = tieSizes(days.length, (place) => sameDay(place) && sameBefore(place));
  const untied = pairs([ordered.length]) - pairs(ties[0]) - pairs(ties[1]) + pairs(both);
  const s = untied - 2 * inversions(inTime).count;
  const oneSided = chanceOfTrend(Math.abs(s), ordered, ties);
  return { s, oneSided, twoSided: Math.min(1, 2 * oneSided) };
}

/** The sizes of the runs, longer than one, in which each is told to equal the one before. */
function tieSizes(length: number, equalsBefore: (place: number) => boolean): number[] {
  const sizes: number[] = [];
  for (let start = 0; start < length; ) {
    let end = start + 1;
    while (end < length && equalsBefore(end)) end++;
    if (end - start > 1) sizes.push(end - start);
    start = end;
  }
  return sizes;
}

const pairs = (sizes: readonly number[]): number => sizes.reduce((sum, size) => sum + (size * (size - 1)) / 2, 0);
