import { scaleLinear } from "d3-scale";
import { type TimelineLane } from "../../src/index";
import { seriesMarkup } from "./marks";
import { element, escaped, words } from "./markup";
import { edges, tints } from "./target-bands";
import { type ThemeName, themes } from "./themes";

/** What all pots side by side share, so that they can be compared at a glance. */
export interface SharedScale {
  readonly days: readonly [first: number, last: number];
  readonly values: readonly [low: number, high: number];
}

const sizes = { height: 58, edge: 4, top: 18, text: 11, mark: 3 } as const;

/** The scale on which every lane has room, each with its limits, those that stood before among them. */
export function sharedScale(lanes: readonly TimelineLane[]): SharedScale {
  const points = lanes.flatMap(({ series }) => series.flatMap(({ segments }) => segments.flat()));
  const limits = lanes.flatMap(({ bands }) => bands.flatMap((band) => band.limits));
  const ends = (values: readonly number[]): readonly [number, number] =>
    values.reduce<readonly [number, number]>(
      ([low, high], value) => [Math.min(low, value), Math.max(high, value)],
      [Infinity, -Infinity],
    );
  return {
    days: ends(points.map(({ day }) => day)),
    values: ends([...points.map(({ value }) => value), ...limits]),
  };
}

/** One pot of many: the runoff of a lane within its limits, as in the large picture, and its last figure. */
export function drawSmallPot(
  lane: TimelineLane,
  { days, values }: SharedScale,
  { width, theme: look, title }: { readonly width: number; readonly theme: ThemeName; readonly title: string },
): string {
  const theme = themes[look];
  const x = scaleLinear([...days], [sizes.edge, width - sizes.edge]);
  const y = scaleLinear([...values], [sizes.height - sizes.edge, sizes.top]);
  const place = { left: 0, right: width, x, y, theme };
  const series = lane.series.filter(({ role }) => role === "runoff");
  const last = series[0]?.segments.at(-1)?.at(-1);
  const body = [
    element("rect", { x: 0, y: 0, width, height: sizes.height, fill: theme.paper }),
    tints(lane, place),
    edges(lane, place),
    ...series.map((each) => seriesMarkup(each, { x, y, width: width - 2 * sizes.edge, theme })),
    last === undefined
      ? ""
      : element("rect", {
          x: x(last.day) - sizes.mark,
          y: y(last.value) - sizes.mark,
          width: 2 * sizes.mark,
          height: 2 * sizes.mark,
          fill: theme.runoff,
        }),
    last === undefined
      ? ""
      : words(last.value.toFixed(lane.decimals), {
          x: width - sizes.edge,
          y: 12,
          fill: theme.ink,
          "font-size": sizes.text,
          "text-anchor": "end",
        }),
  ].join("");
  return element(
    "svg",
    {
      xmlns: "http://www.w3.org/2000/svg",
      width,
      height: sizes.height,
      viewBox: `0 0 ${Math.round(width)} ${sizes.height}`,
      role: "img",
      "font-family": "system-ui, 'Segoe UI', sans-serif",
    },
    `<title>${escaped(title)}</title>${body}`,
  );
}
