import { type TimelinePoint } from "./segments";

/** The first, the lowest, the highest and the last. */
const keptInSlice = 4;

/**
 * Fewer points with the same look: of each slice of time the first, the lowest, the highest and the last reading stay, so
 * that shape and extremes survive. A run that is short enough is left as it is.
 *
 * @param points in order of time
 * @param slices how many slices the span is cut into: one for each pixel drawn
 * @returns at most 4 points a slice, each one of the given points
 * @example thin([{ day: 1, value: 2, row: 0 }], 300).length // 1
 */
export function thin(points: readonly TimelinePoint[], slices: number): readonly TimelinePoint[] {
  const first = points[0];
  const last = points.at(-1);
  if (first === undefined || last === undefined || points.length <= keptInSlice * slices) return points;
  const width = (last.day - first.day) / slices || 1;
  const kept: TimelinePoint[] = [];
  let slice: TimelinePoint[] = [];
  let current = 0;
  for (const each of points) {
    const place = Math.min(slices - 1, Math.floor((each.day - first.day) / width));
    if (place !== current) {
      kept.push(...outline(slice));
      slice = [];
      current = place;
    }
    slice.push(each);
  }
  return [...kept, ...outline(slice)];
}

/** The first, the lowest, the highest and the last of a slice, each once, in order of time. */
function outline(slice: readonly TimelinePoint[]): readonly TimelinePoint[] {
  if (slice.length <= keptInSlice) return slice;
  let [low, high] = [0, 0];
  for (const [place, { value }] of slice.entries()) {
    if (value < (slice[low]?.value ?? value)) low = place;
    if (value > (slice[high]?.value ?? value)) high = place;
  }
  const places = [...new Set([0, low, high, slice.length - 1])].sort((a, b) => a - b);
  return places.flatMap((place) => slice[place] ?? []);
}
