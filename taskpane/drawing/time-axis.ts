import { utcFormat } from "d3-time-format";
import { type Timeline } from "../../src/index";
import { instant } from "./instant";
import { type Layout, sizes } from "./layout";
import { element, px, words } from "./markup";
import { type DrawingTheme } from "./themes";

/** How a date is written when the span is up to so many days, and about how many pixels that takes. */
const grains = [
  { days: 3, pattern: "%-d %b %H:%M", pixels: 96 },
  { days: 240, pattern: "%-d %b", pixels: 66 },
  { days: 1500, pattern: "%b %Y", pixels: 66 },
  { days: Infinity, pattern: "%Y", pixels: 66 },
] as const;

/** The time axis under the last lane: dates at the grain that the span asks for, or the readings' numbers. */
export function timeAxis(model: Timeline, { time, right, left, plotBottom, lanes }: Layout, theme: DrawingTheme): string {
  const { pattern, pixels } = grainOf(model.span);
  const ticks = ticksOf(model, time, Math.max(2, Math.floor((right - left) / pixels)));
  const format = model.axis === "dates" ? dateFormat(pattern) : (tick: Date | number) => `no. ${Number(tick)}`;
  const drawn = ticks.map((tick) => {
    const x = time(tick);
    const anchor = x > right - pixels / 2 ? "end" : x < left + pixels / 2 ? "start" : "middle";
    const inLanes = lanes.map(({ top, bottom }) => `M${px(x)} ${px(top)}V${px(bottom)}`).join("");
    const rule = element("path", { d: `${inLanes}M${px(x)} ${px(plotBottom)}v4`, stroke: theme.grid, "stroke-width": 0.7 });
    return rule + words(format(tick), { x, y: plotBottom + 17, fill: theme.faintInk, "font-size": sizes.text, "text-anchor": anchor });
  });
  const base = element("line", { x1: left, x2: right, y1: plotBottom, y2: plotBottom, stroke: theme.faintInk, "stroke-width": 0.8 });
  return drawn.join("") + base;
}

const spanInDays = (span: Timeline["span"]): number => (span === undefined ? 0 : span[1] - span[0]);

const grainOf = (span: Timeline["span"]): (typeof grains)[number] => grains.find(({ days }) => spanInDays(span) <= days) ?? grains[3];

/** A log of one moment has one label, its own. */
function ticksOf({ axis, span }: Timeline, time: Layout["time"], count: number): (Date | number)[] {
  if (span !== undefined && spanInDays(span) === 0) return [axis === "dates" ? instant(span[0]) : span[0]];
  return time.ticks(count).filter((tick) => axis === "dates" || Number.isInteger(tick));
}

function dateFormat(pattern: string): (tick: Date | number) => string {
  const format = utcFormat(pattern);
  return (tick) => format(tick instanceof Date ? tick : instant(tick));
}

/** A day in full, for words beside the picture. */
export function dayInWords(day: number): string {
  return utcFormat(Number.isInteger(day) ? "%-d %b %Y" : "%-d %b %Y %H:%M")(instant(day));
}
