import { inversions, type OnInversions } from "./inversions";
import { aboveAll, belowAll, edgesAt, type Slope, type SlopeEdge, type SlopePoints } from "./slope-edge";

/** Some of the slopes of all pairs: those with ranks from `from`, up to but without `upTo`. */
export interface RankedSlopes {
  readonly from: number;
  readonly upTo: number;
  readonly slopeAt: (rank: number) => Slope;
}

/**
 * So many slopes are looked at in one go: a sample of an interval, or all of it. Larger samples cost more and narrow
 * more.
 */
const sampleSize = 32_768;
/** Standard deviations of a rank in a sample that the next interval spans on each side: 3 miss once in 370. */
const spanned = 3;

type Interval = readonly [low: SlopeEdge, high: SlopeEdge];

const slopesIn = ([low, high]: Interval): number => high.rank - low.rank;

/**
 * The slopes near a rank among the slopes of all pairs of readings, without listing all pairs.
 *
 * Formula:  a sample of the slopes between two edges gives two slopes close around the rank; the slopes below each are
 *           counted, and the two become the edges, until so few are left between them that all can be listed. A slope
 *           that thousands of pairs share is met as soon as the sample holds it
 * Source:   [dillencourt-1992]
 *
 * @param rank counted from 0, below the number of pairs on different days
 */
export function slopesAround(points: SlopePoints, rank: number): RankedSlopes {
  const uniform = minimalStandard();
  let interval: Interval = [belowAll(points), aboveAll(points)];
  while (slopesIn(interval) > sampleSize) {
    const sample = rising(sampled(points, interval, uniform));
    const found = narrowed(points, interval, sample, rank);
    if ("slopeAt" in found) return found;
    // In numbers with rounding in them, slopes that cannot be told apart are one.
    if (slopesIn(found) >= slopesIn(interval)) return shared(interval, sample.at(Math.floor(sample.count / 2)));
    interval = found;
  }
  const [{ rank: from }, { rank: upTo }] = interval;
  const { at, count } = rising(sampled(points, interval, uniform));
  return { from, upTo, slopeAt: (wanted) => at(Math.min(Math.max(0, wanted - from), count - 1)) };
}

/** A slope that all pairs between two edges have. */
function shared([low, high]: Interval, slope: Slope): RankedSlopes {
  return { from: low.rank, upTo: high.rank, slopeAt: () => slope };
}

/** The interval cut at two slopes of the sample, or the ranks of one that is asked for. */
function narrowed(points: SlopePoints, interval: Interval, sample: Rising, rank: number): Interval | RankedSlopes {
  let [low, high] = interval;
  const place = ((rank - low.rank) / slopesIn(interval)) * sample.count;
  const span = (spanned * Math.sqrt(sample.count)) / 2;
  for (const at of [Math.floor(place - span), Math.ceil(place + span)]) {
    if (at < 0 || at >= sample.count) continue;
    const slope = sample.at(at);
    const [below, above] = edgesAt(points, slope);
    if (below.rank <= rank && rank < above.rank) return shared([below, above], slope);
    if (above.rank <= rank) low = above.rank > low.rank ? above : low;
    else high = below.rank < high.rank ? below : high;
  }
  return [low, high];
}

/** One out of each of equal parts of the slopes between two edges; where there are few, each of them. */
function sampled(points: SlopePoints, [low, high]: Interval, uniform: () => number): readonly Slope[] {
  const part = Math.max(1, slopesIn([low, high]) / sampleSize);
  const chosen = (count: number): number => Math.floor(part * count + (part > 1 ? part * uniform() : 0));
  const sample: Slope[] = [];
  let [seen, next] = [0, chosen(0)];
  pairsBetween(low, high, (run, start, end, after) => {
    for (; next < seen + end - start; next = chosen(sample.length)) {
      sample.push(slopeOf(points, low.order[run[start + next - seen] ?? 0], low.order[after]));
    }
    seen += end - start;
  });
  return sample;
}

function slopeOf({ days, values }: SlopePoints, earlier = 0, later = 0): Slope {
  return {
    rise: (values[later] ?? NaN) - (values[earlier] ?? NaN),
    run: (days[later] ?? NaN) - (days[earlier] ?? NaN),
  };
}

/** The pairs turned round at the high edge and not yet at the low one, by their places in the low edge's order. */
function pairsBetween(low: SlopeEdge, high: SlopeEdge, onPairs: OnInversions): void {
  const placeAtHigh = new Float64Array(high.order.length);
  for (let at = 0; at < placeAtHigh.length; at++) placeAtHigh[high.order[at] ?? 0] = at;
  const inLowOrder = new Float64Array(low.order.length);
  for (let at = 0; at < inLowOrder.length; at++) inLowOrder[at] = placeAtHigh[low.order[at] ?? 0] ?? 0;
  inversions(inLowOrder, onPairs);
}

interface Rising {
  readonly count: number;
  readonly at: (place: number) => Slope;
}

/** Slopes in rising order; only the few that are asked for are looked up again by their size. */
function rising(slopes: readonly Slope[]): Rising {
  const size = ({ rise, run }: Slope): number => rise / run;
  const sizes = Float64Array.from(slopes, size).sort();
  const level: Slope = { rise: 0, run: 1 };
  return { count: sizes.length, at: (place) => slopes.find((slope) => size(slope) === sizes[place]) ?? level };
}

/**
 * Numbers from 0 to 1 by the minimal standard generator [park-miller-1988]: the same log gives the same answer
 * everywhere.
 */
function minimalStandard(): () => number {
  const [multiplier, modulus] = [48_271, 2_147_483_647];
  let state = 1;
  return () => (state = (state * multiplier) % modulus) / modulus;
}
