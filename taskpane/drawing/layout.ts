import { extent } from "d3-array";
import { scaleLinear, type ScaleLinear, scaleUtc, type ScaleTime } from "d3-scale";
import { type Timeline, type TimelineLane } from "../../src/index";
import { instant } from "./instant";

/** Pixels. The text is readable at the narrowest pane, 320 wide. */
export const sizes = {
  left: 38,
  right: 12,
  top: 6,
  legend: 20,
  eventRow: 14,
  laneHeader: 36,
  lanePlot: 68,
  laneGap: 10,
  axis: 24,
  text: 11,
  title: 12,
} as const;

export interface PlacedLane {
  readonly lane: TimelineLane;
  /** Where the lane's words begin, and where its plot begins and ends. */
  readonly headerTop: number;
  readonly top: number;
  readonly bottom: number;
  readonly y: ScaleLinear<number, number>;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly right: number;
  /** Where the first lane's plot begins and the last one's ends. */
  readonly plotTop: number;
  readonly plotBottom: number;
  /** Where the lanes of each group end and their dates stand. */
  readonly axes: readonly number[];
  readonly lanes: readonly PlacedLane[];
  /** From a day to pixels. */
  readonly x: (day: number) => number;
  readonly time: ScaleTime<number, number> | ScaleLinear<number, number>;
  readonly span: Timeline["span"];
}

export type Across = Pick<Layout, "width" | "left" | "right" | "x" | "time" | "span">;

/** Where days stand in a picture of that width. */
export function acrossOf(model: Timeline, width: number): Across {
  const [left, right] = [sizes.left, Math.max(sizes.left + 40, width - sizes.right)];
  const time = timeScale(model, [left, right]);
  const x = (day: number): number => (model.axis === "dates" ? time(instant(day)) : time(day));
  return { width, left, right, x, time, span: model.span };
}

/** Places the lanes one under another; `header` is what legend and events take up above them. */
export function layoutOf(model: Timeline, across: Across, header: number): Layout {
  let top = sizes.top + header;
  const axes: number[] = [];
  const lanes = model.lanes.map((lane, place): PlacedLane => {
    const headerTop = top;
    const plot = [headerTop + sizes.laneHeader, headerTop + sizes.laneHeader + sizes.lanePlot] as const;
    const isLast = model.lanes[place + 1]?.group !== lane.group;
    if (isLast) axes.push(plot[1]);
    top = plot[1] + (isLast ? sizes.axis : 0) + sizes.laneGap;
    return { lane, headerTop, top: plot[0], bottom: plot[1], y: valueScale(lane, plot) };
  });
  const plotBottom = lanes.at(-1)?.bottom ?? top;
  return { ...across, height: plotBottom + sizes.axis, plotTop: lanes[0]?.top ?? top, plotBottom, axes, lanes };
}

/** One day or one reading still gets a span around it. */
function timeScale({ axis, span }: Timeline, range: [number, number]): Layout["time"] {
  const [first, last] = span ?? [0, 1];
  const [from, to] = last > first ? [first, last] : [first - 0.5, first + 0.5];
  return axis === "dates" ? scaleUtc([instant(from), instant(to)], range) : scaleLinear([from, to], range);
}

/** All readings and the bands, and never less than the lane's least span, so that noise stays small. */
function valueScale(
  { series, bands, leastSpan }: TimelineLane,
  [top, bottom]: readonly [number, number],
): ScaleLinear<number, number> {
  const ends = series.flatMap(({ segments }) => segments.flatMap((segment) => extent(segment, ({ value }) => value)));
  const edges = bands.flatMap(({ limits }) => limits);
  const [low = 0, high = 1] = extent([...ends, ...edges].filter((end) => end !== undefined));
  const padding = Math.max(0, (leastSpan - (high - low)) / 2);
  const floor = low >= 0 ? Math.max(0, low - padding) : low - padding;
  return scaleLinear([floor, Math.max(high + padding, floor + leastSpan)], [bottom, top]).nice(3);
}
