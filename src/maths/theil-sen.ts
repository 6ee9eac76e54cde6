import { Refusal } from "../refusal";
import { type Dated, inOrder } from "./dated";
import { median } from "./median";
import { pairsOfDifferentDays, slopesAround } from "./pair-slopes";

export interface RobustLine {
  /** Change of the value a day. */
  readonly slope: number;
  /** The line's value on a day. */
  readonly at: (day: number) => number;
}

/**
 * Theil-Sen line: its slope is the median of the slopes of all pairs of readings, so more than a quarter of the readings
 * may be wrong before it follows them.
 *
 * Feeds the drift of a log, where one mistyped reading must not turn the direction.
 *
 * Formula:  slope = median of (vj - vi) / (dj - di) over pairs on different days; an even number: mean of the middle two
 *           line  = median(v) + slope (d - median(d))
 * Valid:    rows in any order, several readings on one day; work grows as n log n
 * Source:   [sen-1968]; the line's height as in SciPy's theilslopes [scipy-1.10.1]
 *
 * @throws {Refusal} `not-enough-readings` with fewer than two different days
 * @example theilSen([{ day: 0, value: 4 }, { day: 1, value: 3 }, { day: 2, value: 2 }]).slope // -1
 */
export function theilSen(readings: readonly Dated[]): RobustLine {
  const ordered = inOrder(readings);
  const pairs = pairsOfDifferentDays(ordered);
  if (!(pairs > 0)) {
    const given = Math.min(1, ordered.length);
    throw new Refusal("not-enough-readings", { quantity: "days with a reading", given, allowed: "2" });
  }
  const slope = medianSlope(ordered, pairs);
  const [day, value] = [median(ordered.map((each) => each.day)), median(ordered.map((each) => each.value))];
  return { slope, at: (onDay) => value + slope * (onDay - day) };
}

function medianSlope(ordered: readonly Dated[], pairs: number): number {
  const lowRank = Math.floor((pairs - 1) / 2);
  const highRank = Math.floor(pairs / 2);
  const listing = slopesAround(ordered, lowRank);
  const low = atRank(listing, lowRank);
  if (highRank === lowRank) return low;
  const high = atRank(highRank - listing.below < listing.slopes.length ? listing : slopesAround(ordered, highRank), highRank);
  return low + (high - low) / 2;
}

/** The slope at a rank; where thousands of pairs share one slope the listing is cut short, and its last is that slope too. */
function atRank({ below, slopes }: ReturnType<typeof slopesAround>, rank: number): number {
  const slope = slopes[Math.min(rank - below, slopes.length - 1)];
  if (slope !== undefined) return slope;
  throw new Refusal("outside-validity", {
    quantity: "a change between readings",
    given: "at almost the same moment",
    allowed: "moments a second apart or more",
  });
}
