import { describe, expect, test } from "vitest";
import { flushSheet } from "../../../taskpane/templates/flush-sheet";
import { mixSheet } from "../../../taskpane/templates/mix-sheet";
import { acids } from "../../../src/index";
import { rowHeight } from "../../../taskpane/templates/row-height";
import { computed, rowOf } from "./computed";

const tank = {
  "Water before any feed, EC (mS/cm)": 0.4, "Water in the tank (L)": 50, "Feed at full strength, EC (mS/cm)": 1.8, "Days since the flush (days)": 2,
};
const [target, acid] = ["EC to mix (mS/cm)", "Acid (mL; citric acid g)"];
const mixed = (typed: Readonly<Record<string, string | number | undefined>> = {}) => computed(mixSheet(), { ...tank, ...typed });

describe("the mix sheet", () => {
  test("made from a pot it holds its feed, its days since the flush and the pH to pour at; nothing else stands there as if it were measured", async () => {
    const sheet = await computed(mixSheet({ name: "Pepper 2", feedEc: 1.9, daysSinceFlush: 1, pourPh: 5.8 }));
    expect([sheet.at("A1"), sheet.beside("Feed at full strength, EC (mS/cm)"), sheet.beside("Days since the flush (days)"), sheet.beside("pH wanted")])
      .toEqual(["Mix: Pepper 2", 1.9, 1, 5.8]);
    expect([sheet.beside(target), sheet.beside("Concentrate for the tank (mL)"), sheet.beside(acid)]).toEqual(["", "", ""]);
  });

  test("day 2 of a feed of 1.8 over water of 0.4: 0.4 + 1.4 (0.5 + 0.5 x 2/7) = 1.3 mS/cm, worked by hand", async () => {
    expect((await mixed()).beside(target)).toBeCloseTo(1.3, 9);
  });

  test("an EC typed wins over the days, and without days the feed is at full strength", async () => {
    expect((await mixed({ "Or the EC you want (mS/cm)": 0.9 })).beside(target)).toBe(0.9);
    expect((await mixed({ "Days since the flush (days)": undefined })).beside(target)).toBe(1.8);
    expect((await mixed({ "Days since the flush (days)": 0 })).beside(target)).toBeCloseTo(1.1, 9);
  });

  test("50 L to 1.3 with 0.3 mS/cm a mL: 50 x 0.9 / 0.3 = 150 mL, 120 of them first", async () => {
    const sheet = await mixed({ "1 mL in 1 L adds (mS/cm)": 0.3 });
    expect(sheet.beside("Concentrate for the tank (mL)")).toBeCloseTo(150, 9);
    expect(sheet.beside("of which first, four fifths (mL)")).toBeCloseTo(120, 9);
  });

  test("a tank that reads 2.4 for 1.3 is too strong: add 50 x 1.1 / 0.9 = 61.1 L, or swap 50 x 1.1 / 2 = 27.5 L; at 1.35 neither", async () => {
    const strong = await mixed({ "EC of the mixed tank (mS/cm)": 2.4 });
    expect(strong.beside("Is it as meant?")).toBe("too strong");
    expect(strong.beside("Water to add, where there is room (L)")).toBeCloseTo(55 / 0.9, 9);
    expect(strong.beside("Or: drain this and fill up with water (L)")).toBeCloseTo(27.5, 9);
    const right = await mixed({ "EC of the mixed tank (mS/cm)": 1.35, "pH of the mixed tank": 5.9, "pH wanted": 5.8 });
    expect(["Is it as meant?", "Water to add, where there is room (L)", "Or: drain this and fill up with water (L)"].map(right.beside)).toEqual(["as meant", "", ""]);
    expect((await mixed({ "EC of the mixed tank (mS/cm)": 1.3, "pH of the mixed tank": 6.4, "pH wanted": 5.8 })).beside("Is it as meant?")).toBe("the EC is, the pH is not");
  });

  test("0.6 g/L of 8-12-36 gives 48 ppm N, 31.4 P (x 0.4364) and 179.3 K (x 0.8301); 0.4 g/L of 15 % N and 19 % Ca adds 60 and 76", async () => {
    const one = rowOf(mixSheet(), "Feed 1");
    const sheet = await mixed({
      [`B${one}`]: 0.6, [`C${one}`]: 8, [`D${one}`]: 12, [`E${one}`]: 36, [`G${one}`]: 3, [`B${one + 1}`]: 0.4, [`C${one + 1}`]: 15, [`F${one + 1}`]: 19,
      "Ca in the water (mg/L)": 40, "Mg in the water (mg/L)": 8,
    });
    const total = rowOf(mixSheet(), "All feeds together (mg/L)");
    const found = ["C", "D", "E", "F", "G", "H"].map((column) => sheet.at(`${column}${total}`));
    [108, 72 * 0.4364, 216 * 0.8301, 76, 18].forEach((ppm, i) => { expect(found[i]).toBeCloseTo(ppm, 1); });
    expect(found[5]).toBe("");
    // K 179 beside Ca 76 + 40 and Mg 18 + 8: 1.5, 6.9 and 4.5 lie within 0.75-2.5, 2-7 and 2-5.
    expect(sheet.beside("Balance of K, Ca and Mg")).toBe("balanced");
  });

  test("without alkalinity, pH or the bottle's strength there is no dose", async () => {
    expect((await mixed({ "pH wanted": 5.8 })).beside(acid)).toBe("");
    expect((await mixed({ "pH wanted": 5.8, "Alkalinity of this water": 150, "pH of this water now": 7.5 })).beside(acid)).toBe("");
  });

  test("1000 L at 150 mg/L from pH 7.5 to 5.8 with 93 % sulfuric acid is 65 mL (65.998 rounded down), with cautions beside it", async () => {
    const sheet = await mixed({
      "Water in the tank (L)": 1000, "Alkalinity of this water": 150, "pH of this water now": 7.5, "pH wanted": 5.8, Acid: "sulfuric", "Strength of the bottle (% by mass)": 93,
    });
    expect(sheet.beside(acid)).toBe(65);
    expect(sheet.at(`I${rowOf(mixSheet(), acid)}`)).toMatch(/goggles/i);
  });

  test("the dose follows the raw water alone: the pH read in the mixed tank changes nothing", async () => {
    const typed = { "Alkalinity of this water": 130, "pH of this water now": 7.2, "pH wanted": 5.8, "Strength of the bottle (% by mass)": 30 };
    expect((await mixed({ ...typed, "pH of the mixed tank": 6.2 })).beside(acid)).toBe((await mixed(typed)).beside(acid));
    expect(mixSheet().rows.flat().filter((cell) => cell?.formula?.includes("ACIDDOSE") === true && cell.formula.includes(`B${rowOf(mixSheet(), "pH of the mixed tank")}`))).toEqual([]);
  });
});

test.each(acids)("what the dose of %s says, cautions and all, has room on screen and on paper", async (name) => {
  const water = { "Alkalinity of this water": 240, "pH of this water now": 7.8, "pH wanted": 5.6 };
  const sheet = await computed(mixSheet(), { ...tank, ...water, Acid: name, "Strength of the bottle (% by mass)": 30 });
  const { heights, widths } = mixSheet();
  const row = rowOf(mixSheet(), acid);
  const answer = sheet.at(`I${row}`);
  const said = typeof answer === "string" ? answer : "";
  expect(said).toContain("label and local code win");
  const height = (width = 0): number => rowHeight([{ value: said, style: "wrapped" }], [width]);
  expect(heights[row - 1]).toBeGreaterThanOrEqual(height(widths[8]));
  const flush = flushSheet();
  expect(flush.heights[rowOf(flush, acid) - 1]).toBeGreaterThanOrEqual(height(flush.widths[6]));
});
