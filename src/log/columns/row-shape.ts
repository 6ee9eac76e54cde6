import { dateCell } from "../dates/date-cell";
import { headerMeaning, type HeaderMeaning } from "./header-meaning";
import { numberCell } from "../../cells/number-cell";
import { measuresIn } from "./measures";
import { propose } from "./propose";
import { type LogGrid } from "../reading";
import { isBlank, plain } from "../../cells/text";

/** A row across the top that counts weeks, or days down the side. */
export const weekWords = /^(?:week|wk|w|woche|kw|semana|semaine|sem)\.?\s*#?\d{1,2}$/;
/** A header cell is short; longer texts are sentences. */
const longestHeader = 60;

/** What kind of cells a row is made of. */
export interface RowShape {
  readonly row: number;
  readonly filled: number;
  /** Numbers and dates, also those typed as text. */
  readonly figures: number;
  readonly weeks: number;
  /** What its short texts mean, by column; only those that mean something. */
  readonly meanings: ReadonlyMap<number, HeaderMeaning>;
  /** How many columns it names as readings (EC, pH, ...). */
  readonly readings: number;
  /** How many columns it names at all. */
  readonly names: number;
  /** Cells that hold a unit and nothing else. */
  readonly units: number;
}

/** A unit or a date pattern and nothing else. */
const isBareUnit = ({ concepts, strangers, unit, dateOrder }: HeaderMeaning): boolean =>
  concepts.size === 0 && strangers === 0 && (unit !== undefined || dateOrder !== undefined);

/** Whether the words name EC, pH, a volume, a temperature or the humidity; a unit alone names nothing. */
export const namesReading = (meaning: HeaderMeaning): boolean =>
  !isBareUnit(meaning) && (propose(meaning).measure !== undefined || measuresIn(meaning).length > 1);

/** Looks at one row without knowing yet whether it is a header or a row of readings. */
export function rowShape(grid: LogGrid, row: number): RowShape {
  const shape = { row, filled: 0, figures: 0, weeks: 0, readings: 0, names: 0, units: 0 };
  const meanings = new Map<number, HeaderMeaning>();
  for (const [column, cell] of (grid.cells[row] ?? []).entries()) {
    if (isBlank(cell)) continue;
    shape.filled += 1;
    if (typeof cell === "string" && weekWords.test(plain(cell))) shape.weeks += 1;
    else if (isFigure(cell)) shape.figures += 1;
    else if (typeof cell === "string" && cell.length <= longestHeader) addMeaning(shape, meanings, column, cell);
  }
  return { ...shape, meanings };
}

function addMeaning(
  shape: { readings: number; names: number; units: number },
  meanings: Map<number, HeaderMeaning>,
  column: number,
  cell: string,
): void {
  const meaning = headerMeaning(cell);
  if (meaning.concepts.size === 0 && meaning.unit === undefined && meaning.dateOrder === undefined) return;
  meanings.set(column, meaning);
  if (isBareUnit(meaning)) shape.units += 1;
  else shape.names += 1;
  if (namesReading(meaning)) shape.readings += 1;
}

/** Whether a cell could stand in a row of readings as a number or a date. */
export function isFigure(cell: unknown): boolean {
  if (typeof cell !== "string") return typeof cell === "number";
  const number = numberCell(cell, false);
  if (number !== undefined && "value" in number) return true;
  return dateCell(cell, false).kind !== "none";
}
