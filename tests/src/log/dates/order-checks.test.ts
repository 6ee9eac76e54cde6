import { describe, expect, it } from "vitest";
import { type LogReading, readLog } from "../../../../src/index";

/** A log of EC readings at these moments, in days of May 2025; by its sheet's own dates. */
const logOf = (...days: readonly number[]): LogReading => {
  const rows = days.map((day, at) => [45_777 + day, 2 + at / 10]);
  return readLog({ cells: [["Date", "Runoff EC mS/cm"], ...rows] });
};
/** The rows that are doubted for these words, counted from 1 below the header. */
const said = ({ problems }: LogReading, words: string): number[] =>
  problems.filter(({ used, reason }) => used && reason.includes(words)).map(({ row }) => row);

describe("the order of the dates", () => {
  const outOfOrder = (...days: readonly number[]): number[] => said(logOf(...days), "out of order");

  it("may be oldest first or newest first, from two rows on", () => {
    expect(outOfOrder(1, 2)).toEqual([]);
    expect(outOfOrder(2, 1)).toEqual([]);
    expect(outOfOrder(5, 4, 2, 1)).toEqual([]);
  });

  it("names the fewest rows that explain the disorder, and the later one of two", () => {
    expect(outOfOrder(1, 2, 9, 3, 4)).toEqual([3]);
    expect(outOfOrder(9, 8, 1, 7, 6)).toEqual([3]);
    expect(outOfOrder(1, 2, 1)).toEqual([3]);
    expect(outOfOrder(1, 3, 2, 4, 5)).toEqual([3]);
  });

  it("is said in the column of the dates, wherever it stands", () => {
    const rows = [1, 2, 9, 3, 4].map((day, at) => [2 + at / 10, 45_777 + day]);
    const { problems } = readLog({ cells: [["Runoff EC mS/cm", "Date"], ...rows] });
    expect(problems.map(({ row, column }) => [row, column])).toEqual([[3, 1]]);
  });

  it("gives a day without a clock no hour of its own: it keeps step with the row above", () => {
    expect(outOfOrder(1.5, 2.3, 2, 2.6, 3.5)).toEqual([]);
    expect(outOfOrder(3.5, 2.6, 2, 2.3, 1.5)).toEqual([]);
    expect(outOfOrder(1.5, 2.6, 2.3, 3.5)).toEqual([3]);
  });
});

describe("a date used twice", () => {
  const usedTwice = (...days: readonly number[]): number[] => said(logOf(...days), "already used");

  it("is a slip on up to a quarter of the days, and the habit of the log on more", () => {
    expect(usedTwice(1, 2, 3, 4, 5, 5, 6, 7, 8, 8)).toEqual([6, 10]);
    expect(usedTwice(1, 2, 3, 3, 4, 5, 5, 6, 7, 8, 8)).toEqual([]);
    expect(usedTwice(1, 2, 3, 4)).toEqual([]);
  });

  it("is none where the clock differs, or the pot", () => {
    expect(usedTwice(1.3, 2.3, 3.3, 3.6, 4.3)).toEqual([]);
    const pots = ["A", "B"].flatMap((pot) => [1, 2, 3, 4].map((day) => [45_777 + day, pot, 2]));
    expect(said(readLog({ cells: [["Date", "Pot", "Runoff EC mS/cm"], ...pots] }), "already used")).toEqual([]);
  });
});

describe("true dates among dates typed as text", () => {
  const swapped = (...texts: readonly string[]): number[] => {
    const rows = [45_600, ...texts].map((date, at) => [date, 2 + at / 10]);
    return said(readLog({ cells: [["Date", "Runoff EC mS/cm"], ...rows] }), "swapped day and month");
  };

  it("may have been turned by the sheet where all text ones have a day above 12, which it could not turn", () => {
    expect(swapped("13/11/2024", "14/11/2024")).toEqual([1]);
  });

  it("were typed as dates where a text one has a day up to 12, or where all texts say their year first", () => {
    expect(swapped("12/11/2024", "13/11/2024")).toEqual([]);
    expect(swapped("2024-11-13", "2024-11-14")).toEqual([]);
  });
});

it("a date that no calendar has is said to be read in the column's order", () => {
  const rows = ["13/4/2024", "14/4/2024", "15/4/2024", "31/4/2024"].map((date, at) => [date, 2 + at / 10]);
  const { problems } = readLog({ cells: [["Date", "Runoff EC mS/cm"], ...rows] });
  expect(problems.map(({ row, reason }) => [row, reason]))
    .toEqual([[4, "\"31/4/2024\" is not a day of the calendar, read day first"]]);
});
