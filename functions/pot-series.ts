import { type BenchReading, type Litres, litres, type PotJudgement, Refusal, stepHeading } from "../src/index";
import { amount, type Argument, type Cells, content, reading, series } from "./cells";
import { dateIn } from "./dated";

/** A reading that cannot be is judged with the rest ("check the meter"), not refused. */
export const asGiven = Object.assign((value: number): number => value, { physical: [0, Infinity] as const });

/** The columns of a log as a worksheet function is given them; one left out was not kept. */
export interface PotSeries {
  readonly vessels?: Cells | null | undefined;
  readonly dates?: Cells | null | undefined;
  readonly inputPh: Cells | null | undefined;
  readonly inputEc: Cells | null | undefined;
  readonly runoffPh: Cells | null | undefined;
  readonly runoffEc: Cells | null | undefined;
  readonly inputLitres?: Cells | null | undefined;
  readonly runoffLitres?: Cells | null | undefined;
  readonly notes?: Cells | null | undefined;
}

/** A reading with its place in the range, counted from 0. */
export interface PlacedReading extends BenchReading {
  readonly place: number;
}

/**
 * The rows of a log from its columns. A single blank cell, or an argument left empty, is a column that was not kept.
 *
 * @throws {Refusal} `impossible` when the columns differ in length
 */
export function potReadings(given: PotSeries): PlacedReading[] {
  const columns = {
    vessel: series(text(given.vessels, "pot")),
    day: series({ cells: given.dates, read: dateIn, called: "dates" }).map((day) => (day === 0 ? undefined : day)),
    inputPh: series(reading(given.inputPh, asGiven, "input pH")),
    inputEc: series(reading(given.inputEc, asGiven, "input EC")),
    runoffPh: series(reading(given.runoffPh, asGiven, "runoff pH")),
    runoffEc: series(reading(given.runoffEc, asGiven, "runoff EC")),
    inputLitres: series(amount<Litres>(given.inputLitres, litres, "input volume")),
    runoffLitres: series(amount<Litres>(given.runoffLitres, litres, "runoff volume")),
    notes: series(text(given.notes, "notes")),
  };
  const rows = rowCount(Object.values(columns));
  return Array.from({ length: rows }, (_, place) => ({
    place,
    vessel: columns.vessel[place],
    day: columns.day[place],
    inputPh: columns.inputPh[place],
    inputEc: columns.inputEc[place],
    runoffPh: columns.runoffPh[place],
    runoffEc: columns.runoffEc[place],
    inputLitres: columns.inputLitres[place],
    runoffLitres: columns.runoffLitres[place],
    notes: columns.notes[place],
  }));
}

/** The one length that all columns share that were given at all. */
function rowCount(columns: readonly (readonly unknown[])[]): number {
  const given = columns.filter((column) => column.length > 0 && !(column.length === 1 && column[0] === undefined));
  const lengths = given.map(({ length }) => length);
  const rows = Math.max(0, ...lengths);
  if (lengths.every((length) => length === rows)) return rows;
  const allowed =
    "all of the same length, one row each: input pH, input EC, runoff pH, runoff EC, and dates, litres and notes where given";
  throw new Refusal("impossible", { quantity: `columns of ${lengths.join(", ")} readings`, allowed });
}

/** A text; the 0 of a blank cell on the desktop host is none. */
function text(cells: Cells | null | undefined, called: string): Argument<string> {
  const read = (cell: unknown): string | undefined => {
    const value = content(cell);
    const words = value === undefined || value === 0 ? "" : String(value).trim();
    return words === "" ? undefined : words;
  };
  return { cells, read, called };
}

export const isBlank = ({ inputPh, inputEc, runoffPh, runoffEc }: BenchReading): boolean =>
  [inputPh, inputEc, runoffPh, runoffEc].every((value) => value === undefined);

/** A judgement with all it says in one text: reasons, the rows they rest on, and the course in its order. */
export function inOneCell(
  judgement: PotJudgement,
  ordered: readonly PlacedReading[],
): { readonly answer: string; readonly reasons: readonly [string] } {
  const { verdict, urgency, phase, causes, course, reasons, restsOn } = judgement;
  const rows = restsOn.map((place) => (ordered[place]?.place ?? place) + 1).sort((a, b) => a - b);
  const standing = [
    `urgency: ${urgency}`,
    ...(phase === "quiet" ? [] : [phase]),
    ...(causes.length === 0 ? [] : [`why: ${causes.join(", ")}`]),
  ];
  const rests =
    rows.length === 0 ? [] : [`rests on ${rows.length === 1 ? "row" : "rows"} ${rows.join(" and ")} of the range`];
  const steps = course.map((each, at) => `${at + 1}. ${stepHeading(each)}: ${each.says}`);
  return {
    answer: verdict,
    reasons: [`${[...reasons, ...rests, ...standing].join("; ")}. What to do, in this order: ${steps.join(" ")}`],
  };
}
