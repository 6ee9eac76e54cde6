import { asTheyStand, inversions } from "./inversions";

/** Readings in order of day and value, counted in steps from the first one. */
export interface SlopePoints {
  readonly days: Float64Array;
  readonly values: Float64Array;
}

/** A slope as the pair of readings has it, undivided. */
export interface Slope {
  readonly rise: number;
  readonly run: number;
}

/** A cut through the slopes of all pairs. */
export interface SlopeEdge {
  /** How many slopes lie below it. */
  readonly rank: number;
  /** The readings ordered so that just the pairs below it are turned round. */
  readonly order: Int32Array;
}

/** Below all slopes: the readings as they stand. */
export function belowAll({ days }: SlopePoints): SlopeEdge {
  return { rank: 0, order: asTheyStand(days.length) };
}

/** Above all slopes: the days turned round, readings of one day as they stand. */
export function aboveAll(points: SlopePoints): SlopeEdge {
  const order = tiesTurned(belowAll(points).order, new Float64Array(points.days.length), points.days);
  return { rank: pairsOfDifferentDays(points.days), order };
}

/** How many pairs of readings stand on different days. */
export function pairsOfDifferentDays(days: Float64Array): number {
  let [pairs, before] = [0, 0];
  for (const [place, day] of days.entries()) {
    if (day !== days[place - 1]) before = place;
    pairs += before;
  }
  return pairs;
}

/**
 * The edges just below and just above a slope; between them lie the pairs of exactly this slope.
 *
 * Formula:  a pair is less steep than rise / run where its later v run - rise d is the smaller one, equally steep where
 *           both are equal: a count of inversions
 * Source:   [cole-1989]
 */
export function edgesAt(
  { days, values }: SlopePoints,
  { rise, run }: Slope,
): readonly [below: SlopeEdge, above: SlopeEdge] {
  const heights = values.map((value, place) => value * run - rise * (days[place] ?? 0));
  const { count, order } = inversions(heights);
  const equal = tied(order, heights, days);
  const above = equal === 0 ? order : tiesTurned(order, heights, days);
  return [
    { rank: count, order },
    { rank: count + equal, order: above },
  ];
}

/** Pairs of equal height on different days. */
function tied(order: Int32Array, heights: Float64Array, days: Float64Array): number {
  let [pairs, sameHeight, sameDay] = [0, 0, 0];
  for (let at = 1; at < order.length; at++) {
    const [place = 0, before = 0] = [order[at], order[at - 1]];
    const isTied = heights[place] === heights[before];
    sameHeight = isTied ? sameHeight + 1 : 0;
    sameDay = isTied && days[place] === days[before] ? sameDay + 1 : 0;
    pairs += sameHeight - sameDay;
  }
  return pairs;
}

/** The same order, but among equal heights the later day first. */
function tiesTurned(order: Int32Array, heights: Float64Array, days: Float64Array): Int32Array {
  const turned = new Int32Array(order.length);
  const isNew = (at: number, column: Float64Array): boolean => column[order[at] ?? 0] !== column[order[at - 1] ?? 0];
  for (let start = 0; start < order.length; ) {
    let end = start + 1;
    while (end < order.length && !isNew(end, heights)) end++;
    for (let last = end; last > start; ) {
      let first = last - 1;
      while (first > start && !isNew(first, days)) first--;
      turned.set(order.subarray(first, last), start + end - last);
      last = first;
    }
    start = end;
  }
  return turned;
}
