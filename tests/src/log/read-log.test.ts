import { describe, expect, it } from "vitest";
import { readLog } from "../../../src/index";

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
