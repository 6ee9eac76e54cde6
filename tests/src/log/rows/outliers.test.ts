import { describe, expect, it } from "vitest";
import { type LogReading, readLog } from "../../../../src/index";

/** A log of one column, a reading a day. */
const logOf = (header: string, ...figures: readonly number[]): LogReading =>
  readLog({ cells: [["Date", header], ...figures.map((figure, at) => [45_778 + at, figure])] });

// What stands out, by docs/log-sheets.md; which of the readings a person would measure again. Common practice.
describe("a reading 10 times its neighbours", () => {
  const doubted = (...figures: readonly number[]): number[] =>
    logOf("Runoff EC mS/cm", ...figures).problems.map(({ row }) => row);

  it("is doubted between readings that agree, and so is a tenth of them", () => {
    expect(doubted(1.4, 1.4, 1.3, 14, 1.4, 1.4, 1.5)).toEqual([4]);
    expect(doubted(2.4, 2.4, 2.3, 0.24, 2.4, 2.4, 2.5)).toEqual([4]);
  });

  it("is not doubted where the EC climbs to it, or where a flush brings it down for good", () => {
    expect(doubted(1.4, 2, 2.9, 4.2, 6, 8.5, 12)).toEqual([]);
    expect(doubted(5.1, 5.2, 5, 1.2, 1.1, 1.3, 1.2)).toEqual([]);
  });

  it("does not make the 1.4 at either end of 1.4, 5, 14, 5, 1.4 stand out", () => {
    expect(doubted(1.4, 5, 14, 5, 1.4)).toEqual([]);
  });

  it("is doubted at the end of a log, where only the two before it tell what is usual", () => {
    expect(doubted(1.5, 1.4, 1.4, 14)).toEqual([4]);
    expect(doubted(14, 1.4, 1.5, 1.4)).toEqual([1]);
    expect(doubted(2.4, 2.3, 2.4, 0.24)).toEqual([4]);
  });
});

describe("a figure in another unit than its column", () => {
  const ofVolume = (...figures: readonly number[]): unknown[] =>
    logOf("Runoff L", ...figures).problems.map(({ row, used }) => [row, used ? "used" : "left out"]);

  it("is left out and not called used as well: 2100 and 2200 L among 0.4", () => {
    expect(ofVolume(0.4, 0.4, 2100, 0.5, 2200, 0.4, 0.4)).toEqual([[3, "left out"], [5, "left out"]]);
  });
});
