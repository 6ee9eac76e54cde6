import { describe, expect, it } from "vitest";
import { type LogRow, readLog } from "../../../src/index";

type Said = "used" | "doubt" | "left out";

/** A log of one column, and of a note in each row, so that no row is blank but for it. */
function logOf(header: string, figures: readonly number[]): unknown[][] {
  return [["Date", header, "Notes"], ...figures.map((figure, at) => [45_778 + at, figure, "seen"])];
}

/** What becomes of the fifth reading of a column after four usual ones. */
function fifth(header: string, field: keyof LogRow, usual: number, cell: number): readonly [unknown, Said] {
  const { rows, problems } = readLog({ cells: logOf(header, [usual, usual, usual, usual, cell]) });
  const problem = problems.find(({ row, column }) => row === 5 && column === 1);
  const said = problem?.used === true ? "doubt" : "left out";
  return [rows.find(({ row }) => row === 5)?.[field], problem === undefined ? "used" : said];
}

/** At each limit of docs/log-sheets.md, and a step of the meter beyond it. Common practice, no source. */
const limits: readonly (readonly [string, keyof LogRow, number, number, unknown, Said])[] = [
  ["Runoff EC mS/cm", "runoffEc", 0.2, 0.1, 0.1, "used"],
  ["Runoff EC mS/cm", "runoffEc", 0.2, 0.09, undefined, "left out"],
  ["Runoff EC mS/cm", "runoffEc", 15, 20, 20, "used"],
  ["Runoff EC mS/cm", "runoffEc", 15, 20.1, 20.1, "doubt"],
  ["Runoff EC mS/cm", "runoffEc", 15, -1.4, undefined, "left out"],
  ["Runoff EC mS/cm", "runoffEc", 15, 120, 120, "doubt"],
  ["Runoff EC mS/cm", "runoffEc", 15, 121, undefined, "left out"],
  ["Runoff EC mS/cm", "runoffEc", 15, 0, undefined, "left out"],
  ["Runoff EC mS/cm", "runoffEc", 0.3, 2, 2, "used"],
  ["Runoff EC mS/cm", "runoffEc", 0.3, 2.5, 2.5, "doubt"],
  ["Runoff EC mS/cm", "runoffEc", 0.3, 2.3, 2.3, "used"],
  ["Runoff EC uS/cm", "runoffEc", 300, 100, 0.1, "used"],
  ["Runoff EC uS/cm", "runoffEc", 300, 99, undefined, "left out"],
  ["Runoff pH", "runoffPh", 6, 3, 3, "used"],
  ["Runoff pH", "runoffPh", 6, 0, undefined, "left out"],
  ["Runoff pH", "runoffPh", 6, -1, undefined, "left out"],
  ["Runoff pH", "runoffPh", 6, 2.9, 2.9, "doubt"],
  ["Runoff pH", "runoffPh", 6, 10, 10, "used"],
  ["Runoff pH", "runoffPh", 6, 10.1, 10.1, "doubt"],
  ["Runoff pH", "runoffPh", 6, 1, undefined, "left out"],
  ["Runoff pH", "runoffPh", 6, 1.1, 1.1, "doubt"],
  ["Runoff pH", "runoffPh", 6, 14, 14, "doubt"],
  ["Runoff pH", "runoffPh", 6, 14.1, undefined, "left out"],
  ["RH %", "humidityPercent", 40, 15, 15, "used"],
  ["RH %", "humidityPercent", 40, 14, 14, "doubt"],
  ["RH %", "humidityPercent", 40, 100, 100, "used"],
  ["RH %", "humidityPercent", 40, 101, undefined, "left out"],
  ["RH %", "humidityPercent", 40, 0.5, 0.5, "doubt"],
  ["RH %", "humidityPercent", 40, 0, undefined, "left out"],
  ["Air temp C", "airCelsius", 22, 45, 45, "used"],
  ["Air temp C", "airCelsius", 22, 46, undefined, "left out"],
  ["Air temp C", "airCelsius", 22, 10.1, 10.1, "used"],
  ["Air temp C", "airCelsius", 22, 10, undefined, "left out"],
  ["Air temp C", "airCelsius", 22, 3, undefined, "left out"],
  ["Air temp C", "airCelsius", 14, 6, 6, "used"],
  ["Air temp C", "airCelsius", 14, 5, 5, "used"],
  ["Air temp C", "airCelsius", 14, 4.9, undefined, "left out"],
  ["Air temp C", "airCelsius", 15, 6, undefined, "left out"],
  ["Air temp F", "airCelsius", 72, 50, 10, "used"],
  ["Runoff L", "runoffLitres", 1, 0, 0, "used"],
  ["Runoff L", "runoffLitres", 30, 500, 500, "used"],
  ["Runoff L", "runoffLitres", 400, 2000, 2000, "used"],
  ["Runoff L", "runoffLitres", 400, 2001, 2001, "doubt"],
  ["Runoff L", "runoffLitres", 400_000, 1_000_000, 1_000_000, "doubt"],
  ["Runoff L", "runoffLitres", 400_000, 1_000_001, undefined, "left out"],
  ["Runoff L", "runoffLitres", 1, -0.1, undefined, "left out"],
];

