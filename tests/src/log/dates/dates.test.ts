import fc from "fast-check";
import { afterEach, describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";
import { times } from "../../../laws/times";

const dayOf = (date: unknown, date1904 = false): number | undefined =>
  readLog({ cells: [["Date", "Runoff EC mS/cm"], [date, 2.1], ["2024-01-13", 2.2]], date1904 }).rows[0]?.day;
const pad = (value: number): string => String(value).padStart(2, "0");
/** The platform's calendar, in universal time, and serial 25569 for 1970-01-01 (ECMA-376 part 1, 18.17.4.1). */
const serial = (year: number, month: number, day: number): number => Date.UTC(year, month - 1, day) / 86_400_000 + 25_569;
const anyDay = fc.date({ min: new Date("1990-01-01T00:00:00Z"), max: new Date("2099-12-31T00:00:00Z"), noInvalidDate: true });
const zone = process.env["TZ"];

// Minutes behind universal time on 1 January 2024, IANA time zone database.
describe.each([
  ["UTC", 0],
  ["America/New_York", 300],
  ["Asia/Kolkata", -330],
  ["Pacific/Chatham", -825],
] as const)("dates of a log under TZ=%s", (name, minutes) => {
  afterEach(() => {
    if (zone === undefined) delete process.env["TZ"];
    else process.env["TZ"] = zone;
  });

  it("are the calendar's days, whatever the machine's zone: ISO, yyyymmdd and serials of 1990 to 2099", () => {
    process.env["TZ"] = name;
    expect(new Date(2024, 0, 1).getTimezoneOffset()).toBe(minutes);
    fc.assert(fc.property(anyDay, (date) => {
      const [year, month, day] = [date.getUTCFullYear(), date.getUTCMonth() + 1, date.getUTCDate()] as const;
      const expected = serial(year, month, day);
      expect(dayOf(`${year}-${pad(month)}-${pad(day)}`)).toBe(expected);
      expect(dayOf(year * 10_000 + month * 100 + day)).toBe(expected);
      expect(dayOf(expected)).toBe(expected);
      expect(dayOf(expected - 1462, true)).toBe(expected);
    }), times(200));
  });

  it("keep the clock as written: 2024-03-10 02:30 is a time even where the zone skips it", () => {
    process.env["TZ"] = name;
    expect(dayOf("2024-03-10 02:30")).toBeCloseTo(serial(2024, 3, 10) + 2.5 / 24, 9);
    expect(dayOf("2024-03-10T02:30:00Z")).toBeCloseTo(serial(2024, 3, 10) + 2.5 / 24, 9);
  });
});

// Serials as the host shows them: 45383 is 2024-04-01, 60 days later 45443 is 2024-05-31.
describe("dates of a log", () => {
  it.each([
    ["2024-04-01", 45_383],
    ["2024-05-31", 45_443],
    ["29.2.2024", 45_351],
    ["2024/02/29", 45_351],
    ["1 de mayo de 2024", 45_413],
    ["1. März 2024", 45_352],
    ["3 août 2024", 45_507],
    ["20240531", 45_443],
    ["45443", 45_443],
    ["45443.5", 45_443.5],
    ["13/4/24", 45_395],
    ["1.4.24", 45_383],
    ["13/4/10", 40_281],
    [19_900_101, 32_874],
    [20_991_231, 73_050],
    ["31/12/2099", 73_050],
    ["1990-01-01", 32_874],
    ["2024-04-01 at noonish", 45_383],
    ["2024-04-01 ", 45_383],
    [20_000, 20_000],
  ])("%s is day %i", (text, day) => {
    expect(dayOf(text)).toBe(day);
  });

  it.each([
    20_240_530.5, "13/4/09", 19_999, 80_300, 90_000, "2150-01-01", "1989-12-31", "3 foo 2024", 19_891_231, 21_000_101, "2023-02-29", "2024-13-01", "0", "45", "31/31/2024", "24-05-03", "1/2/3", "2024", "20240230", "yesterday", "1850-01-01"])("%s is no day of a log", (text) => {
    expect(dayOf(text)).toBeUndefined();
  });

  it.each([
    ["3/4", "has no year"], ["3 May", "has no year"], ["Jan 3", "has no year"], ["12 foo", "is not a date"],
  ])("says of %s that it %s", (date, why) => {
    const { problems } = readLog({ cells: [["Date", "Runoff EC mS/cm"], ["2024-05-01", 2], [date, 2.1], ["2024-05-04", 2.2]] });
    expect(problems.map(({ row, reason }) => [row, reason])).toEqual([[2, `"${date}" ${why}`]]);
  });

  it("refuses 24-05-13 and 24-05-14, which would be the 24th of May in 2013 and 2014", () => {
    const reading = readLog({ cells: [["Date", "Runoff EC mS/cm"], ["24-05-13", 2.1], ["24-05-14", 2.2]] });
    expect(reading.rows.map(({ day }) => day)).toEqual([undefined, undefined]);
    expect(reading.problems.map(({ reason }) => reason)).toEqual(Array(2).fill(expect.stringContaining("begin with its year")));
  });

  it("reads 2024-05-15, which says its year in full, among 24-05-13 and 24-05-14, which it refuses", () => {
    const cells = [["Date", "Runoff EC mS/cm"], ["24-05-13", 2.1], ["24-05-14", 2.2], ["2024-05-15", 2.3], ["16/5/2024", 2.4]];
    expect(readLog({ cells }).rows.map(({ day }) => day)).toEqual([undefined, undefined, 45_427, 45_428]);
  });

  // 13 and 14 May 2005 are days 38485 and 38486 of a sheet: 1 January 2005 is 38353, and 132 days lie between.
  it("reads a year of four digits, however long ago, and says of 1905 that it is no year of a log", () => {
    const cells = [["Date", "Runoff EC mS/cm"], ["13/5/2005", 2.1], ["14/5/2005", 2.2], ["15/5/1905", 2.3]];
    const { rows, problems } = readLog({ cells });
    expect(rows.map(({ day }) => day)).toEqual([38_485, 38_486, undefined]);
    expect(problems.map(({ reason }) => reason)).toEqual([expect.stringContaining("lies in the year 1905")]);
  });

  it("asks whether 3/5/2024 is in March or in May when no date of the column tells", () => {
    const reading = readLog({ cells: [["Date", "Runoff EC mS/cm"], ["3/5/2024", 2.1], ["4/5/2024", 2.2]] });
    expect(reading.questions.map(({ kind }) => kind)).toEqual(["date order"]);
    expect(reading.rows.map(({ day }) => day)).toEqual([undefined, undefined]);
  });
});
