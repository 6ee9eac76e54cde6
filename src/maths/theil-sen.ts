import { Refusal } from "../refusal";
import { columnsOf, type Dated, inOrder } from "./dated";
import { median } from "./median";
import { commonStep } from "./common-step";
import { slopesAround } from "./pair-slopes";
import { pairsOfDifferentDays, type Slope } from "./slope-edge";

export interface RobustLine {
  /** Change of the value a day. */
  readonly slope: number;
  /** The line's value on a day. */
  readonly at: (day: number) => number;
}

/**
 * Theil-Sen line: its slope is the median of the slopes of all pairs of readings, so more than a quarter of the
 * readings may be wrong before it follows them.
 *
 * Feeds the drift of a log, where one mistyped reading must not turn the direction.
 *
 * Formula:  slope = median of (vj - vi) / (dj - di) over pairs on different days; an even number: mean of the middle
 *           two line = median(v) + slope (d - median(d))
 * Valid:    rows in any order, several readings on one day; work grows as n log n
 * Source:   [sen-1968]; the line's height as in SciPy's theilslopes [scipy-1.10.1]
 *
 * @throws {Refusal} `not-enough-readings` with fewer than two different days
 * @example theilSen([{ day: 0, value: 4 }, { day: 1, value: 3 }, { day: 2, value: 2 }]).slope // -1
 */
export function theilSen(readings: readonly Dated[]): RobustLine {
  const ordered = inOrder(readings);
  const { days, values } = columnsOf(ordered);
  const pairs = pairsOfDifferentDays(days);
  if (!(pairs > 0)) {
    const given = Math.min(1, ordered.length);
    throw new Refusal("not-enough-readings", { quantity: "days with a reading", given, allowed: "2" });
  }
  const slope = medianSlope(days, values, pairs);
  const [day, value] = [median(days), median(values)];
  return { slope, at: (onDay) => value + slope * (onDay - day) };
}

function medianSlope(days: Float64Array, values: Float64Array, pairs: number): number {
  const [inDays, inValues] = [inSteps(days, days), inSteps(values, Float64Array.from(values).sort())];
  const points = { days: inDays.counts, values: inValues.counts };
  const size = ({ rise, run }: Slope): number => (rise * inValues.step) / (run * inDays.step);
  const [lowRank, highRank] = [Math.floor((pairs - 1) / 2), Math.floor(pairs / 2)];
  const around = slopesAround(points, lowRank);
  const low = size(around.slopeAt(lowRank));
  if (highRank === lowRank) return low;
  const high = size((highRank < around.upTo ? around : slopesAround(points, highRank)).slopeAt(highRank));
  return low + (high - low) / 2;
}

/** Distances from the first, in whole steps where there is a common one. */
function inSteps(values: Float64Array, sorted: Float64Array): { readonly counts: Float64Array; readonly step: number } {
  const first = sorted[0] ?? NaN;
  const step = commonStep(sorted);
  if (step === undefined) return { counts: values.map((value) => value - first), step: 1 };
  return { counts: values.map((value) => Math.round((value - first) / step)), step };
}
