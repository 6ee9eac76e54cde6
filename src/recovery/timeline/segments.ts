import { median } from "../../maths/median";

export interface TimelinePoint {
  readonly day: number;
  readonly value: number;
  /** The row of the grid it was read in. */
  readonly row: number;
}

/** A pause this many times longer than the usual one between two readings is a gap. Common practice. */
const gapPauses = 3;

/** A pause of up to two days is never a gap: a missed day is not a lost week. Common practice. */
const shortestGapDays = 2;

/**
 * Readings cut where the log has a gap, so that no line claims what was not measured.
 *
 * @param points in order of time
 * @example segments([1, 2, 3, 20].map((day, row) => ({ day, value: 2, row }))).length // 2
 */
export function segments(points: readonly TimelinePoint[]): readonly (readonly TimelinePoint[])[] {
  const pauseBefore = (place: number): number => (points[place]?.day ?? NaN) - (points[place - 1]?.day ?? NaN);
  const afterPauses: number[] = [];
  for (let place = 1; place < points.length; place++)
    if (pauseBefore(place) > shortestGapDays) afterPauses.push(place);
  if (afterPauses.length === 0) return points.length === 0 ? [] : [points];
  const usual = median(points.slice(1).map((_, at) => pauseBefore(at + 1)));
  const afterGaps = afterPauses.filter((place) => pauseBefore(place) > gapPauses * usual);
  return [0, ...afterGaps].map((start, nth) => points.slice(start, afterGaps[nth]));
}
