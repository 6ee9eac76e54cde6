import { type LogQuantity } from "./log";
import { isOwnSheet } from "./own-sheet";
import { readLog } from "./read-log";
import { type ColumnReading, type LogGrid, type LogReading } from "./reading";

/** A sheet of a book by its name, with its cells. */
export interface NamedGrid {
  readonly name: string;
  readonly grid: LogGrid;
}

/** A sheet that holds a log, as it is read without an answer. */
export interface LogSheet<Sheet extends NamedGrid> {
  readonly sheet: Sheet;
  readonly reading: LogReading;
}

/**
 * The sheets of a book that hold logs, in the book's order: a Read me, a recipe or a list of addresses is passed over,
 * and so are the sheets that are made here and the portions of one flush.
 *
 * Source:   common practice; docs/log-sheets.md
 *
 * @example logSheetsIn([{ name: "Log", grid: { cells: [["Date", "Runoff EC"], [45383, 2.4]] } }]).length // 1
 */
export function logSheetsIn<Sheet extends NamedGrid>(sheets: readonly Sheet[]): LogSheet<Sheet>[] {
  return sheets
    .filter(({ grid }) => !isOwnSheet(grid))
    .map((sheet) => ({ sheet, reading: readLog(sheet.grid) }))
    .filter(({ reading }) => (isRead(reading) || waits(reading)) && !isOfPortions(reading));
}

/** The day of a flush: a row for each portion, and none with a date. */
const isOfPortions = ({ columns }: LogReading): boolean =>
  columns.some(({ header }) => /^portion\b/i.test(header)) && !columns.some(({ quantity }) => quantity === "date");

const waters: ReadonlySet<LogQuantity> = new Set<LogQuantity>(["input EC", "input pH", "runoff EC", "runoff pH"]);
const isOfWater = ({ quantity, bySide }: ColumnReading): boolean =>
  waters.has(quantity) || (bySide !== undefined && waters.has(bySide.input));

/** Rows with an EC or a pH. */
const isRead = ({ rows, columns }: LogReading): boolean =>
  rows.length > 0 && columns.some((column) => column.read && isOfWater(column));

/** Days, and an EC or a pH of which something is to be asked first. */
const waits = ({ columns, questions }: LogReading): boolean =>
  columns.some(({ quantity }) => quantity === "date") &&
  (questions.some(({ choices }) => choices.some((choice) => waters.has(choice as LogQuantity))) ||
    columns.some((column) => isOfWater(column) && column.unit === undefined));

/**
 * Whether logs tell of the same days: then each is a pot's own, and the worst of them counts. Logs of days that follow
 * each other are one log in parts, and a log of a single day may be that of a flush.
 */
export function shareDays(readings: readonly LogReading[]): boolean {
  const spans = readings.map(({ rows }) => rows.flatMap(({ day }) => day ?? [])).map(spanOf);
  if (spans.some(({ first, last }) => !(last > first))) return false;
  return spans.every((span, at) =>
    spans.every((other, place) => place === at || (span.first <= other.last && other.first <= span.last)),
  );
}

/** Whole days; by a loop, for a log can hold more days than a call can take arguments. */
function spanOf(days: readonly number[]): { readonly first: number; readonly last: number } {
  let [first, last] = [Infinity, -Infinity];
  for (const day of days) [first, last] = [Math.min(first, Math.floor(day)), Math.max(last, Math.floor(day))];
  return { first, last };
}
