import { describe, expect, it } from "vitest";
import { logQuantities, readLog } from "../../../src/index";

describe("readLog", () => {
  it("reads a plain log of two days: EC 2.4 and 2.1 mS/cm at the runoff", () => {
    const read = readLog({ cells: [["Date", "EC in", "Runoff EC", "Runoff pH", "Notes"], [45383, 1.6, 2.4, 5.9, ""], [45384, 1.6, 2.1, 6, "flushed"]] });
    expect(read.questions).toEqual([]);
    expect(read.rows.map(({ day, inputEc, runoffEc, runoffPh }) => [day, inputEc, runoffEc, runoffPh])).toEqual([
      [45383, 1.6, 2.4, 5.9],
      [45384, 1.6, 2.1, 6],
    ]);
    expect(read.rows[1]?.events).toEqual([{ kind: "flush", words: "flushed" }]);
  });

  it("asks which ppm scale a column in ppm is on, and leaves it unread", () => {
    const cells = [["Date", "Runoff ppm"], [45383, 1200], [45384, 1100]];
    const read = readLog({ cells });
    expect(read.questions.map(({ kind, columns }) => [kind, columns])).toEqual([["ppm scale", [1]]]);
    expect(read.rows).toEqual([]);
    expect(readLog({ cells }, { ppmScale: 500 }).rows.map(({ runoffEc }) => runoffEc)).toEqual([2.4, 2.2]);
  });
});

describe("a log of which no row names the columns", () => {
  const lines = (count: number): unknown[][] => Array.from({ length: count }, (_, at) => [45_778 + at, 2.4]);
  const headerAsked = (count: number): unknown =>
    readLog({ cells: lines(count) }).questions.find(({ kind }) => kind === "which row is the header")?.choices;

  it("asks which of its first 5 rows does, or whether none does, and what each column holds", () => {
    expect(headerAsked(2)).toEqual(["row 1", "row 2", "none"]);
    expect(headerAsked(9)).toEqual(["row 1", "row 2", "row 3", "row 4", "row 5", "none"]);
    const columns = readLog({ cells: lines(2) }).questions.slice(1);
    expect(columns.map((question) => [question.columns, question.choices])).toEqual([[[0], logQuantities], [[1], logQuantities]]);
  });

  it("asks no more about the row once that is answered with none", () => {
    const { questions } = readLog({ cells: lines(2) }, { headerRow: -1 });
    expect(questions.map(({ kind, columns }) => [kind, columns])).toEqual([["what is this column", [0]], ["what is this column", [1]]]);
  });
});

describe("a sheet that seems to run across", () => {
  const kindsOf = (cells: readonly (readonly unknown[])[], answers = {}): string[] =>
    readLog({ cells }, answers).questions.map(({ kind }) => kind);
  const pots = [["Date", "Pot 1 EC", "Pot 2 EC"], [45_778, 2.4, 2.6], [45_779, 2.5, 2.7]];
  const down = [["Feed EC", 1.6, 1.6, 1.7], ["Runoff EC", 2.4, 2.4, 2.5]];

  it("is read as it is answered to be, by its header or by its columns", () => {
    expect(kindsOf(pots)).toEqual(["layout"]);
    expect(kindsOf(pots, { headerRow: 0 })).not.toContain("layout");
    const columns = { 0: { quantity: "date" }, 1: { quantity: "runoff EC" }, 2: { quantity: "other" } } as const;
    expect(readLog({ cells: pots }, { columns }).rows.map(({ day, runoffEc }) => [day, runoffEc])).toEqual([[45_778, 2.4], [45_779, 2.5]]);
  });

  it("has three dates across, or two weeks: neither two dates, nor figures under no date", () => {
    expect(kindsOf([["Date", "2025-05-01", "2025-05-02", "2025-05-03"], ...down])).toEqual(["layout"]);
    expect(kindsOf([["Date", "2025-05-01", "", "2025-05-02", "", "2025-05-03"], ...down])).toEqual(["layout"]);
    expect(kindsOf([["", "Week 1", "Week 2"], ...down])).toEqual(["layout"]);
    expect(kindsOf([["Date", "2025-05-01", "2025-05-02"], ...down.map((row) => row.slice(0, 3))])).not.toContain("layout");
    expect(kindsOf(down)).not.toContain("layout");
  });
});

describe("a lone word below the readings", () => {
  it("of what another column could be called begins no second table", () => {
    const cells = [["Date", "Runoff EC", "Notes"], [45_778, 2.4, ""], ["", "", "Runoff pH"], [45_779, 2.5, ""]];
    expect(readLog({ cells }).rows.flatMap(({ runoffEc }) => runoffEc ?? [])).toEqual([2.4, 2.5]);
  });
});

describe("a row with a figure that cannot be", () => {
  it("keeps what was left out of it: an EC of 2400 among mS/cm, and a pH of 61", () => {
    const header = ["Date", "Runoff EC mS/cm", "Runoff pH"];
    const cells = [header, [45_778, 2.4, 6], [45_779, 2.4, 6], [45_780, 2400, 6], [45_781, 2.4, 61]];
    expect(readLog({ cells }).rows.map(({ unread }) => unread)).toEqual([
      undefined, undefined, [expect.stringContaining("runoff EC: 2400")], [expect.stringContaining("runoff pH: pH 61")],
    ]);
  });

  it("has all that its notes tell of, of every column of notes", () => {
    const cells = [["Date", "Runoff EC mS/cm", "Notes", "Remarks"], [45_778, 2.4, "flushed", "leaves limp"]];
    expect(readLog({ cells }).rows[0]?.events.map(({ kind }) => kind)).toEqual(["flush", "wilting"]);
  });
});
