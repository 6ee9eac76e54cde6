import { isBlank, plain, quoted } from "../../cells/text";
import { dateCell } from "../dates/date-cell";
import { type ColumnReading } from "../reading";

/** Words of a row that sums up others. */
const summary =
  String.raw`(?:sub)?totals?|sums?|averages?|avg|mean|median|std|st\.?\s?dev|stdev|standard deviation|sd|s\.d\.|cv|count|n(?=\s*$|\s*[=:])|summe|gesamt|mittelwert|mittel|durchschnitt|schnitt|` +
  "promedio|moyenne|gemiddelde?|totaal|totale|media|medio|somma|srednia|suma|minimum|maximum";
/** Words of a row of limits; alone they can also be a person's name. */
const limits =
  "highest|lowest|best|worst|min|max|targets?|goal|aim|limits?|soll|sollwert|ziel|objetivo|streef|cible|consigne|guideline|recommended|ideal";
const calibration =
  "calibrations?|cal|calibrated|buffers?|standards?|kalibrierung|eichung|kalibratie|ijking|calibracion|etalonnage|taratura";

const words = (each: string): RegExp => new RegExp(`(?<![a-z])(?:${each})(?![a-z])`);
const sumsUp = words(summary);
const names = words(`${summary}|${limits}`);
const begins = new RegExp(`^(?:grand |week(?:ly)? |day |daily |month(?:ly)? )?(?:${summary}|${limits})(?![a-z])`);
/** A note that is nothing but the name of a summary: "weekly average", "mean of May". */
const onlySummary = new RegExp(`^(?:(?:week|month|dai|day|period)\\S*\\s)?(?:${summary})(?:\\s(?:of|for)\\s.{1,20})?$`);
const calibrates = words(calibration);
const startsWithFigure = /^\s*[-+~<>]?\d/;

/**
 * Why a row of figures is no reading: where its date would stand it says "Week 1 avg" or "target", or its pot is called
 * "May mean" or "calibration". In a row with a date of its own other words count for nothing: Max may be who read it.
 */
export function summaryIn(cells: readonly unknown[], columns: readonly ColumnReading[]): string | undefined {
  const date = textAt(cells, columns, "date");
  const isDated = columns.some(({ column, quantity, read }) => read && quantity === "date" && isDay(cells[column]));
  const vessel = textAt(cells, columns, "vessel");
  if (vessel !== undefined && sumsUp.test(plain(vessel))) return `${quoted(vessel)} sums up other rows`;
  if (vessel !== undefined && calibrates.test(plain(vessel))) return `${quoted(vessel)} is no pot: a meter was checked`;
  const note = textAt(cells, columns, "notes");
  if (note !== undefined && onlySummary.test(plain(note))) return `${quoted(note)} sums up other rows`;
  if (isDated) return undefined;
  if (date !== undefined && names.test(plain(date))) return `${quoted(date)} sums up other rows, or sets limits`;
  const label = cells.find(
    (cell) => typeof cell === "string" && begins.test(plain(cell)) && !startsWithFigure.test(cell),
  );
  return label === undefined ? undefined : `${quoted(label)} sums up other rows`;
}

/** Figures alone are no label, whatever day they mean. */
const onlyFigures = /^[\d\s./:-]+$/;

const isDay = (cell: unknown): boolean =>
  typeof cell === "number" ||
  (typeof cell === "string" && (onlyFigures.test(cell) || dateCell(cell, false).kind !== "none") && !isBlank(cell));

function textAt(
  cells: readonly unknown[],
  columns: readonly ColumnReading[],
  wanted: "date" | "vessel" | "notes",
): string | undefined {
  const found = columns.find(
    ({ column, quantity, read }) => read && quantity === wanted && typeof cells[column] === "string",
  );
  const cell = found === undefined ? undefined : cells[found.column];
  return typeof cell === "string" && cell.trim() !== "" ? cell : undefined;
}
