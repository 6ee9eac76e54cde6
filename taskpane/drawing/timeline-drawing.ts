import { type Timeline } from "../../src/index";
import { eventsMarkup, linesUsed, placeEvents, watchesMarkup } from "./events";
import { laneGround, laneMarkup } from "./lane";
import { acrossOf, type Layout, layoutOf, sizes } from "./layout";
import { isDense, sample } from "./marks";
import { element, escaped, words } from "./markup";
import { changesInWords } from "./target-bands";
import { type DrawingTheme, type ThemeName, themes } from "./themes";
import { dayInWords, timeAxis } from "./time-axis";

export interface DrawingOptions {
  /** Pixels; 320 is the narrowest pane. */
  readonly width: number;
  readonly theme: ThemeName;
  /** What the picture is of: "Bench 2, pot T1". */
  readonly title: string;
}

export interface Drawing {
  /** A whole SVG document as text: the same bytes for the same log. */
  readonly svg: string;
  readonly width: number;
  readonly height: number;
  /** The same picture in words, for those who do not see it. */
  readonly description: string;
  /** Where a day stands, for a cursor drawn over the picture. */
  readonly x: (day: number) => number;
  readonly plot: { readonly left: number; readonly right: number; readonly top: number; readonly bottom: number };
}

/** Draws a timeline as SVG text: pure, without document or host, so that pane, sheet and terminal show one picture. */
export function drawTimeline(model: Timeline, { width, theme: name, title }: DrawingOptions): Drawing {
  const theme = themes[name];
  const across = acrossOf(model, width);
  const dense = model.lanes.some(({ series }) => series.some((each) => isDense(each, across.right - across.left)));
  const legend = legendRows(model, dense) * sizes.legend;
  const placed = placeEvents(model.events, across.x, [across.left, across.right]);
  const layout = layoutOf(model, across, legend + linesUsed(placed) * sizes.eventRow);
  const description = inWords(model);
  const body = [
    element("rect", { x: 0, y: 0, width, height: layout.height, fill: theme.paper }),
    legend > 0 ? legendMarkup(model, dense, theme) : "",
    ...layout.lanes.map((lane) => laneGround(lane, layout, theme)),
    watchesMarkup(model, layout, theme),
    timeAxis(model, layout, theme),
    ...layout.lanes.map((lane) => laneMarkup(lane, layout, theme)),
    eventsMarkup(placed, sizes.top + legend, layout, theme),
  ].join("");
  const attributes = {
    xmlns: "http://www.w3.org/2000/svg",
    width,
    height: layout.height,
    viewBox: `0 0 ${Math.round(width)} ${Math.round(layout.height)}`,
    role: "img",
    "font-family": "system-ui, 'Segoe UI', sans-serif",
  };
  const svg = element("svg", attributes, `<title>${escaped(title)}</title><desc>${escaped(description)}</desc>${body}`);
  return { svg, width, height: layout.height, description, x: layout.x, plot: plotOf(layout) };
}

const plotOf = ({ left, right, plotTop: top, plotBottom: bottom }: Layout): Drawing["plot"] => ({
  left,
  right,
  top,
  bottom,
});

/** A second row where both the watch and the shades have to be told. */
const legendRows = ({ lanes, watches }: Timeline, dense: boolean): number =>
  dense && watches.length > 0
    ? 2
    : lanes.some(({ series }) => series.length > 1) || watches.length > 0 || dense
      ? 1
      : 0;

function legendMarkup({ watches }: Timeline, dense: boolean, theme: DrawingTheme): string {
  const y = sizes.top + 8;
  const text = { y: y + 4, fill: theme.ink, "font-size": sizes.text };
  const swatch = {
    x: 136,
    y: y - 5,
    width: 12,
    height: 10,
    fill: theme.watch,
    stroke: theme.event,
    "stroke-width": 0.5,
    "stroke-dasharray": "3 2",
  };
  return (
    sample("input", 4, y, theme) +
    words("in", { x: 32, ...text }) +
    sample("runoff", 56, y, theme) +
    words("runoff", { x: 84, ...text }) +
    (watches.length > 0 ? element("rect", swatch) + words("24 to 48 h after flush", { x: 152, ...text }) : "") +
    (dense
      ? words(
          "shaded: lowest to highest",
          watches.length > 0 ? { ...text, x: 4, y: text.y + sizes.legend } : { x: 144, ...text },
        )
      : "")
  );
}

/** What a sighted person takes from the picture at a glance. */
function inWords({ axis, span, lanes, events, readings }: Timeline): string {
  if (span === undefined) return "No readings to draw.";
  const when =
    axis === "dates"
      ? `from ${dayInWords(span[0])} to ${dayInWords(span[1])}`
      : "in the order of the sheet, without dates";
  const trends = lanes.map(({ name, trend }) => `${name}: ${trend.words}`);
  const said = events.map(({ kind, day }) => (axis === "dates" ? `${kind} on ${dayInWords(day)}` : kind));
  const happened =
    said.length === 0 ? "" : ` Events: ${said.slice(0, 12).join(", ")}${said.length > 12 ? " and more" : ""}.`;
  const changed = lanes.map((lane) => changesInWords(lane)).filter((words) => words !== undefined);
  const limits = changed.map((words) => ` ${words}.`).join("");
  return `${readings.length} readings ${when}. ${trends.join(". ")}.${limits}${happened}`;
}
