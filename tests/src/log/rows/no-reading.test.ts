import { describe, expect, it } from "vitest";
import { type LogGrid, readLog } from "../../../../src/index";

const header = ["Date", "EC in", "Runoff EC", "Crop", "Notes"];
const first = ["2025-05-01", 1.6, 2.4, "basil", ""];
/** What is said of the rows that are set aside below one that is read. */
const reasons = (...rows: readonly (readonly unknown[])[]): string[] =>
  readLog({ cells: [header, first, ...rows] }).setAside.map(({ reason }) => reason);

describe("a row in which nothing was measured", () => {
  it("says so, and quotes a word that stands alone in it", () => {
    expect(reasons(["2025-05-02", "n/a", "-"])).toEqual(["no reading in this row"]);
    expect(reasons(["closed"])).toEqual(["no reading in this row, only \"closed\""]);
    expect(reasons([45_779])).toEqual(["no reading in this row"]);
  });

  it("says what is wrong with a cell, and in which column it stands", () => {
    expect(readLog({ cells: [header, first, ["2025-05-02", "", -1]] }).setAside)
      .toEqual([{ row: 2, column: 2, reason: "no reading: EC -1 cannot be: it is below 0" }]);
  });

  it("names the column that is not read, and why", () => {
    expect(reasons(["2025-05-02", "", "", "basil"])).toEqual(["no reading in this row; column D is not read: a kind or a place"]);
    const cells = [["Date", "Runoff EC", "Runoff ppm"], ["2025-05-01", 2.4, 900], ["2025-05-02", "", 950]];
    expect(readLog({ cells }).setAside.map(({ reason }) => reason))
      .toEqual([expect.stringContaining("no reading in this row; column C is not read: ")]);
  });

  it("is a reading where only a note stands in it", () => {
    expect(reasons(["2025-05-02", "", "", "", "flushed"])).toEqual([]);
  });
});

describe("a row that repeats another", () => {
  it("names it by the sheet's own row number", () => {
    const grid: LogGrid = { cells: [header, first, ["2025-05-02", 1.6, 2.5], first], rowNumbers: [4, 5, 6, 7] };
    expect(readLog(grid).setAside).toEqual([{ row: 3, reason: "repeats row 6 in every cell" }]);
  });

  it("is kept where it has no date, for figures can come again", () => {
    expect(reasons(["", 1.6, 2.4], ["", 1.6, 2.4])).toEqual([]);
  });

  it("is kept under the name of another pot", () => {
    const row = ["2025-05-01", 2.4, 6];
    const cells = [["Date", "Runoff EC", "Runoff pH"], ["Pot 1"], row, ["Pot 2"], row, row];
    const { rows, setAside } = readLog({ cells });
    expect(rows.map(({ row: at, vessel }) => [at, vessel])).toEqual([[2, "Pot 1"], [4, "Pot 2"]]);
    expect(setAside.map(({ row: at, reason }) => [at, reason])).toEqual([
      [1, "names the vessel of the rows below"], [3, "names the vessel of the rows below"], [5, "repeats row 5 in every cell"],
    ]);
  });
});

describe("the header again", () => {
  it("is one in the same words, or in others of the same meaning", () => {
    expect(reasons(header)).toEqual(["repeats the header"]);
    expect(reasons(["Datum", "Feed EC", "Drain EC", "Crop", "Comments"])).toEqual(["repeats the header"]);
    expect(reasons(["date", "EC IN", "runoff ec", "", ""])).toEqual(["repeats the header"]);
  });

  it("in words of other columns begins another table, and what follows belongs to it", () => {
    expect(reasons(["Date", "Runoff pH", "EC in"], ["2025-05-02", 6, 1.6], ["2025-05-03", 6, 1.6])).toEqual([
      "names other columns: another table begins here", "belongs to another table", "belongs to another table",
    ]);
  });

  it("is no row with a figure, nor a note of many words", () => {
    expect(reasons(["2025-05-02", 1.6, 2.5, "", "runoff EC up"])).toEqual([]);
    expect(reasons(["later", "EC in", 2.5, "", ""])).toEqual([]);
  });

  it("in another unit begins another table; in no unit it is the same", () => {
    const asideOf = (again: readonly string[]): string | undefined => {
      const cells = [["Date", "Feed EC mS/cm", "Runoff EC mS/cm"], ["2025-05-01", 1.6, 2.4], again, ["2025-05-02", 1.6, 2.5]];
      return readLog({ cells }).setAside[0]?.reason;
    };
    expect(asideOf(["Date", "Feed EC", "Drain EC"])).toBe("repeats the header");
    expect(asideOf(["Date", "Feed EC uS/cm", "Drain EC uS/cm"])).toContain("another table begins");
  });
});

describe("a row above the header", () => {
  it("is a title, and names the pot where it is a pot's name", () => {
    const cells = [["Log of May"], ["Pot 7"], header, first];
    const { rows, setAside } = readLog({ cells });
    expect(setAside).toEqual([{ row: 0, reason: "stands above the header" }, { row: 1, reason: "stands above the header" }]);
    expect(rows.map(({ vessel }) => vessel)).toEqual(["Pot 7"]);
  });

  it.each([["Pot 3"], ["Plant #2"], ["Bucket: 12"], ["Topf 4"], ["Pots A"], ["Pot 3 (basil)"], ["Bag B - tomato"]])(
    "%s is a pot's name",
    (name) => {
      expect(readLog({ cells: [[name], header, first] }).rows[0]?.vessel).toBe(name);
    },
  );

  it.each([["Potting mix"], ["Pot log of May"], ["Log 3"], [3], ["The pot 3"]])("%s is none", (name) => {
    expect(readLog({ cells: [[name], header, first] }).rows[0]?.vessel).toBeUndefined();
  });
});
