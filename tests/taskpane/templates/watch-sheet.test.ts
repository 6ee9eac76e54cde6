import { describe, expect, test } from "vitest";
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
});
