import { rowHeight } from "./row-height";

/** A worksheet described once: the pane writes it through the host, the samples into a file. */
export interface SheetTemplate {
  readonly name: string;
  /** By row and column from A1 on; `undefined` is an empty cell. */
  readonly rows: readonly (readonly (TemplateCell | undefined)[])[];
  /** In characters, from column A on. */
  readonly widths: readonly number[];
  /** In points, from row 1 on: room for its largest text and for every line of its longest. */
  readonly heights: readonly number[];
  /** What is printed, on one page: `A1:C60`. */
  readonly printArea: string;
  readonly landscape: boolean;
  readonly chart?: TemplateChart;
}

export interface TemplateCell {
  readonly value?: string | number;
  /** As a person types it, without the equals sign. */
  readonly formula?: string;
  readonly style?: TemplateStyle;
  /** Lines that a formula's words take at most, where they are more than two. */
  readonly lines?: number;
  readonly numberFormat?: string;
  /** What may be typed here; its hint is shown while the cell is chosen. */
  readonly accepts?: Accepts;
}

/** `large` ones are read from a step away; `wrapped` is a note that runs over several lines of its cell. */
export type TemplateStyle =
  | "title"
  | "heading"
  | "label"
  | "input"
  | "result"
  | "note"
  | "caution"
  | "large"
  | "largeLabel"
  | "largeText"
  | "wrapped";

export type Accepts = { readonly hint: string } & (
  | { readonly between: readonly [low: number, high: number] }
  | { readonly words: readonly string[] }
  | { readonly date: true }
);

/** A native chart of the host: one column with its header, drawn as a line. */
export interface TemplateChart {
  readonly title: string;
  readonly cells: string;
  /** The cells it lies over: `J4:N20`. */
  readonly over: string;
}

/** One row while it is being described; formulas name other rows by their key. */
export interface Line {
  readonly key?: string;
  readonly cells: readonly (TemplateCell | undefined)[];
}

/** What a template is made of, its rows as lines. */
export interface TemplateParts extends Omit<SheetTemplate, "rows" | "heights" | "printArea"> {
  readonly lines: readonly Line[];
  /** How many columns, from A on, are printed; all of them unless given. */
  readonly printColumns?: number;
  /** Points that a row takes at least, so that a short sheet fills its page too. */
  readonly leastHeight?: number;
}

/**
 * Puts the addresses of the named rows into formulas and chart: `{water}` is column B of that row, `{first:E}` its
 * column E.
 */
export function sheetTemplate({ lines, chart, printColumns, leastHeight = 0, ...parts }: TemplateParts): SheetTemplate {
  const printed = printColumns ?? parts.widths.length;
  const rowOf = new Map(lines.flatMap(({ key }, row) => (key === undefined ? [] : [[key, row + 1] as const])));
  const address = (_: string, key: string, column?: string): string => {
    const row = rowOf.get(key);
    if (row === undefined) throw new Error(`the template has no row ${key}`);
    return column === undefined ? `$B$${row}` : `${column}${row}`;
  };
  const withAddresses = (text: string): string => text.replace(/\{(\w+)(?::([A-Z]))?\}/g, address);
  return {
    ...parts,
    heights: lines.map(({ cells }) => Math.max(rowHeight(cells, parts.widths), leastHeight)),
    rows: lines.map(({ cells }) =>
      across(cells, printed).map((cell) =>
        cell?.formula === undefined ? cell : { ...cell, formula: withAddresses(cell.formula) },
      ),
    ),
    printArea: `A1:${String.fromCharCode(64 + printed)}${lines.length}`,
    ...(chart === undefined
      ? {}
      : { chart: { ...chart, cells: withAddresses(chart.cells), over: withAddresses(chart.over) } }),
  };
}

/** A heading runs across the whole sheet. */
const across = (cells: Line["cells"], width: number): Line["cells"] =>
  cells[0]?.style === "heading" ? Array.from({ length: width }, (_, i) => cells[i] ?? { style: "heading" }) : cells;
