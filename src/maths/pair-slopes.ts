import { type Dated } from "./dated";
import { inversions } from "./inversions";

/** The slopes of pairs that lie in one narrow interval, sorted, and how many of all pairs are less steep than these. */
export interface SlopeListing {
  readonly below: number;
  readonly slopes: Float64Array;
}

/** The search stops when an interval holds this many slopes for each reading: as much work as one more count. */
const listedPerReading = 8;
/** Slopes closer together than this are one slope: what rounding leaves of 15 digits. */
const sameSlope = 1e-13;

/** How many pairs of readings stand on different days. */
export function pairsOfDifferentDays(ordered: readonly Dated[]): number {
  let [pairs, before] = [0, 0];
  for (const [place, { day }] of ordered.entries()) {
    if (day !== ordered[place - 1]?.day) before = place;
    pairs += before;
  }
  return pairs;
}

/**
 * The slopes near a rank among the slopes of all pairs of readings, without listing all pairs.
 *
 * Formula:  a pair is less steep than m where its later residual v - m d is the smaller one, so a count of inversions says
 *           how many slopes lie below m; m is found by halving, and the last few slopes are listed and sorted
 * Source:   [cole-1989] for the counting; halving in place of its parametric search
 *
 * @param ordered by day, then by value
 * @param rank counted from 0, below `pairsOfDifferentDays`
 */
export function slopesAround(ordered: readonly Dated[], rank: number): SlopeListing {
  const { steepest, finest } = slopeScale(ordered);
  if (steepest === 0) return { below: 0, slopes: Float64Array.of(0) };
  const enough = listedPerReading * ordered.length;
  let [low, high] = [-steepest, steepest];
  let [below, upTo] = [0, pairsOfDifferentDays(ordered)];
  while (upTo - below > enough && high - low > finest + sameSlope * Math.abs(low + high)) {
    const middle = low + (high - low) / 2;
    const lessSteep = inversions(residuals(ordered, middle));
    if (lessSteep <= rank) [low, below] = [middle, lessSteep];
    else [high, upTo] = [middle, lessSteep];
  }
  return { below, slopes: slopesBetween(ordered, [low, high], 2 * enough) };
}

/** A slope beyond that of any pair, and a difference of slopes too fine for the numbers to carry. */
function slopeScale(ordered: readonly Dated[]): { steepest: number; finest: number } {
  let [lowest, highest, gap] = [Infinity, -Infinity, Infinity];
  for (const [place, { day, value }] of ordered.entries()) {
    lowest = Math.min(lowest, value);
    highest = Math.max(highest, value);
    const since = day - (ordered[place - 1]?.day ?? day);
    if (since > 0) gap = Math.min(gap, since);
  }
  const days = (ordered.at(-1)?.day ?? 0) - (ordered[0]?.day ?? 0);
  return { steepest: (2 * (highest - lowest)) / gap, finest: (sameSlope * (highest - lowest)) / days };
}

/** Heights above a line of that slope through the first reading. */
function residuals(ordered: readonly Dated[], slope: number): Float64Array {
  const first = ordered[0] ?? { day: 0, value: 0 };
  return Float64Array.from(ordered, ({ day, value }) => value - first.value - slope * (day - first.day));
}

/** The slopes of the pairs that are not yet inverted at the low slope but are at the high one; at most about `most` of them. */
function slopesBetween(ordered: readonly Dated[], [low, high]: readonly [number, number], most: number): Float64Array {
  const atLow = residuals(ordered, low);
  const atHigh = residuals(ordered, high);
  const places = Int32Array.from(ordered, (_, place) => place).sort((a, b) => (atLow[a] ?? 0) - (atLow[b] ?? 0) || a - b);
  const slopes: number[] = [];
  inversions(Float64Array.from(places, (place) => atHigh[place] ?? 0), (before, after) => {
    const later = ordered[places[after] ?? 0];
    for (const each of before) {
      const earlier = ordered[places[each] ?? 0];
      if (slopes.length >= most || later === undefined || earlier === undefined) return;
      if (later.day > earlier.day) slopes.push((later.value - earlier.value) / (later.day - earlier.day));
    }
  });
  return Float64Array.from(slopes).sort();
}
