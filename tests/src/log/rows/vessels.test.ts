import { describe, expect, it } from "vitest";
import { type LogReading, readLog } from "../../../../src/index";

const logOf = (...rows: readonly (readonly unknown[])[]): LogReading =>
  readLog({ cells: [["Date", "Pot", "Runoff EC mS/cm"], ...rows] });
/** A reading of each pot, a day apart. */
const named = (...names: readonly unknown[]): LogReading =>
  logOf(...names.map((name, day) => [45_778 + day, name, 2 + day / 10]));
const vesselsOf = ({ rows }: LogReading): unknown[] => rows.map(({ vessel }) => vessel);

// Which spellings a person takes for one pot. Common practice, no source.
describe("one pot in several spellings", () => {
  it("has the name used most, the first where two are used as much", () => {
    expect(vesselsOf(named("Pot 3", "P3", "P3"))).toEqual(["P3", "P3", "P3"]);
    expect(vesselsOf(named("P3", "Pot 3"))).toEqual(["P3", "P3"]);
  });

  it("is said where another spelling stands first, and not where only the case differs", () => {
    expect(named("Pot 3", "P-03", "P-03", "pot 3", "Pot 3", "Pot 3").problems)
      .toEqual([{ row: 2, column: 1, used: true, reason: "\"P-03\" is taken for \"Pot 3\"" }]);
  });

  it("is said in the first column where headings name the pots, and in the column of names wherever that stands", () => {
    const rows = [["Pot 3"], [45_778, 2.1], ["Pots 3"], [45_779, 2.2]];
    expect(readLog({ cells: [["Date", "Runoff EC mS/cm"], ...rows] }).problems.map(({ row, column }) => [row, column])).toEqual([[4, 0]]);
    const last = ["Pot 3", "P-03", "Pot 3"].map((name, at) => [45_778 + at, 2.1, name]);
    expect(readLog({ cells: [["Date", "Runoff EC mS/cm", "Pot"], ...last] }).problems.map(({ row, column }) => [row, column])).toEqual([[2, 2]]);
  });

  it("is not another number, another letter, or a word that two could begin", () => {
    expect(vesselsOf(named("Pot 3", "Pot 30", "Pot 3b"))).toEqual(["Pot 3", "Pot 30", "Pot 3b"]);
    expect(vesselsOf(named("Tomato 1", "Tulip 1", "T1"))).toEqual(["Tomato 1", "Tulip 1", "T1"]);
    expect(vesselsOf(named("Tomato 1", "Tom 1", "T1"))).toEqual(["Tomato 1", "Tomato 1", "Tomato 1"]);
  });

  it("is no word without a number: Tom and Tomato may be two", () => {
    expect(vesselsOf(named("Tom", "Tomato"))).toEqual(["Tom", "Tomato"]);
  });

  it("names no pot where the cell says that none is noted", () => {
    expect(vesselsOf(named("Pot 3", "n/a", "-", 3, 3, 3)).slice(0, 4)).toEqual(["3", undefined, undefined, "3"]);
  });

  it("is told in the order of its first reading", () => {
    expect(named("B", "A", "B", "C").vessels).toEqual(["B", "A", "C"]);
  });
});

describe("a pot named once over its rows", () => {
  it("holds for the rows below it, and each says so", () => {
    const log = logOf([45_778, "A", 2.1], [45_779, "", 2.2], [45_780, "B", 2.3], [45_781, "", 2.4]);
    expect(vesselsOf(log)).toEqual(["A", "A", "B", "B"]);
    expect(log.problems).toEqual([
      { row: 2, column: 1, used: true, reason: "no pot named: taken for \"A\" above" },
      { row: 4, column: 1, used: true, reason: "no pot named: taken for \"B\" above" },
    ]);
  });

  it("does not where a name comes back, where most rows have one, or where the first has none", () => {
    expect(vesselsOf(logOf([45_778, "A", 2.1], [45_779, "", 2.2], [45_780, "A", 2.3], [45_781, "", 2.4], [45_782, "", 2.5])))
      .toEqual(["A", undefined, "A", undefined, undefined]);
    expect(vesselsOf(logOf([45_778, "A", 2.1], [45_779, "B", 2.2], [45_780, "", 2.3]))).toEqual(["A", "B", undefined]);
    expect(vesselsOf(logOf([45_778, "", 2.1], [45_779, "A", 2.2], [45_780, "", 2.3], [45_781, "B", 2.4]))).toEqual([undefined, "A", undefined, "B"]);
  });
});

describe("a day typed once over several rows", () => {
  const days = (...rows: readonly (readonly unknown[])[]): unknown[] => logOf(...rows).rows.map(({ day }) => day);

  it("is that of the pots below which it has not had yet, and says so", () => {
    expect(days([45_778, "A", 2.1], ["", "B", 2.2], ["", "C", 2.3], [45_779, "A", 2.1])).toEqual([45_778, 45_778, 45_778, 45_779]);
    expect(logOf([45_778, "A", 2.1], ["", "B", 2.2]).problems)
      .toEqual([{ row: 2, column: 0, used: true, reason: "no date: taken for the day of the row above" }]);
  });

  it("is not that of a pot it has had, of a row without a name, or below one", () => {
    expect(days([45_778, "A", 2.1], ["", "B", 2.2], ["", "A", 2.3])).toEqual([45_778, 45_778, undefined]);
    expect(days([45_778, "A", 2.1], ["", "", 2.2], [45_779, "A", 2.1])).toEqual([45_778, undefined, 45_779]);
    expect(days([45_778, "", 2.1], ["", "B", 2.2], [45_779, "B", 2.1])).toEqual([45_778, undefined, 45_779]);
  });

  it("is that of a later clock, and not of an earlier or the same one", () => {
    const timed = (...clocks: readonly string[]): unknown[] => {
      const rows = clocks.map((clock, at) => [at === 0 ? "2025-05-01" : "", clock, 2 + at / 10]);
      return readLog({ cells: [["Date", "Time", "Runoff EC mS/cm"], ...rows] }).rows.map(({ day }) => day);
    };
    expect(timed("06:00", "12:00", "18:00")).toEqual([45_778.25, 45_778.5, 45_778.75]);
    expect(timed("12:00", "06:00")).toEqual([45_778.5, undefined]);
    expect(timed("12:00", "12:00")).toEqual([45_778.5, undefined]);
  });
});
