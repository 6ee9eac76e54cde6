import { bisector } from "d3-array";
import { type TimelineReading } from "../../src/index";
import { type Drawing } from "./timeline-drawing";

const byDay = bisector<TimelineReading, number>(({ day }) => day);

/** The place of the reading that is drawn nearest to a pixel, counted from the left edge of the picture. */
export function nearest(readings: readonly TimelineReading[], { x, plot }: Drawing, pixel: number): number {
  const [first, last] = [readings[0]?.day ?? 0, readings.at(-1)?.day ?? 0];
  const share = (pixel - plot.left) / (plot.right - plot.left);
  const after = byDay.left([...readings], first + share * (last - first));
  const distance = (place: number): number => Math.abs(x(readings[place]?.day ?? Infinity) - pixel);
  return after > 0 && (after >= readings.length || distance(after - 1) <= distance(after)) ? after - 1 : after;
}
