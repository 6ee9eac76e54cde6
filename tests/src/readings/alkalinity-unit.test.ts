import fc from "fast-check";
import { MF } from "mf-parser";
import { describe, expect, it } from "vitest";
import { alkalinityInUnit, type AlkalinityUnit, alkalinityUnitNamed, alkalinityUnits } from "../../../src/index";
import { expectRefusal } from "../refused";

const units = Object.keys(alkalinityUnits) as AlkalinityUnit[];
const grams = (formula: string): number => new MF(formula).getInfo().mass;

describe("alkalinityUnits", () => {
  it("a meq/L is half a mmol of CaCO3, one of HCO3, and a degree 10 mg/L of CaO (molar masses by mf-parser)", () => {
    expect(alkalinityUnits["mg/L CaCO3"]).toBeCloseTo(grams("CaCO3") / 2, 2);
    expect(alkalinityUnits["mg/L HCO3"]).toBeCloseTo(grams("CHO3"), 2);
    expect(alkalinityUnits.dH).toBeCloseTo(grams("CaO") / 2 / 10, 3);
  });
});

describe("alkalinityInUnit", () => {
  it("there and back is the same alkalinity", () => {
    const any = fc.constantFrom(...units);
    fc.assert(fc.property(fc.double({ min: 0, max: 20, noNaN: true }), any, any, (value, from, to) =>
      Math.abs(alkalinityInUnit(alkalinityInUnit(value, from, to), to, from) - value) < 1e-9));
  });

  it("refuses less than 0, more than 5000 mg/L as CaCO3 (100 meq/L), and NaN", () => {
    expectRefusal(() => alkalinityInUnit(-1, "meq/L", "dH"), "impossible", "0 to 5000");
    expectRefusal(() => alkalinityInUnit(100, "meq/L", "dH"), "impossible", "alkalinity 100 meq/L = 5004.35 mg/L as CaCO3 cannot be");
    expectRefusal(() => alkalinityInUnit(5001, "mg/L CaCO3", "dH"), "impossible", "alkalinity 5001 mg/L as CaCO3 cannot be");
    expect(alkalinityInUnit(5000, "mg/L CaCO3", "mg/L CaCO3")).toBe(5000);
    expectRefusal(() => alkalinityInUnit(NaN, "meq/L", "dH"), "not-a-number", "alkalinity");
  });
});

describe("alkalinityUnitNamed", () => {
  it.each([
    ["mg/L as CaCO3", "mg/L CaCO3"], ["ppm CaCO3", "mg/L CaCO3"], ["MG/L CaCO\u2083", "mg/L CaCO3"], ["mg/l HCO3", "mg/L HCO3"],
    ["ppm HCO3", "mg/L HCO3"], ["meq/l", "meq/L"], ["mmol/L HCO3-", "mmol/L HCO3"], ["\u00B0dH", "dH"], ["dKH", "dH"],
  ])("%s is %s", (text, unit) => {
    expect(alkalinityUnitNamed(text)).toBe(unit);
  });

  it.each(["mg/L", "ppm", "mmol/L", "constructor", "__proto__", "toString", ""])("%s names none: refused with the list", (text) => {
    expectRefusal(() => alkalinityUnitNamed(text), "unknown-choice", "mg/L CaCO3, mg/L HCO3, meq/L, mmol/L HCO3, dH");
  });
});
