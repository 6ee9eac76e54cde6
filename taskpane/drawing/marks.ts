import { line } from "d3-shape";
import { thin, type SeriesRole, type TimelinePoint, type TimelineSeries } from "../../src/index";
import { element, px } from "./markup";
import { type DrawingTheme } from "./themes";

/** Input: hollow circles on a dashed line. Runoff, and a lane's only line: filled squares on a full line. */
interface Look {
  readonly colour: string;
  readonly dashes: string | undefined;
  readonly mark: (x: number, y: number, r: number) => string;
  readonly hollow: boolean;
}

const circle = (x: number, y: number, r: number): string =>
  `M${px(x - r)} ${px(y)}a${px(r)} ${px(r)} 0 1 0 ${px(2 * r)} 0a${px(r)} ${px(r)} 0 1 0 ${px(-2 * r)} 0z`;
const square = (x: number, y: number, r: number): string => `M${px(x - r)} ${px(y - r)}h${px(2 * r)}v${px(2 * r)}h${px(-2 * r)}z`;

const lookOf = (role: SeriesRole, theme: DrawingTheme): Look =>
  role === "input"
    ? { colour: theme.input, dashes: "5 3", mark: circle, hollow: true }
    : { colour: role === "runoff" ? theme.runoff : theme.ink, dashes: undefined, mark: square, hollow: false };

/** Closer together than this many pixels, marks would run into one another and are drawn smaller, then not at all. */
const roomy = 7;
const tight = 3;

export interface Plot {
  readonly x: (day: number) => number;
  readonly y: (value: number) => number;
  /** Pixels from the first day to the last. */
  readonly width: number;
  readonly theme: DrawingTheme;
}

/** One series of a lane: a line for each run of readings, marks where there is room; a lone reading always has its mark. */
export function seriesMarkup({ role, segments }: TimelineSeries, { x, y, width, theme }: Plot): string {
  const look = lookOf(role, theme);
  const points = segments.reduce((sum, segment) => sum + segment.length, 0);
  const radius = markRadius(width / points);
  const drawn = segments.map((segment) => thin(segment, sliceCount(segment, points, width)));
  const path = line<TimelinePoint>(
    ({ day }) => x(day),
    ({ value }) => y(value),
  ).digits(1);
  const lines = drawn.filter((segment) => segment.length > 1).map((segment) => path(segment) ?? "");
  const marked = drawn.flatMap((segment) => (radius > 0 || segment.length === 1 ? segment : []));
  const marks = marked.map(({ day, value }) => look.mark(x(day), y(value), Math.max(radius, 1.5)));
  return (
    pathMarkup(lines.join(""), { fill: "none", stroke: look.colour, "stroke-width": 1.5, "stroke-dasharray": look.dashes }) +
    pathMarkup(marks.join(""), { fill: look.hollow ? theme.paper : look.colour, stroke: look.colour, "stroke-width": 1.3 })
  );
}

/** The mark and the line of a series, for the legend. */
export function sample(role: SeriesRole, x: number, y: number, theme: DrawingTheme): string {
  const look = lookOf(role, theme);
  return (
    pathMarkup(`M${px(x)} ${px(y)}h24`, { fill: "none", stroke: look.colour, "stroke-width": 1.5, "stroke-dasharray": look.dashes }) +
    pathMarkup(look.mark(x + 12, y, 2.8), { fill: look.hollow ? theme.paper : look.colour, stroke: look.colour, "stroke-width": 1.3 })
  );
}

const markRadius = (pixelsEach: number): number => (pixelsEach >= roomy ? 2.6 : pixelsEach >= tight ? 1.6 : 0);

const sliceCount = (segment: readonly TimelinePoint[], points: number, width: number): number =>
  Math.max(8, Math.round((width * segment.length) / points));

const pathMarkup = (d: string, attributes: Readonly<Record<string, string | number | undefined>>): string =>
  d === "" ? "" : element("path", { d, ...attributes });
