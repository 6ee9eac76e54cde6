import { inEngineUnit } from "../../cells/engine-unit";
import { weekdayWord } from "../dates/date-words";
import { dateCell } from "../dates/date-cell";
import { numberCell } from "../../cells/number-cell";
import { type LogGrid } from "../reading";
import { isBlank, plain } from "../../cells/text";
import { formatUnit, isDateFormat } from "./number-format";
import { isReadable, type LogUnit, measureOf, type WrittenUnit } from "../../cells/units";

/** Cells looked at in one column to learn its magnitude: enough for a median, few enough for a long log. */
const cellsSampled = 400;

/** What a column's cells tell about it. */
export interface ColumnSample {
  /** How many cells looked at say something ("n/a" does not), are numbers, and are certain dates. */
  readonly filled: number;
  readonly numbers: number;
  readonly dates: number;
  /** The middle of its numbers above 0; `undefined` without any. */
  readonly median: number | undefined;
  /** The unit typed into most of its number cells, or shown by their number format. */
  readonly unit: WrittenUnit | undefined;
  /** How many cells are dates, perhaps without a format, without a year or without sense. */
  readonly dateLike: number;
  /** Whether its words are days of the week. */
  readonly weekdays: boolean;
  /** Whether two of its cells differ. */
  readonly changes: boolean;
  /** Whether most of its cells are of three words or more. */
  readonly sentences: boolean;
  /** Its numbers above 0, each with the unit typed into its cell. */
  readonly figures: readonly Figure[];
}

/** A number as it stands in a cell. */
export interface Figure {
  readonly value: number;
  readonly unit?: WrittenUnit | undefined;
}

/** Samples a column evenly over the rows of readings. */
export function sampleColumn(grid: LogGrid, column: number, firstRow: number, thousands = false): ColumnSample {
  const step = Math.max(1, Math.floor((grid.cells.length - firstRow) / cellsSampled));
  const figures: Figure[] = [];
  const units = new Map<WrittenUnit, number>();
  let filled = 0;
  let dates = 0;
  let dateLike = 0;
  let weekdays = 0;
  let sentences = 0;
  let first: unknown;
  let changes = false;
  for (let row = firstRow; row < grid.cells.length; row += step) {
    const cell = grid.cells[row]?.[column];
    const read = isBlank(cell) ? undefined : numberCell(cell, thousands);
    if (read === undefined) continue;
    filled += 1;
    const format = grid.numberFormats?.[row]?.[column];
    first ??= cell;
    if (cell !== first) changes = true;
    if (isCertainDate(cell, format)) dates += 1;
    if (isLikeDate(cell)) dateLike += 1;
    if (typeof cell === "string" && weekdayWord.test(plain(cell))) weekdays += 1;
    if (typeof cell === "string" && isSentence(cell)) sentences += 1;
    if (!("value" in read)) continue;
    figures.push({ value: read.value, unit: read.unit });
    const unit = read.unit ?? formatUnit(format);
    if (unit !== undefined) units.set(unit, (units.get(unit) ?? 0) + 1);
  }
  const above0 = figures.filter(({ value }) => value > 0);
  const bare = above0.filter((figure) => figure.unit === undefined);
  const unit =
    bare.length > 0 ? mostly(units, figures.length) : (mostly(units, figures.length) ?? engineUnitOf(above0));
  return {
    filled,
    dates,
    dateLike,
    changes,
    weekdays: weekdays > 0 && weekdays * 2 > filled,
    sentences: sentences > 0 && sentences * 2 > filled,
    numbers: figures.length,
    median: medianIn(bare, above0, unit),
    unit,
    figures: above0,
  };
}

const threeWords = /(?:\p{L}+[^\p{L}]+){2}\p{L}+/u;
const isSentence = (cell: string): boolean => threeWords.test(cell);

/** Where every cell says a unit of its own and no unit has most of them: the one they can all be brought to. */
function engineUnitOf(figures: readonly Figure[]): WrittenUnit | undefined {
  const measures = new Set(figures.map(({ unit }) => (unit === undefined ? undefined : measureOf(unit))));
  const [measure] = measures;
  return measures.size === 1 && measure !== undefined ? engineUnits[measure] : undefined;
}

const engineUnits = { EC: "mS/cm", volume: "L", temperature: "C", humidity: "%" } as const;

/** The middle of the figures without a unit of their own; without any of those, of all in the column's unit. */
function medianIn(bare: readonly Figure[], all: readonly Figure[], unit: WrittenUnit | undefined): number | undefined {
  if (bare.length > 0) return middle(bare.map(({ value }) => value));
  const same = all.filter((figure) => figure.unit === unit);
  if (same.length * 2 > all.length || !isReadable(unit))
    return middle((same.length > 0 ? same : all).map(({ value }) => value));
  return middle(all.map((figure) => inEngineUnit(figure.value, ownUnit(figure, unit))));
}

/** The middle of a column's figures in the engine's unit; a cell's own unit goes before the column's. */
export const usualIn = ({ figures }: ColumnSample, unit: LogUnit): number | undefined =>
  middle(figures.map((figure) => inEngineUnit(figure.value, ownUnit(figure, unit))));

const ownUnit = ({ unit }: Figure, columnUnit: LogUnit): LogUnit => (isReadable(unit) ? unit : columnUnit);

/** A day in full among other words. */
const dateInside = /\b\d{4}-\d{2}-\d{2}\b/;

/** Also a serial number without a format, and a date that lacks its year or that no calendar has. */
function isLikeDate(cell: unknown): boolean {
  if (typeof cell === "string" && dateInside.test(cell)) return true;
  const read = dateCell(cell, false);
  return read.kind !== "none" || (typeof cell === "string" && read.reason !== "is not a date");
}

const isCertainDate = (cell: unknown, format: string | undefined): boolean =>
  typeof cell === "number"
    ? isDateFormat(format) && cell >= 1
    : typeof cell === "string" && cell.length >= 6 && dateCell(cell, false).kind !== "none";

function mostly(units: ReadonlyMap<WrittenUnit, number>, of: number): WrittenUnit | undefined {
  for (const [unit, count] of units) if (count * 2 > of) return unit;
  return undefined;
}

function middle(values: number[]): number | undefined {
  values.sort((a, b) => a - b);
  const half = Math.floor(values.length / 2);
  const upper = values[half];
  const lower = values[half - 1];
  if (upper === undefined) return undefined;
  return values.length % 2 === 1 || lower === undefined ? upper : (upper + lower) / 2;
}
