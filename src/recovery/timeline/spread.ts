import { median } from "../../maths/median";
import { type TimelinePoint } from "./segments";

/** What a slice of time holds, at its middle. */
export interface SliceSpread {
  readonly day: number;
  readonly low: number;
  readonly middle: number;
  readonly high: number;
}

/**
 * Readings too many to be drawn one by one, told by slices of equal time: the lowest, the median and the highest of
 * each.
 *
 * Nothing is smoothed: every reading lies between low and high of its slice. A slice without a reading is left out.
 *
 * @param points in order of time
 * @param slices how many slices the span is cut into
 * @example spread([1, 2, 3, 4].map((day) => ({ day, value: day % 2, row: 0 })), 1) // [{ day: 2.5, low: 0, middle: 0.5, high: 1 }]
 */
export function spread(points: readonly TimelinePoint[], slices: number): readonly SliceSpread[] {
  const [first, last] = [points[0], points.at(-1)];
  if (first === undefined || last === undefined) return [];
  const width = (last.day - first.day) / slices || 1;
  const held = new Map<number, TimelinePoint[]>();
  for (const point of points) {
    const place = Math.min(slices - 1, Math.floor((point.day - first.day) / width));
    const slice = held.get(place);
    if (slice === undefined) held.set(place, [point]);
    else slice.push(point);
  }
  return [...held.values()].map((slice) => {
    const values = slice.map(({ value }) => value);
    const middle = ((slice[0]?.day ?? 0) + (slice.at(-1)?.day ?? 0)) / 2;
    return { day: middle, low: Math.min(...values), middle: median(values), high: Math.max(...values) };
  });
}
