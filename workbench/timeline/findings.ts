import path from "node:path";
import { cellRef } from "hucre";
import { type Act, type CourseStep, type PotJudgement, type Report, rowsUsed, waitingIn } from "../../src/index";
import { dayInWords } from "../../taskpane/drawing/time-axis";
import { type PlacedGrid } from "./log-grid";

/** All that was found in one file. */
export interface Findings {
  readonly file: string;
  readonly placed: PlacedGrid;
  readonly report: Report;
}

/** What was found in the log shown, and in the others of its book, in the book's order. */
export interface BookFindings extends Findings {
  readonly others: readonly Findings[];
}

/** The findings as one object, for other programs: fields without an answer are null, lists without one empty. */
export function foundIn({ file, placed, report, others }: BookFindings): object {
  const address = addressesIn(placed);
  const restsOn = report.rows.map((row) => address.row(row));
  return {
    file: path.basename(file),
    sheet: placed.sheet,
    sheets: [{ placed, report }, ...others].map(sheetFound),
    ...readingFound(report, address),
    ...judgementFound(report, restsOn),
    ...asBefore(report.judgement, restsOn),
    ...timelineFound(report, address),
  };
}

type Addresses = ReturnType<typeof addressesIn>;

/** What the log reader made of the sheet. */
function readingFound({ reading, vessel }: Report, address: Addresses): object {
  const questionOf = (column: number): string | undefined =>
    reading.questions.find(({ columns }) => columns.includes(column))?.text;
  return {
    columns: reading.columns.map(({ column, letters, header, quantity, unit, bySide }) => {
      const question = questionOf(column);
      const asked = question === undefined ? {} : { question };
      const sides = bySide === undefined ? {} : { bySide: { input: bySide.input, runoff: bySide.runoff } };
      return { address: letters, header, quantity, unit: unit ?? null, ...sides, ...asked };
    }),
    questions: reading.questions.map(({ text, choices }) => ({ text, choices })),
    vessels: reading.vessels,
    vessel: vessel ?? null,
    rowsUsed: rowsUsed(reading),
    rowsSetAside: reading.setAside.map(({ row, column, reason }) => ({ cell: address.cell(row, column), reason })),
    rowsBlank: reading.blankRows,
    remarks: [...reading.remarks, ...waitingIn(reading)],
    cellProblems: reading.problems.map(({ row, column, ...rest }) => ({
      cell: address.cell(row, column), reason: rest.reason, used: rest.used,
    })),
  };
}

/** The judgement of the pot shown, and the pots, worst first. */
function judgementFound({ judgement, waitsFor, pots }: Report, restsOn: readonly number[]): object {
  return {
    verdict: judgement?.verdict ?? null,
    urgency: judgement?.urgency ?? null,
    phase: judgement?.phase ?? null,
    causes: judgement?.causes ?? [],
    course: (judgement?.course ?? []).map(stepFound),
    reasons: judgement?.reasons ?? waitsFor,
    limitsThatFit: judgement?.limitsThatFit ?? null,
    restsOn,
    pots: pots.map(({ vessel, judgement: { verdict, urgency, course } }) => ({
      vessel: vessel ?? null, verdict, urgency, first: course[0].act,
    })),
  };
}

function timelineFound({ timeline }: Report, address: Addresses): object {
  const dateOf = (day: number): string | null => (timeline.axis === "dates" ? dayInWords(day) : null);
  return {
    lanes: timeline.lanes.map(({ name, unit, trend }) => ({
      name, unit, trend: trend.words, changePerDay: trend.changePerDay ?? null,
    })),
    events: timeline.events.map(({ kind, words, day, row }) => ({
      kind, words, date: dateOf(day), row: address.row(row),
    })),
  };
}

/** A log of the book, with where its worst pot stands. */
function sheetFound({ placed, report: { reading, pots } }: Pick<Findings, "placed" | "report">): object {
  const worst = pots[0]?.judgement;
  return { sheet: placed.sheet, rowsUsed: rowsUsed(reading), verdict: worst?.verdict ?? null, urgency: worst?.urgency ?? null };
}

/** Fields that programs read before there was a course, out of the same course. */
function asBefore(judgement: PotJudgement | undefined, restsOnRows: readonly number[]): object {
  const saysOf = (act: Act): string | null => judgement?.course.find((each) => each.act === act)?.says ?? null;
  return {
    next: judgement?.course[0].says ?? null,
    measureAgain: saysOf("measure again now"),
    afterFlush: saysOf("feed by the ramp"),
    restsOnRows,
  };
}

/** A step with its date in words, where it has one. */
function stepFound({ at, ...said }: CourseStep): object {
  return at === undefined ? said : { ...said, date: dayInWords(at) };
}

/** Rows and cells as the sheet numbers them. */
export function addressesIn({ grid }: PlacedGrid) {
  const row = (place: number): number => (grid.rowNumbers[place] ?? place) + 1;
  const cell = (place: number, across: number | undefined): string =>
    cellRef(row(place) - 1, grid.columnNumbers[across ?? 0] ?? 0);
  return { row, cell };
}
