import { describe, expect, test } from "vitest";
import { mixSheet } from "../../../taskpane/templates/mix-sheet";
import { computed } from "./computed";

describe("the mix sheet", () => {
  test("day 2 of a feed of 1.8 over water of 0.4: 0.4 + 1.4 (0.5 + 0.5 x 2/7) = 1.3 mS/cm, worked by hand", async () => {
    expect((await computed(mixSheet)).beside("EC to mix (mS/cm)")).toBeCloseTo(1.3, 9);
  });

  test("an EC typed wins over the days, and without days the feed is at full strength", async () => {
    expect((await computed(mixSheet, { "Or the EC you want (mS/cm)": 0.9 })).beside("EC to mix (mS/cm)")).toBe(0.9);
    expect((await computed(mixSheet, { "Days since the flush (days)": undefined })).beside("EC to mix (mS/cm)")).toBe(1.8);
    expect((await computed(mixSheet, { "Days since the flush (days)": 0 })).beside("EC to mix (mS/cm)")).toBeCloseTo(1.1, 9);
  });

  test("50 L to 1.3 with 0.3 mS/cm a mL: 50 x 0.9 / 0.3 = 150 mL, 120 of them first", async () => {
    const sheet = await computed(mixSheet);
    expect(sheet.beside("Concentrate for the tank (mL)")).toBeCloseTo(150, 9);
    expect(sheet.beside("of which first, four fifths (mL)")).toBeCloseTo(120, 9);
  });

  test("50 L at 2.4 down to 1.3 with water of 0.4: add 50 x 1.1 / 0.9 = 61.1 L, or swap 50 x 1.1 / 2 = 27.5 L", async () => {
    const sheet = await computed(mixSheet);
    expect(sheet.beside("Water to add, where there is room (L)")).toBeCloseTo(55 / 0.9, 9);
    expect(sheet.beside("Or: drain this and fill up with water (L)")).toBeCloseTo(27.5, 9);
  });

  test("0.6 g/L of 8-12-36 gives 48 ppm N, 31.4 P (x 0.4364) and 179.3 K (x 0.8301); 0.4 g/L of 15 % N and 19 % Ca adds 60 and 76", async () => {
    const sheet = await computed(mixSheet);
    const total = ["C", "D", "E", "F", "G", "H"].map((column) => sheet.at(`${column}38`));
    [108, 72 * 0.4364, 216 * 0.8301, 76, 18].forEach((ppm, i) => { expect(total[i]).toBeCloseTo(ppm, 1); });
    expect(total[5]).toBe("");
  });

  test("K 179 beside Ca 76 + 40 and Mg 18 + 8 is balanced: 1.5, 6.9 and 4.5 lie within 0.75-2.5, 2-7 and 2-5", async () => {
    expect((await computed(mixSheet)).beside("Balance")).toBe("balanced");
  });

  test("without alkalinity, pH or the bottle's strength there is no dose", async () => {
    const bare = await computed(mixSheet);
    expect([bare.beside("Acid (mL; citric acid g)"), bare.beside("Alkali (g)")]).toEqual(["", ""]);
    const noStrength = await computed(mixSheet, { "Alkalinity (mg/L as CaCO3)": 150, "pH now": 7.5 });
    expect(noStrength.beside("Acid (mL; citric acid g)")).toBe("");
    expect(noStrength.at("C51")).toMatch(/no strength, no dose/);
    expect(noStrength.beside("Alkali (g)")).toBe("no alkali needed");
  });

  test("1000 L at 150 mg/L from pH 7.5 to 5.8 with 93 % sulfuric acid is 65 mL (65.998 rounded down), with cautions beside it; no alkali", async () => {
    const sheet = await computed(mixSheet, {
      "Water in the tank (L)": 1000, "Alkalinity (mg/L as CaCO3)": 150, "pH now": 7.5, Acid: "sulfuric", "Strength of the bottle (% by mass)": 93,
    });
    expect(sheet.beside("Acid (mL; citric acid g)")).toBe(65);
    expect(sheet.at("C51")).toMatch(/goggles/i);
  });

  test("a tank below the target is refused in words, not answered with a number below 0", async () => {
    expect((await computed(mixSheet, { "EC in the tank now (mS/cm)": 1 })).beside("Water to add, where there is room (L)")).toMatchObject({ error: "#VALUE!" });
  });
});
