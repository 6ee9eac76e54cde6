import { describe, expect, it } from "vitest";
import { type LogReading, readLog, rowsUsed } from "../../../../src/index";

/** A log of feed and runoff in turn: date, pot, sample, EC, pH, litres, air temperature, humidity, note. */
function logOf(...rows: readonly (readonly unknown[])[]): LogReading {
  return readLog({ cells: [["Date", "Pot", "Sample", "EC mS/cm", "pH", "L", "Air temp", "RH", "Notes"], ...rows] });
}
const readings = ({ rows }: LogReading): unknown[] =>
  rows.map(({ row, feedRow, inputEc, runoffEc }) => [row, feedRow, inputEc, runoffEc]);

describe("feed and runoff in rows of their own", () => {
  it("become one reading, the runoff's row, whichever stands first", () => {
    expect(readings(logOf(["2025-05-01", "A", "feed", 1.6], ["2025-05-01", "A", "runoff", 2.4]))).toEqual([[2, 1, 1.6, 2.4]]);
    expect(readings(logOf(["2025-05-01", "A", "runoff", 2.4], ["2025-05-01", "A", "feed", 1.6]))).toEqual([[1, 2, 1.6, 2.4]]);
  });

  it("carry the feed's EC, pH and litres over, and the climate, notes and events of both", () => {
    const [row] = logOf(
      ["2025-05-01", "A", "feed", 1.6, 5.8, 2, 24, 55, "mixed new feed"],
      ["2025-05-01", "A", "runoff", 2.4, 6.1, 0.4, "", "", "flushed"],
    ).rows;
    expect(row).toMatchObject({
      inputEc: 1.6, inputPh: 5.8, inputLitres: 2, runoffEc: 2.4, runoffPh: 6.1, runoffLitres: 0.4,
      airCelsius: 24, humidityPercent: 55, notes: "mixed new feed; flushed",
    });
    expect(row?.events.map(({ kind }) => kind)).toEqual(["feed change", "flush"]);
  });

  it("keep the runoff's own climate, and say an event of both once", () => {
    const [row] = logOf(
      ["2025-05-01", "A", "feed", 1.6, 5.8, 2, 24, 55, "flushed"],
      ["2025-05-01", "A", "runoff", 2.4, 6.1, 0.4, 26, 60, "flushed again"],
    ).rows;
    expect(row).toMatchObject({ airCelsius: 26, humidityPercent: 60 });
    expect(row?.events).toEqual([{ kind: "flush", words: "flushed" }]);
  });

  it("have no note where neither has one", () => {
    expect(logOf(["2025-05-01", "A", "feed", 1.6], ["2025-05-01", "A", "runoff", 2.4]).rows[0]?.notes).toBeUndefined();
  });

  it("stay apart where the day or the pot is another, or the side the same", () => {
    expect(readings(logOf(["2025-05-01", "A", "feed", 1.6], ["2025-05-02", "A", "runoff", 2.4])))
      .toEqual([[1, undefined, 1.6, undefined], [2, undefined, undefined, 2.4]]);
    expect(readings(logOf(["2025-05-01", "A", "feed", 1.6], ["2025-05-01", "B", "runoff", 2.4])))
      .toEqual([[1, undefined, 1.6, undefined], [2, undefined, undefined, 2.4]]);
    expect(readings(logOf(["2025-05-01", "A", "runoff", 2.3], ["2025-05-01", "A", "runoff", 2.4], ["2025-05-01", "A", "feed", 1.6])))
      .toEqual([[1, undefined, undefined, 2.3], [2, 3, 1.6, 2.4]]);
  });

  it("pair once: a second feed of the day waits for a runoff of its own", () => {
    const log = logOf(
      ["2025-05-01 08:00", "A", "feed", 1.6], ["2025-05-01 09:00", "A", "runoff", 2.4], ["2025-05-01 16:00", "A", "feed", 1.7],
    );
    expect(readings(log)).toEqual([[2, 1, 1.6, 2.4], [3, undefined, 1.7, undefined]]);
    expect(rowsUsed(log)).toBe(3);
  });

  it("take a day and a pot typed once over the two rows, and say so", () => {
    const log = logOf(["2025-05-01", "A", "feed", 1.6], ["", "", "runoff", 2.4], ["2025-05-02", "A", "feed", 1.6], ["", "", "runoff", 2.5]);
    expect(readings(log)).toEqual([[2, 1, 1.6, 2.4], [4, 3, 1.6, 2.5]]);
    expect(log.rows.map(({ day, vessel }) => [day, vessel])).toEqual([[45_778, "A"], [45_779, "A"]]);
    expect(log.problems.map(({ row, column, used, reason }) => [row, column, used, reason.includes("day of the row above")]))
      .toEqual([[2, 0, true, true], [4, 0, true, true]]);
  });

  it("take no day from a row of another pot or of the same side", () => {
    expect(logOf(["2025-05-01", "A", "feed", 1.6], ["", "B", "runoff", 2.4], ["2025-05-01", "A", "runoff", 2.2]).rows.map(({ day }) => day))
      .toEqual([45_778, 45_778]);
    expect(logOf(["2025-05-01", "A", "feed", 1.6], ["2025-05-01", "A", "runoff", 2.4], ["", "A", "runoff", 2.5]).rows[1]?.day).toBeUndefined();
  });

  it("take no day where the row above has none, where theirs cannot be read, or from a pot that is not named", () => {
    const daysOf = (...rows: readonly (readonly unknown[])[]): unknown[] =>
      logOf(...rows, ["2025-05-02", "A", "feed", 1.6], ["2025-05-02", "A", "runoff", 2.4]).rows.slice(0, -1).map(({ day }) => day);
    expect(daysOf(["", "A", "feed", 1.6], ["", "A", "runoff", 2.4])).toEqual([undefined]);
    expect(daysOf(["2025-05-01", "A", "feed", 1.6], ["soon", "A", "runoff", 2.4])).toEqual([45_778, undefined]);
    const unnamed = logOf(["2025-05-01", "", "feed", 1.6], ["", "B", "runoff", 2.4], ["2025-05-01", "B", "runoff", 2.4]);
    expect(unnamed.rows.map(({ day }) => day)).toEqual([45_778, undefined, 45_778]);
  });

  it("say beside the day taken from above what else is doubted", () => {
    const { problems } = logOf(["2025-05-01", "A", "feed", 1.6], ["", "", "runoff", "~2.4"], ["2025-05-02", "A", "feed", "~1.6"]);
    expect(problems.map(({ row, column, used }) => [row, column, used])).toEqual([[2, 0, true], [2, 3, true], [3, 3, true]]);
  });

  it("are of one day whether or not a clock stands behind it", () => {
    expect(readings(logOf(["2025-05-01", "A", "feed", 1.6], ["2025-05-01 09:00", "A", "runoff", 2.4]))).toEqual([[2, 1, 1.6, 2.4]]);
  });

  it("pair past a row in other words, which stays by itself", () => {
    const log = logOf(
      ["2025-05-01", "A", "feed", 1.6], ["2025-05-01", "A", "tap", "", "", "", 24], ["2025-05-01", "A", "runoff", 2.4],
      ["2025-05-02", "A", "feed", 1.6], ["2025-05-02", "A", "runoff", 2.4], ["2025-05-03", "A", "feed", 1.6], ["2025-05-03", "A", "runoff", 2.4],
    );
    expect(readings(log).slice(0, 2)).toEqual([[2, undefined, undefined, undefined], [3, 1, 1.6, 2.4]]);
  });

  it("say each event of two once, and how the plant looks where either says it", () => {
    const [one, other] = readLog({ cells: [
      ["Date", "Sample", "EC mS/cm", "Posture", "New growth", "Notes"],
      ["2025-05-01", "feed", 1.6, 1, "", "flushed and calibrated"], ["2025-05-01", "runoff", 2.4, "", 2, "flushed again"],
      ["2025-05-02", "feed", 1.6], ["2025-05-02", "runoff", 2.4],
    ] }).rows;
    expect(one?.events.map(({ kind }) => kind)).toEqual(["flush", "calibration"]);
    expect([one?.plant, other?.plant]).toEqual([{ posture: 1, newGrowth: 2 }, undefined]);
    expect([one?.unread, other?.unread]).toEqual([undefined, undefined]);
  });

  it("leave out a row in other words, with the reason", () => {
    const { problems, setAside } = logOf(
      ["2025-05-01", "A", "feed", 1.6], ["2025-05-01", "A", "runoff", 2.4], ["2025-05-02", "A", "feed", 1.6],
      ["2025-05-02", "A", "runoff", 2.4], ["2025-05-02", "A", "tap", 0.4], ["2025-05-03", "A", "", 0.5, "", "", 24],
    );
    expect(setAside.map(({ row, reason }) => [row, reason]))
      .toEqual([[5, "no reading: \"tap\" in column C: neither input nor runoff"]]);
    expect(problems.map(({ row, column, reason }) => [row, column, reason]))
      .toEqual([[6, 3, "nothing in column C: neither input nor runoff"]]);
  });

  it("tell of a figure that cannot be, in either row", () => {
    const { rows } = logOf(["2025-05-01", "A", "feed", 1.6, 41], ["2025-05-01", "A", "runoff", 2.4, 61]);
    expect(rows[0]?.unread).toEqual([expect.stringContaining("input pH: pH 41"), expect.stringContaining("runoff pH: pH 61")]);
  });
});