describe("a figure at a limit", () => {
  it.each(limits)("%s (%s) usually %d: %d comes as %d, %s", (header, field, usual, cell, value, said) => {
    expect(fifth(header, field, usual, cell)).toEqual([value, said]);
  });

  it("names uS/cm or ppm for 2400 among mS/cm, and a lost point for 24", () => {
    const reasons = [2400, 24].map((cell) => {
      const cells = logOf("Runoff EC mS/cm", [2.4, 2.4, 2.5, cell]);
      return readLog({ cells }).problems.map(({ reason }) => reason);
    });
    expect(reasons).toEqual([[expect.stringContaining("uS/cm or ppm")], [expect.stringContaining("decimal point")]]);
  });

  it.each([
    ["Runoff EC uS/cm", 2400, 2.4, "looks like mS/cm"], ["Runoff EC uS/cm", 2400, 0.1, "looks like mS/cm"],
    ["Runoff EC uS/cm", 2400, 20, "looks like mS/cm"], ["Runoff EC uS/cm", 2400, 21, "out of the water"],
    ["Runoff EC uS/cm", 2400, 0.09, "out of the water"], ["Runoff EC mS/cm", 2.4, 0.09, "out of the water"],
    ["Runoff EC mS/cm", 15, 150, "uS/cm or ppm"], ["Runoff EC mS/cm", 0.5, 45, "decimal point"],
    ["Runoff EC mS/cm", 2.4, 99, "decimal point"], ["Runoff EC mS/cm", 2.4, 100, "uS/cm or ppm"],
    ["Runoff EC mS/cm", 15, 21, "hard to believe"], ["Runoff EC mS/cm", 0.3, 3, "10 times"],
    ["Runoff pH", 6, 0, "not measured"], ["Runoff pH", 6, 1, "before it is in the water"],
    ["Runoff pH", 6, 15, "temperature"], ["Runoff pH", 6, 40, "temperature"], ["Runoff pH", 6, 41, "decimal point"],
    ["Runoff pH", 6, 100, "decimal point"], ["Runoff pH", 6, 101, "looks like the probe's mV"],
    ["Runoff pH", 6, -30, "looks like the probe's mV"],
    ["Air temp C", 22, 6.1, "pH in the wrong column"], ["Air temp C", 22, 3, "pH in the wrong column"],
    ["Air temp C", 22, 10, "pH in the wrong column"], ["Air temp C", 22, 2.9, "hard to believe"],
    ["Air temp C", 22, 46, "looks like F"], ["Air temp C", 22, 113, "looks like F"],
    ["Air temp C", 22, 114, "hard to believe"], ["Air temp F", 72, 22, "looks like C"],
    ["Air temp F", 72, 5, "looks like C"], ["Air temp F", 72, 4, "hard to believe"],
    ["Air temp F", 72, 40, "looks like C"], ["Air temp F", 72, 114, "hard to believe"],
    ["RH %", 55, 5, "hard to believe"], ["RH %", 55, 120, "cannot be"], ["RH %", 55, 0, "not measured"],
    ["Runoff L", 1, -1, "cannot be"], ["Runoff L", 400, 2100, "another unit"],
  ])("%s usually %d: of %d is said what it looks like, %s", (header, usual, cell, looks) => {
    const { problems } = readLog({ cells: logOf(header, [usual, usual, usual, usual, cell]) });
    expect(problems.map(({ row, reason }) => [row, reason])).toEqual([[5, expect.stringContaining(looks)]]);
  });

  it.each([
    [61, "decimal point"], [21.5, "temperature"], [-177, "mV"],
  ])("says what %d under pH looks like: %s", (cell, looks) => {
    expect(readLog({ cells: logOf("Runoff pH", [6, 6.1, 6, cell]) }).problems.map(({ reason }) => reason)).toEqual([expect.stringContaining(looks)]);
  });
});

describe("a row that repeats another", () => {
  const header = ["Date", "Time", "Runoff EC mS/cm", "Notes"];
  const row = [45_778, "08:30", 2.4, "fine"];
  const asideOf = (...cells: readonly unknown[][]): number[] =>
    readLog({ cells: [header, ...cells] }).setAside.map(({ row: at }) => at + 1);

  it("is set aside where every cell is the same, blanks alike", () => {
    expect(asideOf(row, [45_779, "08:30", 2.5, ""], [45_779, "08:30", 2.5, null], row)).toEqual([4, 5]);
  });

  it.each([[0, 45_780], [1, "08:31"], [2, 2.41], [3, "fine."]])("is used where cell %i differs: %j", (at, cell) => {
    const other = row.map((value, place) => (place === at ? cell : value));
    expect(asideOf(row, [45_779, "08:30", 2.5, ""], other)).toEqual([]);
  });
});
