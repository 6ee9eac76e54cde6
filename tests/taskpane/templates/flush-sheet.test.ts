import { describe, expect, test } from "vitest";
import { bandFor } from "../../../src/index";
import { flushSheet } from "../../../taskpane/templates/flush-sheet";
import { computed } from "./computed";

/** Portions of 2 L into the rows after the first reading. */
const poured = (...ecs: number[]): Record<string, number> =>
  Object.fromEntries(ecs.flatMap((ec, i) => [[`C${23 + i}`, 2], [`D${23 + i}`, 5.8], [`E${23 + i}`, ec]]));

describe("the flush sheet", () => {
  test("aims at the upper limit of the medium unless another EC is typed", async () => {
    expect((await computed(flushSheet)).beside("EC to reach (mS/cm)")).toBe(bandFor("coir").ec[1]);
    expect((await computed(flushSheet, { "Runoff EC wanted (mS/cm)": 2.5 })).beside("EC to reach (mS/cm)")).toBe(2.5);
  });

  test("spills the plan with its header; its last portion reaches 3.5 mS/cm", async () => {
    const sheet = await computed(flushSheet);
    expect(["A", "B", "C", "D"].map((column) => sheet.at(`${column}39`))).toEqual(["portion", "litres", "litres so far", "expected runoff EC"]);
    expect(sheet.at("D42")).toBeCloseTo(3.5, 6);
    expect(sheet.at("A43")).toBeUndefined();
  });

  test.each(["coir", "peat", "bark", "mineral wool", "inert", "soil"])("the plan for a very salty pot of %s keeps to the rows left for it", async (medium) => {
    const sheet = await computed(flushSheet, { Medium: medium, "Runoff EC before (mS/cm)": 20, "Runoff EC wanted (mS/cm)": 0.5 });
    expect(sheet.at("A39")).toBe("portion");
    expect(sheet.at("A55")).toBeUndefined();
  });

  test("three portions of 2 L from 5.6 to 4.4, 3.9 and 3.3 at pH 5.8: keep going, keep going, stop in band at 6 L", async () => {
    const sheet = await computed(flushSheet, poured(4.4, 3.9, 3.3));
    expect(["G23", "G24", "G25"].map((cell) => sheet.at(cell))).toEqual(["keep going", "keep going", "stop: in band"]);
    expect(sheet.at("F25")).toBe(6);
    expect(sheet.at("G26")).toBe("");
    expect(sheet.beside("Stop check")).toBe("stop: in band");
    expect(sheet.beside("Litres still needed (L)")).toBe(0);
  });

  test("litres left follow the pot's own readings: from 8.4 over water of 0.4, halved by each 2 L, 2 L more to 1.4", async () => {
    const sheet = await computed(flushSheet, { ...poured(4.4, 2.4), "Runoff EC before (mS/cm)": 8.4, "Runoff EC wanted (mS/cm)": 1.4 });
    expect(sheet.beside("Litres still needed (L)")).toBeCloseTo(2, 6);
  });

  test("a portion without its pH: cannot say", async () => {
    const sheet = await computed(flushSheet, { C23: 2, E23: 4.4 });
    expect(sheet.at("G23")).toBe("cannot say");
  });

  test("feeds 1.1 on the day, 1.2 the next, 1.8 from day 7; readings fall due on the two days after 1 March 2026", async () => {
    const sheet = await computed(flushSheet);
    [1.1, 1.2, 1.3].forEach((ec, day) => { expect(sheet.at(`C${57 + day}`)).toBeCloseTo(ec, 9); });
    expect(sheet.at("C64")).toBeCloseTo(1.8, 9);
    expect([sheet.at("B58"), sheet.at("B59")]).toEqual([46_083, 46_084]);
    expect(sheet.at("D58")).toMatch(/24 h/);
  });
});
