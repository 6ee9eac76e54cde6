import { parse } from "csv-parse/sync";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type LogAnswers, type LogGrid, type LogReading, type LogRow, readLog } from "../../src/index";

/** A log and its reading, written by hand from what a person would say; rows and columns as the sheet numbers them. */
interface Sheet {
  readonly about: string;
  readonly cells?: LogGrid["cells"];
  readonly numberFormats?: readonly (readonly string[])[];
  readonly date1904?: boolean;
  readonly delimiter?: string;
  readonly answers?: LogAnswers;
  readonly columns: readonly string[];
  readonly headerRows: readonly number[];
  /** The fields of a row that this log holds; all others must be undefined. */
  readonly fields: readonly string[];
  readonly rows: readonly (readonly unknown[])[];
  readonly setAside: readonly (readonly [row: number, says: string])[];
  readonly blankRows?: number;
  readonly problems: readonly (readonly [cell: string, used: "used" | "not used", says: string])[];
  readonly questions: readonly (readonly [kind: string, columns: string])[];
  readonly vessels: readonly string[];
}

const folder = import.meta.dirname;
const names = readdirSync(folder).filter((name) => name.endsWith(".json")).map((name) => name.slice(0, -".json".length));
const letters = (column: number): string => String.fromCharCode(65 + column);
const cellName = (row: number, column: number): string => `${letters(column)}${row + 1}`;

function gridOf(name: string, sheet: Sheet): LogGrid {
  const csv = `${folder}/${name}.csv`;
  const cells = existsSync(csv)
    ? parse(readFileSync(csv, "utf8"), { delimiter: sheet.delimiter ?? ",", relax_column_count: true })
    : (sheet.cells ?? []);
  return {
    cells,
    ...(sheet.numberFormats === undefined ? {} : { numberFormats: sheet.numberFormats }),
    ...(sheet.date1904 === undefined ? {} : { date1904: sheet.date1904 }),
  };
}

/** A date of the expectation as a serial, by the platform's own calendar and not the reader's. */
const serial = (text: string): number => Date.parse(`${text.replace(" ", "T")}${text.includes(" ") ? ":00Z" : "T00:00Z"}`) / 86_400_000 + 25_569;

function expectRow(row: LogRow, fields: readonly string[], expected: readonly unknown[]): void {
  const given = new Map(fields.map((field, at) => [field, expected[at]]));
  for (const [field, value] of Object.entries(row)) {
    const wanted = given.get(field) ?? undefined;
    const where = `row ${row.row + 1} ${field}`;
    if (field === "row") expect(value, where).toBe(Number(wanted) - 1);
    else if (field === "events") expect(row.events.map(({ kind }) => kind), where).toEqual(wanted ?? []);
    else if (field === "day" && typeof wanted === "string") expect(value, where).toBeCloseTo(serial(wanted), 9);
    else if (typeof wanted === "number") expect(value, where).toBeCloseTo(wanted, 9);
    else expect(value, where).toBe(wanted);
  }
}

const columnsSaid = ({ columns }: LogReading): string[] =>
  columns.map(({ quantity, unit }) => (unit === undefined ? `${quantity} ?` : `${quantity} ${unit}`.trim()));

function expectProblems(reading: LogReading, expected: Sheet["problems"]): void {
  const left = reading.problems.map(({ row, column, used, reason }) => ({ cell: cellName(row, column), used: used ? "used" : "not used", reason }));
  for (const [cell, used, says] of expected) {
    const at = left.findIndex((problem) => problem.cell === cell && problem.used === used && problem.reason.includes(says));
    expect(at, `${cell} ${used}: ${says}, among ${JSON.stringify(left)}`).toBeGreaterThanOrEqual(0);
    left.splice(at, 1);
  }
  expect(left).toEqual([]);
}

describe.each(names)("log sheet %s", (name) => {
  const sheet = JSON.parse(readFileSync(`${folder}/${name}.json`, "utf8")) as Sheet;
  const grid = gridOf(name, sheet);
  const reading = readLog(grid, sheet.answers);

  it(`columns and questions: ${sheet.about}`, () => {
    expect(columnsSaid(reading)).toEqual(sheet.columns);
    expect(reading.headerRows.map((row) => row + 1)).toEqual(sheet.headerRows);
    expect(reading.questions.map(({ kind, columns }) => [kind, columns.map(letters).join(" ")])).toEqual(sheet.questions);
    expect(reading.vessels).toEqual(sheet.vessels);
  });

  it("uses these rows, with these values", () => {
    expect(reading.rows.map(({ row }) => row + 1)).toEqual(sheet.rows.map(([row]) => row));
    reading.rows.forEach((row, at) => { expectRow(row, sheet.fields, sheet.rows[at] ?? []); });
  });

  it("sets these rows aside, names these doubts, and loses no row", () => {
    expect(reading.setAside.map(({ row }) => row + 1)).toEqual(sheet.setAside.map(([row]) => row));
    reading.setAside.forEach(({ reason }, at) => { expect(reason).toContain(sheet.setAside[at]?.[1]); });
    expectProblems(reading, sheet.problems);
    expect(reading.blankRows).toBe(sheet.blankRows ?? 0);
    const counted = reading.rows.length + reading.setAside.length + reading.blankRows + reading.headerRows.length;
    expect(counted).toBe(grid.cells.length);
  });
});

it("tests/log-sheets holds at least 25 logs, each with its reading", () => {
  expect(names.length).toBeGreaterThanOrEqual(25);
});
