import { type Timeline, type TimelineEvent } from "../../src/index";
import { type Layout, sizes } from "./layout";
import { element, px, widthOf, words } from "./markup";
import { type DrawingTheme } from "./themes";

export interface PlacedEvent {
  readonly event: TimelineEvent;
  readonly x: number;
  /** Which row of the strip holds its name; `undefined` when there was no room for a name. */
  readonly line: number | undefined;
  readonly anchor: "start" | "end";
}

const mostLines = 3;

/**
 * Gives each event's name a place above the lanes where it meets no other; where there is none, its line still stands.
 */
export function placeEvents(
  events: readonly TimelineEvent[],
  x: (day: number) => number,
  [left, right]: readonly [number, number],
): PlacedEvent[] {
  const taken: (readonly [number, number])[][] = Array.from({ length: mostLines }, () => []);
  return events.map((event) => {
    const at = x(event.day);
    const width = widthOf(event.kind, sizes.text) + 8;
    const anchor = at + width > right && at - width >= left ? "end" : "start";
    const [from, to] = anchor === "start" ? [at - 4, at + width] : [at - width, at + 4];
    const line = taken.findIndex((names) => names.every(([start, end]) => to < start || from > end));
    taken[line]?.push([from, to]);
    return { event, x: at, line: line < 0 ? undefined : line, anchor };
  });
}

/** How many rows of the strip are in use. */
export const linesUsed = (placed: readonly PlacedEvent[]): number =>
  placed.reduce((most, { line }) => Math.max(most, line === undefined ? most : line + 1), 0);

/**
 * A line through each lane's plot for each event, its name above the lanes; lines and heads are one path each, however
 * many.
 */
export function eventsMarkup(
  placed: readonly PlacedEvent[],
  stripTop: number,
  { lanes }: Layout,
  theme: DrawingTheme,
): string {
  if (placed.length === 0) return "";
  const topOf = (line: number): number => stripTop + line * sizes.eventRow;
  const rules = placed.flatMap(({ x }) => lanes.map((lane) => `M${px(x)} ${px(lane.top)}V${px(lane.bottom)}`));
  const named = placed.flatMap(({ line, ...rest }) => (line === undefined ? [] : [{ line, ...rest }]));
  const heads = named.map(({ x, line }) => `M${px(x - 3)} ${px(topOf(line) + 1)}h6l-3 5z`);
  const names = named.map(({ event, x, line, anchor }) => {
    const offset = anchor === "start" ? 5 : -5;
    return words(event.kind, {
      x: x + offset,
      y: topOf(line) + 10,
      fill: theme.event,
      "font-size": sizes.text,
      "text-anchor": anchor,
    });
  });
  return (
    element("path", { d: rules.join(""), stroke: theme.event, "stroke-width": 1, "stroke-dasharray": "1 2" }) +
    (heads.length === 0 ? "" : element("path", { d: heads.join(""), fill: theme.event })) +
    names.join("")
  );
}

/** The 24 to 48 hours after each flush, behind the lines of every lane. */
export function watchesMarkup({ watches, span }: Timeline, layout: Layout, theme: DrawingTheme): string {
  const boxes = watches.flatMap(({ from, to }) => {
    const [start, end] = [from, to].map((day) => Math.min(Math.max(layout.x(day), layout.left), layout.right)) as [
      number,
      number,
    ];
    if (span === undefined || !(end > start)) return [];
    const width = Math.max(2, end - start);
    return layout.lanes.map(
      ({ top, bottom }) => `M${px(start)} ${px(top)}h${px(width)}v${px(bottom - top)}h${px(-width)}z`,
    );
  });
  const look = { fill: theme.watch, stroke: theme.event, "stroke-width": 0.5, "stroke-dasharray": "3 2" };
  return boxes.length === 0 ? "" : element("path", { d: boxes.join(""), ...look });
}
