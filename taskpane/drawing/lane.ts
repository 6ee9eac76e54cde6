import { type Layout, type PlacedLane, sizes } from "./layout";
import { seriesMarkup } from "./marks";
import { element, widthOf, words } from "./markup";
import { type BandPlace, earlierLimits, edges, tints, todaysLimits } from "./target-bands";
import { type DrawingTheme } from "./themes";

const placeOf = ({ y }: PlacedLane, { left, right, x }: Layout, theme: DrawingTheme): BandPlace =>
  ({ left, right, x, y: (value) => y(value), theme });

/** The ground of a lane: the tint of its target band, under the watch and the grid. */
export const laneGround = (placed: PlacedLane, layout: Layout, theme: DrawingTheme): string =>
  tints(placed.lane, placeOf(placed, layout, theme));

/** One lane: its name and trend in words, the edges of its target band, the value axis and its lines. */
export function laneMarkup(placed: PlacedLane, layout: Layout, theme: DrawingTheme): string {
  const { lane, y, top } = placed;
  const place = placeOf(placed, layout, theme);
  const plot = { x: layout.x, y: (value: number) => y(value), width: layout.right - layout.left, theme };
  return [
    header(placed, layout, theme),
    edges(lane, place),
    valueAxis(placed, layout, theme),
    earlierLimits(lane, { ...place, top }),
    ...lane.series.map((series) => seriesMarkup(series, plot)),
  ].join("");
}

function header({ lane, headerTop }: PlacedLane, { right, span }: Layout, theme: DrawingTheme): string {
  const title = lane.unit === "" ? lane.name : `${lane.name}, ${lane.unit}`;
  const band = todaysLimits(lane, span);
  const at = { x: right, y: headerTop + 12, fill: theme.bandEdge, "font-size": sizes.text, "text-anchor": "end" };
  return (
    words(title, { x: 4, y: headerTop + 12, fill: theme.ink, "font-size": sizes.title, "font-weight": "bold" }) +
    (band === "" ? "" : words(band, at)) +
    words(lane.trend.words, { x: 4, y: headerTop + 26, fill: theme.faintInk, "font-size": sizes.text })
  );
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
