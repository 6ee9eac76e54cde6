import { isBlank, plain, quoted } from "../../cells/text";
import { dateCell } from "../dates/date-cell";
import { readOnce } from "../../cells/read-once";
import { type LogQuantity } from "../log";
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
 * Finds why a row of figures is no reading: where its date would stand it says "Week 1 avg" or "target", or its pot is
 * called "May mean" or "calibration". In a row with a date of its own other words count for nothing: Max may be who
 * read it.
 */
export function summaryFinder(columns: readonly ColumnReading[]): (cells: readonly unknown[]) => string | undefined {
  const placesOf = (wanted: LogQuantity): number[] =>
    columns.filter(({ quantity, read }) => read && quantity === wanted).map(({ column }) => column);
  const [dates, vessels, notes] = [placesOf("date"), placesOf("vessel"), placesOf("notes")];
  const [ofVessel, ofNote, isDayText] = [readOnce(summaryOfVessel), readOnce(summaryOfNote), readOnce(isDay)];
  const hasDay = (cells: readonly unknown[]): boolean =>
    dates.some((column) => {
      const cell = cells[column];
      return typeof cell === "string" ? isDayText(cell) : typeof cell === "number";
    });
  return (cells) => {
    const vessel = textAt(cells, vessels);
    const note = textAt(cells, notes);
    const named = vessel === undefined ? undefined : ofVessel(vessel);
    const noted = named ?? (note === undefined ? undefined : ofNote(note));
    return noted ?? (hasDay(cells) ? undefined : summaryOfUndated(cells, dates));
  };
}

function summaryOfVessel(vessel: string): string | undefined {
  if (sumsUp.test(plain(vessel))) return `${quoted(vessel)} sums up other rows`;
  return calibrates.test(plain(vessel)) ? `${quoted(vessel)} is no pot: a meter was checked` : undefined;
}

const summaryOfNote = (note: string): string | undefined =>
  onlySummary.test(plain(note)) ? `${quoted(note)} sums up other rows` : undefined;

function summaryOfUndated(cells: readonly unknown[], dates: readonly number[]): string | undefined {
  const date = textAt(cells, dates);
  if (date !== undefined && names.test(plain(date))) return `${quoted(date)} sums up other rows, or sets limits`;
  const label = cells.find(
    (cell) => typeof cell === "string" && begins.test(plain(cell)) && !startsWithFigure.test(cell),
  );
  return label === undefined ? undefined : `${quoted(label)} sums up other rows`;
}

/** Figures alone are no label, whatever day they mean. */
const onlyFigures = /^[\d\s./:-]+$/;

const isDay = (text: string): boolean =>
  (onlyFigures.test(text) || dateCell(text, false).kind !== "none") && !isBlank(text);

/** The first text in one of these columns. */
function textAt(cells: readonly unknown[], columns: readonly number[]): string | undefined {
  for (const column of columns) {
    const cell = cells[column];
    if (typeof cell === "string") return isBlank(cell) ? undefined : cell;
  }
  return undefined;
}
