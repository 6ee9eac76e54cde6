import { isBlank, plain } from "../../cells/text";
import { type LogQuantity } from "../log";
import { type BySide, type LogGrid } from "../reading";
import { type Column } from "./column";
import { headerMeaning, namesOnlyWater } from "./header-meaning";
import { isBare } from "./measures";

/** Which water a row of readings is of. */
export type Side = "input" | "runoff";

/** Of a column that says the side, this share of the cells is in known words. */
const nearlyAll = 0.8;
/** Two words that change places in fewer rows than this share do not take turns. */
const turnShare = 0.25;
/** So many rows are looked at to learn what a column of words tells. */
const rowsLookedAt = 2000;

/** "Before" is the feed only where the words for the other rows say runoff: `settleSides` sees to that. */
const inputWords: ReadonlySet<string> = new Set(["before"]);

/** The side that a cell such as "feed" or "Runoff" names; `undefined` where it names none, or both. */
function sideIn(cell: unknown): Side | undefined {
  if (typeof cell !== "string" || isBlank(cell)) return undefined;
  if (inputWords.has(plain(cell))) return "input";
  if (namesOnlyWater(cell)) return undefined;
  const { concepts, strangers, unit, numbered } = headerMeaning(cell);
  if (strangers > 0 || unit !== undefined || numbered || concepts.has("noReading") || concepts.has("sourceWater"))
    return undefined;
  const isInput = concepts.has("input") || concepts.has("feed") || concepts.has("tank");
  if (isInput === concepts.has("runoff")) return undefined;
  return isInput ? "input" : "runoff";
}

/** The side of each row by what a column of the grid says; long logs say the same few words. */
export function sidesIn(grid: LogGrid, column: number): (row: number) => Side | undefined {
  const known = new Map<unknown, Side | undefined>();
  return (row) => {
    const cell = grid.cells[row]?.[column];
    if (!known.has(cell)) known.set(cell, sideIn(cell));
    return known.get(cell);
  };
}

/**
 * Feed and runoff in rows of their own: a column of words such as "in" and "out" says which, and the EC, pH and volume
 * beside it, whose side no header says, are of the side of their row. Words that are not known are asked for.
 */
export function settleSides(columns: readonly Column[], grid: LogGrid, firstRow: number): readonly Column[] {
  const open = columns.filter((column, place) => isOpen(column) && isOnly(column, columns, place));
  if (open.length === 0) return columns;
  const rows = grid.cells.slice(firstRow, firstRow + rowsLookedAt);
  const wordy = columns.filter(isOfWords);
  const told = wordy.find(({ column }) => tellsSides(rows, column));
  if (told !== undefined) return columns.map((column) => bySideOf(column, open, told));
  const turns = wordy.find((column) => takesTurns(rows, column));
  return turns === undefined
    ? columns
    : columns.map((column) => (open.includes(column) ? withHint(column, turns) : column));
}

/** EC, pH or volume, and no word for its side. */
const isOpen = ({ quantity, measure, answer, header, sample }: Column): boolean =>
  quantity === undefined && answer === undefined && sample.numbers > 0 && isBare(header.meaning) &&
  (measure === "EC" || measure === "pH" || measure === "volume");

/** The only column of its measure, so that what its rows take turns with is no other column. */
const isOnly = ({ measure }: Column, columns: readonly Column[], place: number): boolean =>
  columns.every((other, at) => at === place || other.measure !== measure || other.quantity === "other");

const isOfWords = ({ quantity, measure, answer, sample }: Column): boolean =>
  quantity !== "notes" && quantity !== "date" && quantity !== "time" && measure === undefined && answer === undefined &&
  sample.numbers === 0;

function tellsSides(rows: LogGrid["cells"], column: number): boolean {
  const cells = rows.map((row) => row[column]).filter((cell) => !isBlank(cell));
  const sides = cells.map(sideIn);
  const count = (side: Side): number => sides.filter((each) => each === side).length;
  return count("input") > 0 && count("runoff") > 0 && count("input") + count("runoff") >= cells.length * nearlyAll;
}

/** Two words that change places again and again, under a header that is no pot's and no place's. */
function takesTurns(rows: LogGrid["cells"], { column, quantity, header: { meaning } }: Column): boolean {
  if (quantity === "vessel" || meaning.concepts.has("place") || meaning.concepts.has("medium")) return false;
  const words = rows.map((row) => row[column]).filter((cell) => !isBlank(cell)).map((cell) => plain(String(cell)));
  const kinds = [...new Set(words)];
  const turns = words.filter((word, at) => at > 0 && word !== words[at - 1]).length;
  return kinds.length === 2 && turns >= words.length * turnShare;
}

function bySideOf(column: Column, open: readonly Column[], told: Column): Column {
  const { letters } = told.header;
  if (column === told)
    return {
      ...column,
      quantity: "other",
      choices: [],
      why: "it says which rows are input and which runoff",
      saysSide: true,
    };
  if (!open.includes(column)) return column;
  const why = `input or runoff, as column ${letters} says in each row`;
  const bySide: BySide = {
    column: told.column,
    input: quantityOf("input", column),
    runoff: quantityOf("runoff", column),
  };
  return { ...column, quantity: "other", choices: [], why, bySide };
}

const quantityOf = (side: Side, { measure }: Column): LogQuantity => `${side} ${measure as "EC" | "pH" | "volume"}`;

const withHint = (column: Column, { header }: Column): Column =>
  ({ ...column, why: `${column.why}; where column ${header.letters} tells it row by row, write "in" and "out" there` });
