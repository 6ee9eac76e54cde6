import { middleOf } from "../../maths/median";
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
  const sliceOf = ({ day }: TimelinePoint): number => Math.min(slices - 1, Math.floor((day - first.day) / width));
  const found: SliceSpread[] = [];
  for (let start = 0; start < points.length; ) {
    const slice = sliceOf(points[start] ?? first);
    let end = start + 1;
    while (end < points.length && sliceOf(points[end] ?? last) === slice) end += 1;
    found.push(spreadOf(points.slice(start, end)));
    start = end;
  }
  return found;
}

function spreadOf(slice: readonly TimelinePoint[]): SliceSpread {
  const values = new Float64Array(slice.map(({ value }) => value)).sort();
  const day = ((slice[0]?.day ?? 0) + (slice.at(-1)?.day ?? 0)) / 2;
  return { day, low: values[0] ?? NaN, middle: middleOf(values), high: values.at(-1) ?? NaN };
}
