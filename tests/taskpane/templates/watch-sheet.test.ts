import { describe, expect, test } from "vitest";
import { bandFor, columnLetters, reportOf } from "../../../src/index";
import { watchSheet } from "../../../taskpane/templates/watch-sheet";
import { computed, rowOf } from "./computed";

const from = rowOf(watchSheet(), "0 h");

describe("the watch sheet", () => {
  test("looks fall due 0, 1, 24 and 48 h and 3 to 7 days after what was done", async () => {
    const sheet = await computed(watchSheet({ name: "Basil 1", day: 46_082.5, feedEc: 1.8 }), { "Water before any feed, EC (mS/cm)": 0.4 });
    const due = Array.from({ length: 9 }, (_, i) => Number(sheet.at(`B${from + i}`)) - 46_082.5);
    [0, 1 / 24, 1, 2, 3, 4, 5, 6, 7].forEach((days, i) => { expect(due[i]).toBeCloseTo(days, 9); });
    expect([sheet.at(`C${from}`), sheet.at(`C${from + 8}`)]).toEqual([1.8, 1.8]);
  });

  test("by the ramp it feeds half of what 1.8 adds to water of 0.4, 1.1, and 1.8 on day 7; without the water's EC nothing", async () => {
    const pot = { feedEc: 1.8, daysSinceFlush: 0 };
    const sheet = await computed(watchSheet(pot), { "Water before any feed, EC (mS/cm)": 0.4 });
    expect([sheet.at(`C${from}`), sheet.at(`C${from + 8}`)].map((ec) => Number(ec).toFixed(2))).toEqual(["1.10", "1.80"]);
    expect((await computed(watchSheet(pot))).at(`C${from}`)).toBe("");
  });

  test("read back: what was done is a note, the filled looks are readings after it, and those still planned are none", async () => {
    const filled = { [`D${from}`]: 6, [`E${from}`]: 3.1, [`D${from + 2}`]: 6, [`E${from + 2}`]: 3.3, [`F${from + 2}`]: "1", [`H${from + 2}`]: "a little limp" };
    const boxes = { "What was done to this pot": "flush", "Water before any feed, EC (mS/cm)": 0.4, ...filled };
    const template = watchSheet({ name: "Basil 1", day: 46_082.5, feedEc: 1.8, daysSinceFlush: 0 });
    const sheet = await computed(template, boxes);
    const cells = template.rows.map((_, row) => Array.from({ length: 8 }, (__, column) => sheet.at(`${columnLetters(column)}${row + 1}`) ?? ""));
    const { reading, judgement } = reportOf({ grid: { cells: cells }, band: bandFor("coir") });
    expect(reading.questions).toEqual([]);
    expect(reading.rows.map(({ day, runoffEc, plant, notes }) => [day, runoffEc, plant?.posture, notes])).toEqual([
      [46_082.5, 3.1, undefined, "flush"],
      [46_083.5, 3.3, 1, "a little limp"],
    ]);
    expect(judgement?.phase).toBe("after a flush");
  });
});
