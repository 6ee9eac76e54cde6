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

  it("is 8 times their middle, or an eighth of it; 7.8 times is a reading", () => {
    expect(doubted(1.5, 1.5, 12, 1.5, 1.5)).toEqual([3]);
    expect(doubted(1.5, 1.5, 11.7, 1.5, 1.5)).toEqual([]);
    expect(doubted(2.4, 2.4, 0.3, 2.4, 2.4)).toEqual([3]);
    expect(doubted(2.4, 2.4, 0.31, 2.4, 2.4)).toEqual([]);
  });

  it("needs neighbours that agree within 3 times, two of them at least", () => {
    const usual = [5, 5, 5, 5, 5, 5, 5];
    expect(doubted(...usual, 1.5, 0.5, 13, 1.5, 0.5)).toEqual([10]);
    expect(doubted(...usual, 1.6, 0.5, 13, 1.6, 0.5)).toEqual([]);
    expect(doubted(1.4, 14)).toEqual([]);
    expect(doubted(1.4, 14, 1.4)).toEqual([2]);
  });

  it("stands out from the two readings before and the two after, not from those further off", () => {
    expect(doubted(1.4, 1.4, 1.4, 14, 14, 14, 14, 14)).toEqual([]);
    expect(doubted(9, 9, 1.4, 1.4, 12, 1.4, 1.4, 9, 9)).toEqual([5]);
  });

  it("is told with what it stands among", () => {
    const { problems } = logOf("Runoff EC mS/cm", 5, 5, 5, 5, 5, 5, 5, 1.42, 1.4, 14.123, 1.4, 1.42);
    const reason = "14.1 among readings near 1.42 mS/cm: has a decimal point slipped? Measure again";
    expect(problems).toEqual([{ row: 10, column: 1, used: true, reason }]);
  });

  it("is held against its own pot's readings only, blanks read past", () => {
    const rows = [1.4, 14, 1.5, 14.2, 1.4, 13.9, "", 14.1, 1.6, 14].map((ec, at) => [45_778 + (at >> 1), at % 2 === 0 ? "A" : "B", ec]);
    expect(readLog({ cells: [["Date", "Pot", "Runoff EC mS/cm"], ...rows] }).problems).toEqual([]);
    expect(doubted(1.4, 1.4, 14, 1.4, 1.4)).toEqual([3]);
  });

  it("may be a feed of plain water: a fall that a note explains is none, one that nothing explains is doubted", () => {
    const read = (header: string, note: string): number[] => {
      const rows = [1.6, 1.6, 0.2, 1.6, 1.6].map((ec, at) => [45_778 + at, ec, at === 2 ? note : ""]);
      return readLog({ cells: [["Date", header, "Notes"], ...rows] }).problems.map(({ row }) => row);
    };
    expect(read("EC in", "plain water only")).toEqual([]);
    expect(read("EC in", "cloudy")).toEqual([3]);
    expect(read("Runoff EC", "plain water only")).toEqual([3]);
  });

  it("is no matter of a pH or a volume", () => {
    expect(logOf("Runoff L", 0.4, 0.4, 4, 0.4, 0.4).problems).toEqual([]);
  });
});

describe("a figure in another unit than its column", () => {
  const ofVolume = (...figures: readonly number[]): unknown[] =>
    logOf("Runoff L", ...figures).problems.map(({ row, used }) => [row, used ? "used" : "left out"]);

  it("is left out and not called used as well: 2100 and 2200 L among 0.4", () => {
    expect(ofVolume(0.4, 0.4, 2100, 0.5, 2200, 0.4, 0.4)).toEqual([[3, "left out"], [5, "left out"]]);
  });

  it("is a hundred times the others, or a hundredth", () => {
    expect(ofVolume(0.4, 0.4, 40, 0.4)).toEqual([[3, "left out"]]);
    expect(ofVolume(0.4, 0.4, 39.9, 0.4)).toEqual([]);
    expect(ofVolume(400, 0.5, 450, 400)).toEqual([[2, "left out"]]);
  });

  it("is of the fewer; of as many the later ones, for a habit changes forward", () => {
    expect(ofVolume(0.4, 0.5, 400, 450)).toEqual([[3, "left out"], [4, "left out"]]);
    expect(ofVolume(400, 450, 0.4, 0.5)).toEqual([[3, "left out"], [4, "left out"]]);
    expect(ofVolume(0.4, 400, 410, 420)).toEqual([[1, "left out"]]);
  });

  it("has no neighbour in nothing: a pot that drained 0 L says nothing of its unit", () => {
    expect(ofVolume(0, 0.4, 0, 0.4)).toEqual([]);
    expect(ofVolume(0, 0, 0, 450, 0.4, 0.5)).toEqual([[4, "left out"]]);
  });

  it.each([
    ["Runoff L", [0.4, 0.4, 450], "450 among readings near 0.4 L: in another unit? It is not converted"],
    ["Water given mL", [400, 400, 400_000], "400 among readings near 0.4 L: in another unit? It is not converted"],
    ["Feed EC uS/cm", [150, 150, 15_000], "15 among readings near 0.15 mS/cm: in another unit? It is not converted"],
  ])("%s: is told in the engine's unit, with the usual", (header, figures, reason) => {
    const { problems, rows } = logOf(header, ...figures);
    expect(problems).toEqual([{ row: 3, column: 1, used: false, reason }]);
    expect([rows[2]?.runoffLitres, rows[2]?.inputLitres, rows[2]?.inputEc]).toEqual([undefined, undefined, undefined]);
  });
});
