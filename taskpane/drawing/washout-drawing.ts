import { scaleLinear } from "d3-scale";
import { line } from "d3-shape";
import { element, escaped, px, words } from "./markup";
import { type DrawingTheme, type ThemeName, themes } from "./themes";

/** A reading of a flush: all that had been poured, and the runoff EC then. */
export interface WashedPoint {
  readonly litres: number;
  readonly ec: number;
}

export interface Washout {
  readonly measured: readonly WashedPoint[];
  readonly planned: readonly WashedPoint[];
  /** The curve fitted to the pot's own readings, where one can be drawn. */
  readonly fitted: readonly WashedPoint[];
  readonly targetEc: number;
  readonly limitEc: number;
}

const sizes = { left: 34, right: 12, top: 22, bottom: 34, height: 190, text: 11 } as const;

/** The washout of a pot as SVG text: what was read, what the plan expects, and the fit to the pot's own readings. */
export function drawWashout(washout: Washout, width: number, name: ThemeName): string {
  const theme = themes[name];
  const all = [...washout.measured, ...washout.planned, ...washout.fitted];
  const x = scaleLinear([0, Math.max(1, ...all.map(({ litres }) => litres))], [sizes.left, width - sizes.right]).nice(
    4,
  );
  const y = scaleLinear(
    [0, Math.max(washout.limitEc, ...all.map(({ ec }) => ec))],
    [sizes.height - sizes.bottom, sizes.top],
  ).nice(4);
  const path = line<WashedPoint>(({ litres }) => x(litres), ({ ec }) => y(ec)).digits(1);
  const curve = (points: readonly WashedPoint[], look: Readonly<Record<string, string | number>>): string =>
    points.length < 2 ? "" : element("path", { d: path(points) ?? "", fill: "none", ...look });
  const marks = washout.measured
    .map(({ litres, ec }) =>
      element("rect", { x: x(litres) - 3, y: y(ec) - 3, width: 6, height: 6, fill: theme.runoff }),
    )
    .join("");
  const body = [
    element("rect", { x: 0, y: 0, width, height: sizes.height, fill: theme.paper }),
    axes(x, y, width, theme),
    curve(washout.planned, { stroke: theme.faintInk, "stroke-width": 1.2, "stroke-dasharray": "4 4" }),
    curve(washout.fitted, { stroke: theme.input, "stroke-width": 1.8 }),
    level(washout.targetEc, "stop", { y, width, theme }),
    marks,
    legend(washout, theme),
  ].join("");
  const said = `${washout.measured.length} readings, the last ${(washout.measured.at(-1)?.ec ?? NaN).toFixed(2)} mS/cm; to stop at ${washout.targetEc.toFixed(2)}.`;
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
    `<title>Washout</title><desc>${escaped(said)}</desc>${body}`,
  );
}

type Scale = ReturnType<typeof scaleLinear<number>>;

function axes(x: Scale, y: Scale, width: number, theme: DrawingTheme): string {
  const bottom = sizes.height - sizes.bottom;
  const text = { fill: theme.faintInk, "font-size": sizes.text };
  const across = x
    .ticks(5)
    .map((tick) => words(x.tickFormat(5)(tick), { x: x(tick), y: bottom + 14, "text-anchor": "middle", ...text }))
    .join("");
  const up = y
    .ticks(4)
    .map(
      (tick) =>
        element("line", {
          x1: sizes.left,
          x2: width - sizes.right,
          y1: y(tick),
          y2: y(tick),
          stroke: theme.grid,
          "stroke-width": 0.7,
        }) + words(y.tickFormat(4)(tick), { x: sizes.left - 4, y: y(tick) + 4, "text-anchor": "end", ...text }),
    )
    .join("");
  return (
    up +
    across +
    words("litres poured", { x: (sizes.left + width) / 2, y: sizes.height - 6, "text-anchor": "middle", ...text })
  );
}

/** The EC at which to stop: a dashed line with its word, which a halo keeps readable where the plan runs out on it. */
function level(
  ec: number,
  name: string,
  { y, width, theme }: { readonly y: Scale; readonly width: number; readonly theme: DrawingTheme },
): string {
  const at = y(ec);
  return (
    element("path", {
      d: `M${px(sizes.left)} ${px(at)}H${px(width - sizes.right)}`,
      stroke: theme.bandEdge,
      "stroke-width": 1.2,
      "stroke-dasharray": "2 3",
    }) +
    words(`${name} ${ec.toFixed(2)}`, {
      x: width - sizes.right,
      y: at - 4,
      fill: theme.bandEdge,
      "font-size": sizes.text,
      "text-anchor": "end",
      stroke: theme.paper,
      "stroke-width": 3,
      "paint-order": "stroke",
    })
  );
}

function legend({ fitted }: Washout, theme: DrawingTheme): string {
  const text = { y: 13, fill: theme.ink, "font-size": sizes.text };
  const fit =
    fitted.length < 2
      ? ""
      : element("path", { d: "M150 9h20", stroke: theme.input, "stroke-width": 1.8 }) +
        words("fit to this pot", { x: 174, ...text });
  return (
    element("rect", { x: 4, y: 6, width: 6, height: 6, fill: theme.runoff }) +
    words("read", { x: 14, ...text }) +
    element("path", { d: "M56 9h20", stroke: theme.faintInk, "stroke-width": 1.2, "stroke-dasharray": "4 4" }) +
    words("planned", { x: 80, ...text }) +
    fit
  );
}
