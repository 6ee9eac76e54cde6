import { type Accepts, type SheetTemplate, type TemplateCell, type TemplateStyle } from "../../taskpane/templates/sheet-template";
import { columnRanges, type Place } from "../xlsx/address";
import { type Allowed, type Cell, type LineChart, type SheetSpec, type Validation } from "../xlsx/spec";
import { numberFormats, type Style, styles } from "../xlsx/style-table";
import { gridOf } from "./grid";

/** What was typed into a template's boxes: by the row's label, from column B on. Boxes of that row left out are empty. */
export type Typed = Readonly<Record<string, readonly (string | number | undefined)[]>>;

/** The looks of a template in those of the samples: boxed cells are the person's, shaded ones are computed. */
const looks: Readonly<Record<TemplateStyle, Style>> = {
  title: styles.title,
  heading: { ...styles.headingLeft, wrap: false },
  label: { ...styles.label, wrap: false },
  input: styles.setting,
  result: { ...styles.answer, wrap: false },
  note: { ...styles.quiet, align: "left", indent: 1 },
  caution: { font: "caution" },
  large: { font: "large", fill: "computed", border: "box", align: "center" },
  largeLabel: { font: "largeLabel", align: "left", indent: 1 },
  largeText: { font: "largeText", align: "left", indent: 1 },
  wrapped: { ...styles.quiet, align: "left", indent: 1, wrap: true },
};

/** What a formula may spill into keeps off the edge as its neighbours do. */
const bare: Style = { align: "left", indent: 1 };

/** The names under which the samples know the number formats of the templates. */
const formats: Readonly<Record<string, keyof typeof numberFormats>> = {
  "0": "whole",
  "0.0": "tenths",
  "0.00": "hundredths",
  "0.000": "thousandths",
  "hh:mm": "timeOfDay",
  "yyyy-mm-dd": "date",
  "yyyy-mm-dd hh:mm": "dateAndClock",
  '"day "0': "dayNumber",
};

/** 1 January 2000 in the sheet's count: what lies before it is no date of a log. */
const startOf2000 = 36_526;

/** A template as a sheet of a file, with what was typed into its boxes. */
export function fromTemplate(template: SheetTemplate, typed: Typed): SheetSpec {
  const rows = filledIn(template.rows, typed);
  const { name, widths, heights, printArea, landscape, chart } = template;
  return {
    name,
    cells: gridOf(rows.map((row, r) => row.map((cell, c) => (cell === undefined ? undefined : oneCell(cell, noteOf(rows, r, c)))))),
    widths,
    heights: new Map(heights.map((height, row) => [row + 1, height])),
    validations: validationsOf(rows),
    ...(chart === undefined ? {} : { charts: [chartOf(chart, name)] }),
    printArea,
    portrait: !landscape,
    gridLines: false,
  };
}

type Rows = SheetTemplate["rows"];

function filledIn(rows: Rows, typed: Typed): Rows {
  const labels = new Set(rows.map(([label]) => label?.value));
  const unknown = Object.keys(typed).filter((label) => !labels.has(label));
  if (unknown.length > 0) throw new Error(`the template has no row ${unknown.join(", ")}`);
  return rows.map((row) => {
    const label = String(row[0]?.value);
    const values = typed[label];
    return values === undefined ? row : row.map((cell, column) => (column === 0 ? cell : filledBox(cell, values[column - 1], label)));
  });
}

function filledBox(cell: TemplateCell | undefined, value: string | number | undefined, label: string): TemplateCell | undefined {
  if (cell?.accepts !== undefined) return { ...cell, value: value ?? "" };
  if (value !== undefined) throw new Error(`no box for ${value} beside ${label}`);
  return cell;
}

function oneCell({ value, formula, style, numberFormat }: TemplateCell, note: string | undefined): Cell {
  const format = numberFormat === undefined ? undefined : formats[numberFormat];
  if (numberFormat !== undefined && format === undefined) throw new Error(`the samples do not know the number format ${numberFormat}`);
  return {
    ...(value === undefined || value === "" ? {} : { value }),
    ...(formula === undefined ? {} : { formula }),
    style: { ...(style === undefined ? bare : looks[style]), ...(format === undefined ? {} : { format }) },
    ...(note === undefined ? {} : { note }),
  };
}

/** The hint of a box that has no words beside it, once for all boxes with the same hint. */
function noteOf(rows: Rows, row: number, column: number): string | undefined {
  const accepts = rows[row]?.[column]?.accepts;
  if (accepts === undefined || rows[row]?.[column + 1]?.style === "note") return undefined;
  const first = rows.flat().find((cell) => cell?.accepts?.hint === accepts.hint);
  return first === rows[row]?.[column] ? accepts.hint : undefined;
}

/** One rule for all boxes that accept the same. */
function validationsOf(rows: Rows): Validation[] {
  const places = new Map<string, { readonly accepts: Accepts; readonly at: Place[] }>();
  rows.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      if (cell?.accepts === undefined) return;
      const key = JSON.stringify(cell.accepts);
      const same = places.get(key) ?? { accepts: cell.accepts, at: [] };
      same.at.push({ row, column });
      places.set(key, same);
    });
  });
  return [...places.values()].map(({ accepts, at }) => ({ range: columnRanges(at).join(" "), hint: accepts.hint, ...allowed(accepts) }));
}

function allowed(accepts: Accepts): { allowed?: Allowed } {
  if ("between" in accepts) return { allowed: { between: accepts.between } };
  if ("date" in accepts) return { allowed: { afterDay: startOf2000 } };
  return accepts.words.length === 0 ? {} : { allowed: { list: accepts.words } };
}

/** A template's chart has one column of readings under its header. */
function chartOf({ title, cells, over }: NonNullable<SheetTemplate["chart"]>, sheet: string): LineChart {
  const [column = "", top = "", last = ""] = /^([A-Z]+)(\d+):[A-Z]+(\d+)$/.exec(cells)?.slice(1) ?? [];
  const cell = (row: number | string): string => `${sheet}!$${column}$${row}`;
  return {
    at: over,
    title,
    alternative: `Line chart: ${title}`,
    across: { title: "reading", format: "0", dates: false },
    unit: "mS/cm at 25 C",
    lines: [{ name: cell(top), cells: `${cell(Number(top) + 1)}:$${column}$${last}`, look: "readings" }],
  };
}
