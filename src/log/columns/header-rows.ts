import { isBlank } from "../../cells/text";
import { headerMeaning, type HeaderMeaning } from "./header-meaning";
import { type LogGrid } from "../reading";
import { namesReading, type RowShape, rowShape } from "./row-shape";
import { lettersIn } from "../sheet-place";

/** The header stands within the first rows; further down it would be a second table. */
const rowsSearched = 50;
/** A row with more figures than this share of its cells is a row of readings. */
const figuresAllowed = 1 / 3;

export interface Header {
  /** The row that names the columns. */
  readonly main: number;
  /** All rows of the header: groups and units above it, units below it. */
  readonly rows: readonly number[];
}

const isWords = (shape: RowShape): boolean => shape.figures + shape.weeks <= shape.filled * figuresAllowed;

/** How well a row names columns: readings weigh most. */
const weight = (shape: RowShape): number => shape.readings * 3 + shape.names * 2 + shape.units;

/** Finds the rows that name the columns; `undefined` when there are none. */
export function findHeader(grid: LogGrid, given: number | undefined): Header | undefined {
  if (given !== undefined && grid.cells[given] === undefined) return undefined;
  const shapes = Array.from({ length: Math.min(grid.cells.length, rowsSearched) }, (_, row) => rowShape(grid, row));
  const main = given === undefined ? (best(shapes) ?? overOneColumn(grid, shapes)) : rowShape(grid, given);
  if (main === undefined) return undefined;
  return { main: main.row, rows: [...above(shapes, main), main.row, ...below(shapes, main)] };
}

function best(shapes: readonly RowShape[]): RowShape | undefined {
  let found: RowShape | undefined;
  for (const shape of shapes) {
    const named = shape.names + shape.units;
    const enough = shape.readings > 0 && (named >= 2 || (named === 1 && shape.filled >= 2));
    if (!enough || !isWords(shape)) continue;
    if (found === undefined || weight(shape) > weight(found)) found = shape;
  }
  return found;
}

/** A log of one column: a clear name alone in its row, and a figure alone below it. */
function overOneColumn(grid: LogGrid, shapes: readonly RowShape[]): RowShape | undefined {
  const filled = shapes.filter((shape) => shape.filled > 0);
  return filled.find((shape, at) => {
    const [[column, meaning] = []] = shape.meanings;
    const below = filled[at + 1];
    if (
      shape.filled !== 1 ||
      shape.readings !== 1 ||
      column === undefined ||
      meaning === undefined ||
      meaning.strangers > 0
    )
      return false;
    return (
      below !== undefined && below.filled === 1 && below.figures === 1 && !isBlank(grid.cells[below.row]?.[column])
    );
  });
}

/** Rows over the names: groups ("Input", "Runoff") and units; a title is none of these. */
function above(shapes: readonly RowShape[], main: RowShape): number[] {
  const rows: number[] = [];
  for (let row = main.row - 1; row >= 0; row -= 1) {
    const shape = shapes[row];
    if (shape === undefined || !isWords(shape) || !belongsAbove(shape, main)) break;
    rows.unshift(row);
  }
  return rows;
}

function belongsAbove(shape: RowShape, main: RowShape): boolean {
  const [first] = shape.meanings;
  if (first === undefined) return false;
  if (shape.filled >= 2) return shape.meanings.size * 2 >= shape.filled;
  const under = main.meanings.get(first[0]);
  return first[1].strangers === 0 && under !== undefined && namesReading(under);
}

/** Rows under the names: units, and how each figure was made ("Avg"); short words only, two at least. */
function below(shapes: readonly RowShape[], main: RowShape): number[] {
  const rows: number[] = [];
  for (let row = main.row + 1; row < shapes.length; row += 1) {
    const shape = shapes[row];
    if (shape === undefined || shape.figures > 0 || shape.weeks > 0 || shape.filled < 2) break;
    const unitsOrKinds = shape.meanings.size * 2 >= shape.filled;
    const sidesOnly =
      shape.meanings.size === shape.filled &&
      [...shape.meanings.values()].every(({ strangers }) => strangers === 0);
    if (!unitsOrKinds || (shape.units === 0 && rows.length === 0 && shape.readings === 0 && !sidesOnly)) break;
    rows.push(row);
  }
  return rows;
}

export interface ColumnHeader {
  readonly text: string;
  readonly letters: string;
  readonly meaning: HeaderMeaning;
}

/** The words over one column, groups carried along to the columns they span. */
export function columnHeader(grid: LogGrid, header: Header, column: number): ColumnHeader {
  const parts: string[] = [];
  const cellAt = (row: number, at: number): string => {
    const cell = grid.cells[row]?.[at];
    return typeof cell === "string" || typeof cell === "number" ? String(cell).trim() : "";
  };
  const own = headerMeaning(cellAt(header.main, column));
  for (const row of header.rows)
    parts.push(row < header.main && needsGroup(own) ? spanning(row, column, cellAt) : cellAt(row, column));
  const rest = header.rows.map((row, at) => (row === header.main ? "" : (parts[at] ?? ""))).map(headerMeaning);
  const text = parts.filter((part) => part !== "").join(" ");
  return { text, letters: lettersIn(grid, column), meaning: merged(own, rest, headerMeaning(text).scale) };
}

/** "pH" under "Runoff" needs its group; "Date", "Notes" and "Air temperature" do not. */
const needsGroup = (own: HeaderMeaning): boolean =>
  !["date", "time", "vessel", "notes", "air", "input", "feed", "runoff", "humidity"].some((concept) =>
    own.concepts.has(concept as "date"),
  );

function spanning(row: number, column: number, cellAt: (row: number, at: number) => string): string {
  for (let at = column; at >= 0; at -= 1) {
    const text = cellAt(row, at);
    if (text !== "") return text;
  }
  return "";
}

/**
 * The naming row's own words first; the rows around it add groups and units, but cannot make it a row of averages. A
 * ppm scale may stand in another row than its ppm: it is looked for in the whole header.
 */
function merged(own: HeaderMeaning, rest: readonly HeaderMeaning[], scale: number | undefined): HeaderMeaning {
  const concepts = new Set(own.concepts);
  for (const other of rest) for (const concept of other.concepts) if (concept !== "noReading") concepts.add(concept);
  return {
    concepts,
    unit: own.unit ?? rest.find((other) => other.unit !== undefined)?.unit,
    scale,
    strangers: own.strangers,
    numbered: own.numbered,
    dateOrder: own.dateOrder ?? rest.find((other) => other.dateOrder !== undefined)?.dateOrder,
  };
}
