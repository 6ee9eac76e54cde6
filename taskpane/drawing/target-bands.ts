import { type LaneBand, type TimelineLane, type TimelinePoint } from "../../src/index";
import { sizes } from "./layout";
import { element, px, widthOf, words } from "./markup";
import { type DrawingTheme } from "./themes";
import { dayInWords, shortDay } from "./time-axis";

/** Where the bands of a lane are drawn. */
export interface BandPlace {
  readonly left: number;
  readonly right: number;
  readonly x: (day: number) => number;
  readonly y: (value: number) => number;
  readonly theme: DrawingTheme;
}

/** A stretch of a band in pixels. */
interface Stretch {
  readonly limits: LaneBand["limits"];
  readonly from: number;
  readonly to: number;
}

/** Limits that begin with the newest reading are seen too: pixels. */
const leastWidth = 6;

/** The stretches that have a width: limits that hold only from after the last reading have none yet. */
function stretches({ bands }: TimelineLane, { left, right, x }: BandPlace): Stretch[] {
  const boundary = (day: number): number => {
    const at = x(day);
    return at > right ? right : Math.max(left, Math.min(at, right - leastWidth));
  };
  return bands
    .map(({ limits, from, to }) => ({
      limits,
      from: from === undefined ? left : boundary(from),
      to: to === undefined ? right : boundary(to),
    }))
    .filter(({ from, to }) => to > from);
}

/** The tints of a lane's target bands: the ground on which everything else is drawn. */
export const tints = (lane: TimelineLane, place: BandPlace): string =>
  stretches(lane, place)
    .map(({ limits: [low, high], from, to }) => {
      const [top, bottom] = [place.y(high), place.y(low)];
      return element("rect", { x: from, y: top, width: to - from, height: bottom - top, fill: place.theme.band });
    })
    .join("");

/**
 * The edges of a lane's target bands, dashed so that they are there without colour too, and a step where the limits
 * changed.
 */
export function edges(lane: TimelineLane, place: BandPlace): string {
  const { y, theme } = place;
  const all = stretches(lane, place);
  const look = { stroke: theme.bandEdge, "stroke-width": 1, "stroke-dasharray": "2 3" };
  const lines = all.flatMap(({ limits, from, to }) =>
    limits.map((limit) => element("line", { x1: from, x2: to, y1: y(limit), y2: y(limit), ...look })));
  const steps = all.slice(1).flatMap(({ limits, from }, before) =>
    limits.map((limit, end) => `M${px(from)} ${px(y(all[before]?.limits[end] ?? limit))}V${px(y(limit))}`));
  return lines.join("") + (steps.length === 0 ? "" : element("path", { d: steps.join(""), fill: "none", ...look }));
}

const gap = 4;
const letterHeight = 11;

/** The limits that stood before, each at the end of its stretch, where there is room for them and no reading. */
export function earlierLimits(lane: TimelineLane, place: BandPlace & { readonly top: number }): string {
  if (lane.bands.length < 2) return "";
  const { theme } = place;
  const labels = stretches(lane, place).flatMap((stretch) => {
    const text = stretch.limits.join(" to ");
    const isToday = stretch.limits.every((limit, end) => limit === lane.limits?.[end]);
    const room = isToday ? undefined : roomFor(widthOf(text, sizes.text), stretch, lane, place);
    if (room === undefined) return [];
    const look = { fill: theme.bandEdge, "font-size": sizes.text, "text-anchor": "end" };
    // A halo of its ground keeps the words readable over a line of the grid.
    const halo = { stroke: room.ground, "stroke-width": 3, "paint-order": "stroke" };
    return [words(text, { x: stretch.to - gap, y: room.y, ...look, ...halo })];
  });
  return labels.join("");
}

interface Room {
  readonly y: number;
  readonly ground: string;
}

/** Above the band, or else inside it under its upper or over its lower edge: where no line of the lane runs. */
function roomFor(
  width: number,
  { limits: [low, high], from, to }: Stretch,
  { series }: TimelineLane,
  { x, y, top, theme }: BandPlace & { readonly top: number },
): Room | undefined {
  const start = to - gap - width;
  if (start < from + gap) return undefined;
  const near = ({ day }: TimelinePoint): boolean => x(day) >= start - nearby && x(day) <= to + nearby;
  const points = series.flatMap(({ segments }) => segments.flat());
  const taken = points.filter(near).map(({ value }) => y(value));
  const places = [
    { y: y(high) - gap, ground: theme.paper },
    { y: y(high) + letterHeight, ground: theme.band },
    { y: y(low) - gap, ground: theme.band },
  ];
  return places.find((each) => {
    const [upper, lower] = [each.y - letterHeight, each.y + gap];
    return upper >= top - 1 && lower <= y(low) + 1 && !taken.some((at) => at > upper && at < lower);
  });
}

/** Readings so near, in pixels, draw their line through the words too. */
const nearby = 12;

/** Today's limits, and since when they hold where they were others before: "- - band 1 to 8 from 12 Mar". */
export function todaysLimits({ limits, bands }: TimelineLane, span: readonly [number, number] | undefined): string {
  if (limits === undefined) return "";
  const since = bands.length > 1 ? bands.at(-1)?.from : undefined;
  return `- - band ${limits.join(" to ")}${since === undefined ? "" : ` from ${shortDay(since, span)}`}`;
}

/** How a lane's limits changed, for those who do not see the steps; nothing where they did not. */
export function changesInWords({ name, bands }: TimelineLane): string | undefined {
  if (bands.length < 2) return undefined;
  const told = bands.map(({ limits, from, to }, place) => {
    const next = bands[place + 1]?.from ?? to;
    const when = next === undefined ? `from ${dayInWords(from ?? 0)}` : `before ${dayInWords(next)}`;
    return `${limits.join(" to ")} ${when}`;
  });
  return `${name} limits: ${told.join(", ")}`;
}
