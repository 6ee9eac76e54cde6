import { describe, expect, it } from "vitest";
import { type LogReading, logInTime, readLog, rowsUsed, saidOfRows, waitingIn } from "../../../src/index";

const logOf = (...rows: readonly (readonly unknown[])[]): LogReading =>
  readLog({ cells: [["Date", "Pot", "Runoff EC mS/cm", "Notes"], ...rows] });

describe("logInTime(rows, vessel)", () => {
  it("puts the oldest first, and rows of one moment in the order of the sheet", () => {
    const { rows } = logOf(["2025-05-03", "A", 2.3], ["2025-05-01", "A", 2.1], ["2025-05-02", "A", 2.2], ["2025-05-02", "A", 2.25]);
    expect(logInTime(rows).rows.map(({ row }) => row)).toEqual([2, 3, 4, 1]);
    expect(logInTime([...rows].reverse()).rows.map(({ row }) => row)).toEqual([2, 3, 4, 1]);
    expect(logInTime(rows).axis).toBe("dates");
  });

  it("leaves out rows without a day and counts them, each pot by itself", () => {
    const { rows } = logOf(["2025-05-01", "A", 2.1], ["soon", "A", 2.2], ["2025-05-02", "B", 2.3], ["later", "B", 2.4], ["then", "B", 2.5]);
    expect([logInTime(rows).undated, logInTime(rows, "A").undated, logInTime(rows, "B").undated]).toEqual([3, 1, 2]);
    expect(logInTime(rows, "B").rows.map(({ row }) => row)).toEqual([3]);
    expect(logInTime(rows, "C")).toEqual({ axis: "readings", rows: [], undated: 0 });
  });

  it("counts the readings from 1 where no row has a day", () => {
    const { rows } = readLog({ cells: [["Pot", "Runoff EC mS/cm"], ["A", 2.1], ["A", 2.2]] });
    const { axis, rows: placed, undated } = logInTime(rows);
    expect([axis, undated, placed.map(({ day }) => day)]).toEqual(["readings", 0, [1, 2]]);
  });
});

describe("what is said of the log as a whole", () => {
  it("names rows without a date, up to four of them, by the sheet's numbers", () => {
    const day = ["2025-05-01", "A", 2.1];
    const undated = (count: number): readonly string[] =>
      logOf(day, ...Array.from({ length: count }, (_, at) => ["soon", "A", 2.2 + at / 10])).remarks;
    expect(undated(0)).toEqual([]);
    expect(undated(1)).toEqual(["1 row has no date that can be read (row 3): it is left out of what is judged."]);
    expect(undated(2)).toEqual(["2 rows have no date that can be read (rows 3, 4): they are left out of what is judged."]);
    expect(undated(4)).toEqual(["4 rows have no date that can be read (rows 3, 4, 5, 6): they are left out of what is judged."]);
    expect(undated(6)).toEqual(["6 rows have no date that can be read (rows 3, 4, 5, 6 and 2 more): they are left out of what is judged."]);
  });

  it("says where no row has one, unless the order of day and month is asked first", () => {
    const none = "No row has a date that can be read: the readings stand in the order of their rows.";
    expect(logOf(["soon", "A", 2.1], ["later", "A", 2.2]).remarks).toEqual([none]);
    expect(logOf(["3/4/2025", "A", 2.1], ["4/4/2025", "A", 2.2]).remarks).toEqual([]);
  });

  it("names hidden rows and the hidden columns that are read", () => {
    const cells = [["Date", "Crop", "Runoff EC mS/cm", "Runoff pH"], ["2025-05-01", "basil", 2.1, 6]];
    const remarks = (hiddenRows: number, ...hiddenColumns: readonly number[]): readonly string[] =>
      readLog({ cells, hiddenRows, hiddenColumns, columnNumbers: [1, 2, 3, 4] }).remarks;
    expect(remarks(1)).toEqual(["1 hidden row is not read."]);
    expect(remarks(3, 1)).toEqual(["3 hidden rows are not read."]);
    expect(remarks(0, 2, 3)).toEqual(["Hidden columns are read too: D (runoff EC), E (runoff pH)."]);
    expect(remarks(0, 1)).toEqual([]);
  });

  it("names the columns that wait for an answer", () => {
    const waiting = (...header: readonly string[]): string[] =>
      waitingIn(readLog({ cells: [["Date", ...header], ["2025-05-01", ...header.map(() => 900)], ["2025-05-02", ...header.map(() => 950)]] }));
    expect(waiting("Runoff ppm")).toEqual(["Column B waits for an answer and is not read yet."]);
    expect(waiting("Feed ppm", "Runoff ppm")).toEqual(["Columns B, C wait for an answer and are not read yet."]);
    expect(waiting("Runoff EC uS/cm")).toEqual([]);
  });
});

describe("saidOfRows(reading)", () => {
  const setAside = (count: number, reason: (at: number) => string): Parameters<typeof saidOfRows>[0] =>
    ({ setAside: Array.from({ length: count }, (_, at) => ({ row: at, reason: reason(at) })), problems: [] });

  it("says three rows in the same words one by one, and four in one line", () => {
    expect(saidOfRows(setAside(3, (at) => `repeats row ${at}`)).map(({ rows }) => rows)).toEqual([[0], [1], [2]]);
    expect(saidOfRows(setAside(4, (at) => `repeats row ${at}`)))
      .toEqual([{ row: 0, column: undefined, rows: [0, 1, 2, 3], reason: "repeats row 0", used: false }]);
    expect(saidOfRows(setAside(4, (at) => `"word ${at}" is not a number`))).toHaveLength(1);
    expect(saidOfRows(setAside(4, (at) => ["a", "b", "c", "d"][at] ?? ""))).toHaveLength(4);
  });

  it("keeps apart what is used and what is not, and what stands in another column; in the order of the sheet", () => {
    const problem = (row: number, column: number, used: boolean) => ({ row, column, used, reason: "hard to believe" });
    const problems = [problem(5, 2, true), problem(5, 1, true), problem(6, 1, true), problem(7, 1, true), problem(8, 1, true), problem(9, 1, false)];
    const said = saidOfRows({ setAside: [{ row: 5, reason: "a total" }, { row: 2, reason: "a title" }], problems });
    expect(said.map(({ row, column, rows, used }) => [row, column, rows.length, used])).toEqual([
      [2, undefined, 1, false], [5, undefined, 1, false], [5, 1, 4, true], [5, 2, 1, true], [9, 1, 1, false],
    ]);
  });
});

it("rowsUsed counts a reading of feed and runoff from rows of their own for two", () => {
  const cells = [["Date", "Sample", "EC mS/cm"], ["2025-05-01", "feed", 1.6], ["2025-05-01", "runoff", 2.4], ["2025-05-02", "runoff", 2.5]];
  expect(rowsUsed(readLog({ cells }))).toBe(3);
});
