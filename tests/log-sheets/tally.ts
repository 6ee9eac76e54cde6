import { readLog, rowsUsed } from "../../src/index";
import { type Expected, expectedOf } from "./expected";
import { type MessySheet } from "./messy-sheet";
import { columnOutcome, type Look, lookAt, type Outcome } from "./outcome";
import { rowOutcome } from "./row-outcome";

/** Reads a messy sheet and says what came of each column and row. */
export function outcomeOf(sheet: MessySheet): Outcome {
  const expected = expectedOf(sheet);
  const look = lookAt(readLog(expected.grid));
  const columns = expected.columns.map((_, column) => columnOutcome(expected, look, column));
  const isFilled = (row: number): boolean => !["header", "blank"].includes(expected.kind(row));
  const readings = [...expected.grid.cells.keys()].filter(isFilled);
  const rows = readings.map((row) => rowOutcome(expected, look, row));
  const faults = [...columns, ...rows].flatMap(({ fault }) => fault ?? []);
  return {
    columns: columns.map(({ outcome }) => outcome),
    rows: rows.map(({ outcome }) => outcome),
    faults: [...faults, ...sheetFaults(expected, look)],
  };
}

function sheetFaults({ sheet, grid }: Expected, { reading, used }: Look): string[] {
  const counted = rowsUsed(reading) + reading.setAside.length + reading.blankRows + reading.headerRows.length;
  const faults = counted === grid.cells.length ? [] : [`${counted} rows counted of ${grid.cells.length}`];
  const asksDays = reading.questions.some(({ text }) => /\b(date|day)s?\b/i.test(text));
  if (sheet.asksDays === true && !asksDays) faults.push("no row has a day, and none is asked for");
  const { asksNaming } = sheet;
  const named = reading.questions.some(({ text }) => new RegExp(`\\b${asksNaming ?? ""}\\b`).test(text));
  if (asksNaming !== undefined && !named) faults.push(`no question names column ${asksNaming}`);
  if (sheet.refused === true && used.size > 0) faults.push(`${used.size} rows used of a sheet that is no log`);
  return faults;
}
