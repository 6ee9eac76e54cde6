import { describe, expect, it } from "vitest";
import { celsiusFromFahrenheit, litresFrom, Refusal } from "../../../src/index";

// NIST SP 811 (2008) B.8: t(C) = (t(F) - 32) / 1.8. Fixed points: water freezes at 32 F, boils at 212 F; -40 is both.
describe("celsiusFromFahrenheit", () => {
  it.each([
    [32, 0],
    [212, 100],
    [-40, -40],
    [68, 20],
    [77, 25],
  ])("%s F is %s C", (fahrenheit, celsius) => {
    expect(celsiusFromFahrenheit(fahrenheit)).toBeCloseTo(celsius, 10);
  });

  it("refuses what is not a number", () => {
    expect(() => celsiusFromFahrenheit(Number.NaN)).toThrow(Refusal);
  });
});

// NIST Handbook 44 appendix C: gallon 3.785 411 784 L, liquid quart 0.946 352 946 L, fluid ounce 29.573 529 562 5 mL, all exact.
describe("litresFrom", () => {
  it.each([
    [1, "gal", 3.785411784],
    [1, "qt", 0.946352946],
    [1, "fl oz", 0.0295735295625],
    [250, "mL", 0.25],
    [2.5, "L", 2.5],
    [0, "gal", 0],
  ] as const)("%s %s is %s L", (volume, unit, litres) => {
    expect(litresFrom(volume, unit)).toBeCloseTo(litres, 12);
  });

  it("refuses a volume below 0", () => {
    expect(() => litresFrom(-1, "mL")).toThrow("cannot be");
  });
});
