import { area, line } from "d3-shape";
import { type SeriesRole, type SliceSpread, spread, type TimelinePoint, type TimelineSeries } from "../../src/index";
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
const square = (x: number, y: number, r: number): string =>
  `M${px(x - r)} ${px(y - r)}h${px(2 * r)}v${px(2 * r)}h${px(-2 * r)}z`;

const lookOf = (role: SeriesRole, theme: DrawingTheme): Look =>
  role === "input"
    ? { colour: theme.input, dashes: "5 3", mark: circle, hollow: true }
    : { colour: role === "runoff" ? theme.runoff : theme.ink, dashes: undefined, mark: square, hollow: false };

/** Closer together than this many pixels, marks would run into one another and are drawn smaller, then not at all. */
const roomy = 7;
const tight = 3;
/** Closer than this, lines would run into one another too. */
const apart = 0.6;
const slicePixels = 5;

export interface Plot {
  readonly x: (day: number) => number;
  readonly y: (value: number) => number;
  /** Pixels from the first day to the last. */
  readonly width: number;
  readonly theme: DrawingTheme;
}

const countOf = ({ segments }: TimelineSeries): number => segments.reduce((sum, segment) => sum + segment.length, 0);

/** Whether readings stand too close for lines: a zigzag of them would fill the lane. */
export const isDense = (series: TimelineSeries, width: number): boolean => width / countOf(series) < apart;

/**
 * One series of a lane: lines, or where readings stand too close what lies between lowest and highest, with the median.
 */
export const seriesMarkup = (series: TimelineSeries, plot: Plot): string =>
  isDense(series, plot.width) ? spreadMarkup(series, plot) : linesMarkup(series, plot);

function spreadMarkup(series: TimelineSeries, { x, y, width, theme }: Plot): string {
  const { colour, dashes } = lookOf(series.role, theme);
  const points = countOf(series);
  const slices = series.segments.map((segment) =>
    spread(segment, Math.max(1, Math.round((width * segment.length) / points / slicePixels))));
  const between = area<SliceSpread>(({ day }) => x(day), ({ low }) => y(low), ({ high }) => y(high)).digits(1);
  const middles = line<SliceSpread>(({ day }) => x(day), ({ middle }) => y(middle)).digits(1);
  return (
    pathMarkup(slices.map((each) => between(each) ?? "").join(""), { fill: colour, "fill-opacity": "0.25" }) +
    pathMarkup(slices.map((each) => middles(each) ?? "").join(""), {
      fill: "none",
      stroke: colour,
      "stroke-width": 1.5,
      "stroke-dasharray": dashes,
    })
  );
}

/** A line for each run of readings, marks where there is room; a lone reading always has its mark. */
function linesMarkup(series: TimelineSeries, { x, y, width, theme }: Plot): string {
  const { role, segments } = series;
  const look = lookOf(role, theme);
  const radius = markRadius(width / countOf(series));
  const path = line<TimelinePoint>(
    ({ day }) => x(day),
    ({ value }) => y(value),
  ).digits(1);
  const lines = segments.filter((segment) => segment.length > 1).map((segment) => path(segment) ?? "");
  const marked = segments.flatMap((segment) => (radius > 0 || segment.length === 1 ? segment : []));
  const marks = marked.map(({ day, value }) => look.mark(x(day), y(value), Math.max(radius, 1.5)));
  return (
    pathMarkup(lines.join(""), {
      fill: "none",
      stroke: look.colour,
      "stroke-width": 1.5,
      "stroke-dasharray": look.dashes,
    }) +
    pathMarkup(marks.join(""), {
      fill: look.hollow ? theme.paper : look.colour,
      stroke: look.colour,
      "stroke-width": 1.3,
    })
  );
}

/** The mark and the line of a series, for the legend. */
export function sample(role: SeriesRole, x: number, y: number, theme: DrawingTheme): string {
  const look = lookOf(role, theme);
  return (
    pathMarkup(`M${px(x)} ${px(y)}h24`, {
      fill: "none",
      stroke: look.colour,
      "stroke-width": 1.5,
      "stroke-dasharray": look.dashes,
    }) +
    pathMarkup(look.mark(x + 12, y, 2.8), {
      fill: look.hollow ? theme.paper : look.colour,
      stroke: look.colour,
      "stroke-width": 1.3,
    })
  );
}

const markRadius = (pixelsEach: number): number => (pixelsEach >= roomy ? 2.6 : pixelsEach >= tight ? 1.6 : 0);

const pathMarkup = (d: string, attributes: Readonly<Record<string, string | number | undefined>>): string =>
  d === "" ? "" : element("path", { d, ...attributes });
