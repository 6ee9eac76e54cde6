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
  const longest = longestPause(points);
  const cut: TimelinePoint[][] = [];
  let before: TimelinePoint | undefined;
  for (const each of points) {
    const current = cut.at(-1);
    if (before === undefined || current === undefined || each.day - before.day > longest) cut.push([each]);
    else current.push(each);
    before = each;
  }
  return cut;
}

function longestPause(points: readonly TimelinePoint[]): number {
  const pauses = points.slice(1).map(({ day }, place) => day - (points[place]?.day ?? day));
  if (pauses.length === 0) return shortestGapDays;
  return Math.max(shortestGapDays, gapPauses * median(pauses));
}
