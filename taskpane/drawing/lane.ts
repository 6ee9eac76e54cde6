import { type Layout, type PlacedLane, sizes } from "./layout";
import { seriesMarkup } from "./marks";
import { element, widthOf, words } from "./markup";
import { type DrawingTheme } from "./themes";

/** One lane: its name and trend in words, the target band, the value axis and its lines. */
export function laneMarkup(placed: PlacedLane, layout: Layout, theme: DrawingTheme): string {
  const { lane, y } = placed;
  const plot = { x: layout.x, y: (value: number) => y(value), width: layout.right - layout.left, theme };
  return [
    header(placed, layout, theme),
    bandMarkup(placed, layout, theme),
    valueAxis(placed, layout, theme),
    ...lane.series.map((series) => seriesMarkup(series, plot)),
  ].join("");
}

function header({ lane, headerTop }: PlacedLane, { right }: Layout, theme: DrawingTheme): string {
  const title = lane.unit === "" ? lane.name : `${lane.name}, ${lane.unit}`;
  const band = lane.limits === undefined ? "" : `- - band ${lane.limits.join(" to ")}`;
  const at = { x: right, y: headerTop + 12, fill: theme.bandEdge, "font-size": sizes.text, "text-anchor": "end" };
  return (
    words(title, { x: 4, y: headerTop + 12, fill: theme.ink, "font-size": sizes.title, "font-weight": "bold" }) +
    (band === "" ? "" : words(band, at)) +
    words(lane.trend.words, { x: 4, y: headerTop + 26, fill: theme.faintInk, "font-size": sizes.text })
  );
}

/**
 * The target band: a tint between two dashed edges, so that it is there without colour too; its numbers stand in the
 * lane's header.
 */
function bandMarkup({ lane, y }: PlacedLane, { left, right }: Layout, theme: DrawingTheme): string {
  if (lane.limits === undefined) return "";
  const [low, high] = lane.limits;
  const tint = element("rect", {
    x: left,
    y: y(high),
    width: right - left,
    height: y(low) - y(high),
    fill: theme.band,
  });
  const edges = [low, high].map((limit) =>
    element("line", {
      x1: left,
      x2: right,
      y1: y(limit),
      y2: y(limit),
      stroke: theme.bandEdge,
      "stroke-width": 1,
      "stroke-dasharray": "2 3",
    }),
  );
  return tint + edges.join("");
}

function valueAxis({ y, top, bottom }: PlacedLane, { left, right }: Layout, theme: DrawingTheme): string {
  const ticks = y.ticks(3);
  const format = y.tickFormat(3);
  const lines = ticks.map((tick) =>
    element("line", { x1: left, x2: right, y1: y(tick), y2: y(tick), stroke: theme.grid, "stroke-width": 0.7 }),
  );
  const labels = ticks
    .filter((tick) => widthOf(format(tick), sizes.text) < left)
    .map((tick) =>
      words(format(tick), {
        x: left - 4,
        y: y(tick) + 4,
        fill: theme.faintInk,
        "font-size": sizes.text,
        "text-anchor": "end",
      }),
    );
  const edge = element("line", {
    x1: left,
    x2: left,
    y1: top,
    y2: bottom,
    stroke: theme.faintInk,
    "stroke-width": 0.8,
  });
  return lines.join("") + labels.join("") + edge;
}
