import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

/** The clock that a log of one day gives its rows, in hours; `undefined` where the cell is told of and not read. */
function hoursOf(...clocks: readonly (number | string)[]): (number | undefined)[] {
  const readings = clocks.map((clock, at) => ["2025-05-01", clock, 2 + at / 10]);
  const { rows, problems } = readLog({ cells: [["Date", "Time", "Runoff EC mS/cm"], ...readings] });
  const told = new Set(problems.filter(({ column, used }) => column === 1 && !used).map(({ row }) => row));
  return rows.map(({ row, day }) => {
    return told.has(row) || day === undefined ? undefined : Math.round((day % 1) * 86_400) / 3600;
  });
}

describe("clocks of a log", () => {
  it.each([
    ["9:40", 9 + 2 / 3], ["09.40", 9 + 2 / 3], ["9h40", 9 + 2 / 3], ["9:40:30", 9.675],
    ["23:59", 23 + 59 / 60],
    ["9:40 pm", 21 + 2 / 3], ["9:40 p.m.", 21 + 2 / 3], ["12:15 pm", 12.25], ["12:15 am", 0.25], ["11:15 a.m.", 11.25],
    ["9 am", 9], ["9 pm", 21], ["14 Uhr", 14], ["940", 9 + 2 / 3], ["1530", 15.5], ["0905", 9 + 1 / 12],
    ["1530h", 15.5],
    ["940 pm", 21 + 2 / 3], ["0940 am", 9 + 2 / 3], ["0:00", 0], ["12 am", 0], ["12 pm", 12], ["23:59:59", 24 - 1 / 3600],
    [0, 0], [100, 1], [1.5, 12], [940, 9 + 2 / 3], [2359, 23 + 59 / 60], [0.5, 12], ["0,375", 9], ["0.375", 9], [45_000.25, 6],
  ])("%s is %f hours after midnight", (clock, hours) => {
    const [came] = hoursOf(clock, "10:00");
    expect(came).toBeCloseTo(hours, 6);
  });

  it.each([
    99, -3, 960, Infinity, "24:00", "9:60", "9:40:60", "0:30 pm", "0:30 am", "13:00 am", 1575, 2400, -0.5, "noonish",
  ])("%s is no clock", (clock) => {
    expect(hoursOf(clock, "10:00")).toEqual([undefined, 10]);
  });

  it("takes whole hours 8, 14 and 24 for hours only where all of the column are", () => {
    expect(hoursOf(8, 14, 24)).toEqual([8, 14, 0]);
    expect(hoursOf(1, 0)).toEqual([1, 0]);
    expect(hoursOf(8, 25)).toEqual([undefined, undefined]);
    expect(hoursOf(8, 940)).toEqual([undefined, 9 + 2 / 3]);
  });

  it("puts the clock of the Time column in the place of the one behind the date", () => {
    const cells = [["Date", "Time", "Runoff EC mS/cm"], ["2025-05-01 18:00", "06:00", 2.4], ["2025-05-02 18:00", "", 2.5]];
    expect(readLog({ cells }).rows.map(({ day }) => day)).toEqual([45_778.25, 45_779.75]);
  });

  it("says nothing of a clock that is not noted, or is a part of the day", () => {
    const clocks = ["06:00", "n/a", "", "morning", "soon"];
    const readings = clocks.map((clock, at) => [`2025-05-0${at + 1}`, clock, 2.4]);
    const { rows, problems } = readLog({ cells: [["Date", "Time", "Runoff EC mS/cm"], ...readings] });
    expect(rows.map(({ day }) => day)).toEqual([45_778.25, 45_779, 45_780, 45_781, 45_782]);
    expect(problems.map(({ row, column, used }) => [row, column, used])).toEqual([[5, 1, false]]);
  });

  it("keeps 15:30 pm as half past three and doubts it", () => {
    const cells = [["Date", "Time", "Runoff EC mS/cm"], ["2025-05-01", "15:30 pm", 2.4]];
    const { rows, problems } = readLog({ cells });
    expect(((rows[0]?.day ?? 0) % 1) * 24).toBeCloseTo(15.5, 6);
    expect(problems).toEqual([{ row: 1, column: 1, used: true, reason: expect.stringContaining("24 h") as string }]);
  });
});

describe("which figure of a date is the day", () => {
  const asks = (...dates: readonly string[]): boolean => {
    const cells = [["Date", "Runoff EC mS/cm"], ...dates.map((date, at) => [date, 2 + at / 10])];
    return readLog({ cells }).questions.some(({ kind }) => kind === "date order");
  };

  it("is not told by a 12, and is told by a 13", () => {
    expect(asks("12/4/2025", "12/5/2025")).toBe(true);
    expect(asks("4/12/2025", "5/12/2025")).toBe(true);
    expect(asks("12/4/2025", "13/4/2025")).toBe(false);
    expect(asks("4/12/2025", "4/13/2025")).toBe(false);
    expect(asks("12/12/2025", "13/12/2025")).toBe(false);
    expect(asks("12/12/2025", "12/13/2025")).toBe(false);
  });

  it("is not told by 13/14/2025, which no calendar has, nor by dots where 1 date has the month first", () => {
    expect(asks("3/4/2025", "13/14/2025")).toBe(true);
    expect(asks("13.4.2025", "4.14.2025")).toBe(true);
    expect(asks("3.4.2025", "4.4.2025")).toBe(false);
  });

  it("is asked where 1 date in 5 speaks against 4 others no longer, and where 1 speaks against 4 it is a slip", () => {
    const first = ["13/4/2025", "14/4/2025", "15/4/2025", "16/4/2025"];
    expect(asks(...first, "4/17/2025")).toBe(true);
    expect(asks(...first, "17/4/2025", "4/18/2025")).toBe(false);
    const monthFirst = ["4/13/2025", "4/14/2025", "4/15/2025", "4/16/2025"];
    expect(asks(...monthFirst, "17/4/2025")).toBe(true);
    expect(asks(...monthFirst, "4/17/2025", "18/4/2025")).toBe(false);
  });
});
