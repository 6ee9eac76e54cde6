import { utcFormat } from "d3-time-format";
import { type Timeline } from "../../src/index";
import { instant } from "./instant";
import { type Layout, sizes } from "./layout";
import { element, px, widthOf, words } from "./markup";
import { type DrawingTheme } from "./themes";

/** How a date is written when the span is up to so many days. */
const grains = [
  { days: 3, pattern: "%-d %b %H:%M" },
  { days: 240, pattern: "%-d %b" },
  { days: 1500, pattern: "%b %Y" },
  { days: Infinity, pattern: "%Y" },
] as const;

/** Pixels between two dates. */
const apart = 10;

/**
 * The time axis under each group of lanes: dates at the grain that the span asks for, or the readings' numbers; none
 * meets another.
 */
export function timeAxis(model: Timeline, { time, right, left, axes, lanes }: Layout, theme: DrawingTheme): string {
  const format =
    model.axis === "dates" ? dateFormat(grainOf(model).pattern) : (tick: Date | number) => `no. ${Number(tick)}`;
  const ticks = ticksOf(model, time, Math.max(2, Math.floor((right - left) / (sizes.text * 4))));
  const labelled = apartFrom(ticks.map((tick) => labelAt(format(tick), time(tick), [left, right])));
  const rules = labelled.map(({ x }) => {
    const inLanes = lanes.map(({ top, bottom }) => `M${px(x)} ${px(top)}V${px(bottom)}`).join("");
    const ends = axes.map((bottom) => `M${px(x)} ${px(bottom)}v4`).join("");
    return element("path", { d: inLanes + ends, stroke: theme.grid, "stroke-width": 0.7 });
  });
  const names = axes.flatMap((bottom) => labelled.map(({ text, x, anchor }) =>
    words(text, { x, y: bottom + 17, fill: theme.faintInk, "font-size": sizes.text, "text-anchor": anchor })));
  const bases = axes.map((bottom) =>
    element("line", { x1: left, x2: right, y1: bottom, y2: bottom, stroke: theme.faintInk, "stroke-width": 0.8 }));
  return rules.join("") + names.join("") + bases.join("");
}

interface Label {
  readonly text: string;
  readonly x: number;
  readonly anchor: "start" | "middle" | "end";
  readonly from: number;
  readonly to: number;
}

/** A date under its tick; at the ends of the axis it leans inwards. */
function labelAt(text: string, x: number, [left, right]: readonly [number, number]): Label {
  const width = widthOf(text, sizes.text);
  if (x > right - width / 2) return { text, x, anchor: "end", from: x - width, to: x };
  if (x < left + width / 2) return { text, x, anchor: "start", from: x, to: x + width };
  return { text, x, anchor: "middle", from: x - width / 2, to: x + width / 2 };
}

/** Every date that there is room for, from the last one back: the days that matter now are named first. */
function apartFrom(labels: readonly Label[]): Label[] {
  const kept: Label[] = [];
  for (const label of [...labels].reverse()) {
    const [next] = kept;
    if (next === undefined || label.to + apart <= next.from) kept.unshift(label);
  }
  return kept;
}

const spanInDays = (span: Timeline["span"]): number => (span === undefined ? 0 : span[1] - span[0]);

/** Hours are written where readings have them: a log of days stays one of days, however short. */
function grainOf({ span, readings }: Timeline): (typeof grains)[number] {
  const offered = readings.every(({ day }) => Number.isInteger(day)) ? grains.slice(1) : grains;
  return offered.find(({ days }) => spanInDays(span) <= days) ?? grains[3];
}

/** A log of one moment has one label, its own; where no hours are written, days are named at their beginning, once. */
function ticksOf(model: Timeline, time: Layout["time"], count: number): (Date | number)[] {
  const { axis, span } = model;
  if (span !== undefined && spanInDays(span) === 0) return [axis === "dates" ? instant(span[0]) : span[0]];
  const namesHours = grainOf(model) === grains[0];
  const isWhole = (tick: Date | number): boolean =>
    tick instanceof Date ? namesHours || tick.getUTCHours() === 0 : Number.isInteger(tick);
  return time.ticks(count).filter(isWhole);
}

function dateFormat(pattern: string): (tick: Date | number) => string {
  const format = utcFormat(pattern);
  return (tick) => format(tick instanceof Date ? tick : instant(tick));
}

/** A day beside the axis, as short as it can be: with its year only where more than one is drawn. */
export const shortDay = (day: number, span: Timeline["span"]): string =>
  utcFormat(spanInDays(span) > grains[1].days ? "%-d %b %Y" : "%-d %b")(instant(day));

/** A day in full, for words beside the picture. */
export function dayInWords(day: number): string {
  return utcFormat(Number.isInteger(day) ? "%-d %b %Y" : "%-d %b %Y %H:%M")(instant(day));
}
