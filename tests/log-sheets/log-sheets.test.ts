import { describe, expect, it } from "vitest";
import { type LogReading, type LogRow, readLog, rowsUsed } from "../../src/index";
import { columnsSaid, plainGrid, type PlainSheet, plainSheet, plainSheetNames } from "./plain-sheet";

const letters = (column: number): string => String.fromCharCode(65 + column);
const cellName = (row: number, column: number): string => `${letters(column)}${row + 1}`;

/** A date of the expectation as a serial, by the platform's own calendar and not the reader's. */
function serial(text: string): number {
  const [date = "", clock = "00:00"] = text.split(" ");
  return Date.parse(`${date}T${clock}Z`) / 86_400_000 + 25_569;
}

function expectRow(row: LogRow, fields: readonly string[], expected: readonly unknown[]): void {
  const given = new Map(fields.map((field, at) => [field, expected[at]]));
  for (const [field, value] of Object.entries(row)) {
    // What the judgement is told of a figure left out is what the problems say, and those are compared below.
    if (field === "unread") continue;
    const wanted = given.get(field) ?? undefined;
    const where = `row ${row.row + 1} ${field}`;
    if (field === "row") expect(value, where).toBe(Number(wanted) - 1);
    else if (field === "events") expect(row.events.map(({ kind }) => kind), where).toEqual(wanted ?? []);
    else if (field === "day" && typeof wanted === "string") expect(value, where).toBeCloseTo(serial(wanted), 9);
    else if (typeof wanted === "number") expect(value, where).toBeCloseTo(wanted, 9);
    else expect(value, where).toBe(wanted);
  }
}

function expectProblems(reading: LogReading, expected: PlainSheet["problems"]): void {
  const left = reading.problems.map(({ row, column, used, reason }) => {
    return { cell: cellName(row, column), used: used ? "used" : "not used", reason };
  });
  for (const [cell, used, says] of expected) {
    const at = left.findIndex((one) => one.cell === cell && one.used === used && one.reason.includes(says));
    expect(at, `${cell} ${used}: ${says}, among ${JSON.stringify(left)}`).toBeGreaterThanOrEqual(0);
    left.splice(at, 1);
  }
  expect(left).toEqual([]);
}

describe.each(plainSheetNames)("log sheet %s", (name) => {
  const sheet = plainSheet(name);
  const grid = plainGrid(name, sheet);
  const reading = readLog(grid, sheet.answers);

  it(`columns and questions: ${sheet.about}`, () => {
    expect(columnsSaid(reading)).toEqual(sheet.columns);
    expect(reading.headerRows.map((row) => row + 1)).toEqual(sheet.headerRows);
    const questions = reading.questions.map(({ kind, columns }) => [kind, columns.map(letters).join(" ")]);
    expect(questions).toEqual(sheet.questions);
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
    const counted = rowsUsed(reading) + reading.setAside.length + reading.blankRows + reading.headerRows.length;
    expect(counted).toBe(grid.cells.length);
  });
});

it("tests/log-sheets holds at least 51 logs, each with its reading", () => {
  expect(plainSheetNames.length).toBeGreaterThanOrEqual(51);
});
