import path from "node:path";
import { cellRef } from "hucre";
import { type Act, type CourseStep, type PotJudgement, type Report, rowsUsed } from "../../src/index";
import { dayInWords } from "../../taskpane/drawing/time-axis";
import { type PlacedGrid } from "./log-grid";

/** All that was found in one file. */
export interface Findings {
  readonly file: string;
  readonly placed: PlacedGrid;
  readonly report: Report;
}

/** The findings as one object, for other programs: fields without an answer are null, lists without one empty. */
export function foundIn({ file, placed, report }: Findings): object {
  const { reading, vessel, judgement, timeline, pots, rows } = report;
  const address = addressesIn(placed);
  const questionOf = (column: number): string | undefined => reading.questions.find(({ columns }) => columns.includes(column))?.text;
  return {
    file: path.basename(file),
    sheet: placed.sheet,
    columns: reading.columns.map(({ column, letters, header, quantity, unit, bySide }) => {
      const question = questionOf(column);
      const sides = bySide === undefined ? {} : { bySide: { input: bySide.input, runoff: bySide.runoff } };
      return { address: letters, header, quantity, unit: unit ?? null, ...sides, ...(question === undefined ? {} : { question }) };
    }),
    questions: reading.questions.map(({ text, choices }) => ({ text, choices })),
    vessels: reading.vessels,
    vessel: vessel ?? null,
    rowsUsed: rowsUsed(reading),
    rowsSetAside: reading.setAside.map(({ row, column, reason }) => ({ cell: address.cell(row, column), reason })),
    rowsBlank: reading.blankRows,
    remarks: reading.remarks,
    cellProblems: reading.problems.map(({ row, column, reason, used }) => ({ cell: address.cell(row, column), reason, used })),
    verdict: judgement?.verdict ?? null,
    urgency: judgement?.urgency ?? null,
    phase: judgement?.phase ?? null,
    causes: judgement?.causes ?? [],
    course: (judgement?.course ?? []).map(stepFound),
    reasons: judgement?.reasons ?? report.waitsFor,
    restsOn: rows.map((row) => address.row(row)),
    ...asBefore(judgement, rows.map((row) => address.row(row))),
    pots: pots.map(({ vessel: name, judgement: { verdict, urgency, course } }) => ({ vessel: name ?? null, verdict, urgency, first: course[0].act })),
    lanes: timeline.lanes.map(({ name, unit, trend }) => ({ name, unit, trend: trend.words, changePerDay: trend.changePerDay ?? null })),
    events: timeline.events.map(({ kind, words, day, row }) => ({
      kind, words, date: timeline.axis === "dates" ? dayInWords(day) : null, row: address.row(row),
    })),
  };
}

/** Fields that programs read before there was a course, out of the same course. */
function asBefore(judgement: PotJudgement | undefined, restsOnRows: readonly number[]): object {
  const saysOf = (act: Act): string | null => judgement?.course.find((each) => each.act === act)?.says ?? null;
  return {
    next: judgement?.course[0].says ?? null, measureAgain: saysOf("measure again now"), afterFlush: saysOf("feed by the ramp"), restsOnRows,
  };
}

/** A step with its date in words, where it has one. */
function stepFound({ at, ...said }: CourseStep): object {
  return at === undefined ? said : { ...said, date: dayInWords(at) };
}

/** Rows and cells as the sheet numbers them. */
export function addressesIn({ grid }: PlacedGrid) {
  const row = (place: number): number => (grid.rowNumbers[place] ?? place) + 1;
  const cell = (place: number, across: number | undefined): string => cellRef(row(place) - 1, grid.columnNumbers[across ?? 0] ?? 0);
  return { row, cell };
}
