import { describe, expect, it } from "vitest";
import { type LogReading, readLog } from "../../../src/index";

/** A log of one column whose middle figure is the one given. */
function logOf(header: string, figure: number): LogReading {
  return readLog({ cells: [["Date", header], ...[figure, figure, figure].map((value, at) => [45_778 + at, value])] });
}

// What docs/log-sheets.md promises of a column's unit; common practice, no source.
describe("the unit of a column", () => {
  it.each([
    ["Runoff EC", 2.4, "mS/cm"], ["Runoff EC mS/cm", 20, "mS/cm"], ["Runoff EC dS/m", 2.4, "dS/m"],
    ["Runoff EC uS/cm", 2400, "uS/cm"], ["Runoff EC uS/cm", 100, "uS/cm"], ["Runoff EC mS/m", 240, "mS/m"],
    ["Runoff CF", 24, "CF"], ["Runoff ppm (500)", 1200, "ppm 500"],
    ["Water temp", 40, "C"], ["Water temp", 50, "F"], ["Water temp C", 22, "C"], ["Water temp F", 72, "F"],
  ])("%s with figures of %d is %s", (header, figure, unit) => {
    const { columns, questions } = logOf(header, figure);
    expect([columns[1]?.unit, columns[1]?.read, questions]).toEqual([unit, true, []]);
  });

  it.each([
    ["Runoff EC", 16, "EC unit"], ["Runoff EC", 240, "EC unit"], ["Runoff EC", 2400, "EC unit"],
    ["Runoff EC mS/cm", 2400, "EC unit"],
    ["Runoff EC dS/m", 240, "EC unit"], ["Runoff EC uS/cm", 2.4, "EC unit"], ["Runoff ppm", 1200, "ppm scale"],
    ["Runoff ppm (500)", 1.2, "EC unit"], ["Water temp", 41, "temperature unit"],
    ["Water temp", 49, "temperature unit"],
    ["Water temp C", 72, "temperature unit"], ["Runoff volume", 210, "volume unit"],
  ])("%s with figures of %d is asked: %s", (header, figure, kind) => {
    const { columns, questions } = logOf(header, figure);
    expect(questions.map((question) => [question.kind, question.columns])).toEqual([[kind, [1]]]);
    expect(columns[1]?.read).toBe(false);
  });
});

describe("the answer about a unit", () => {
  const cells = [["Date", "Runoff EC"], [45_778, 2400], [45_779, 2500], [45_780, 2600]];

  it.each([
    ["uS/cm", 2.4], ["ppm 500", 4.8], ["CF", 240],
  ] as const)("%s makes 2400 to %d mS/cm, or leaves it out", (ecUnit, value) => {
    const { rows, problems } = readLog({ cells }, { ecUnit });
    const said = problems.some(({ row, used }) => row === 1 && !used) || rows.length === 0;
    expect(said ? "left out" : rows[0]?.runoffEc).toEqual(value > 200 ? "left out" : value);
  });
});

describe("a temperature that cannot be the column's", () => {
  it.each([[72, "looks like F"], [150, "hard to believe"]])("of %d C among 22 %s", (figure, says) => {
    const readings = [22, 23, 22, figure].map((value, at) => [45_778 + at, value, 6]);
    const cells = [["Date", "Water temp C", "Runoff pH"], ...readings];
    const { problems } = readLog({ cells });
    expect(problems).toEqual([{ row: 4, column: 1, used: false, reason: expect.stringContaining(says) as string }]);
  });

  it("of 22 F among 72 looks like C", () => {
    const readings = [72, 73, 72, 22].map((value, at) => [45_778 + at, value, 6]);
    const cells = [["Date", "Water temp F", "Runoff pH"], ...readings];
    expect(readLog({ cells }).problems.map(({ reason }) => reason)).toEqual([expect.stringContaining("looks like C")]);
  });
});
