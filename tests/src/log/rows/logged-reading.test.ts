import { describe, expect, it } from "vitest";
import { loggedReading, type Refusal, usedRange } from "../../../../src/index";

type Unit = Parameters<typeof loggedReading>[1];
const refusalOf = (cell: string | number | boolean, unit: Unit): unknown => {
  try {
    return loggedReading(cell, unit);
  } catch (error) {
    const { code, message } = error as Refusal;
    return [code, message];
  }
};

// One mS/cm is 1000 uS/cm, 10 CF, 100 mS/m, 0.1 S/m, and the ppm of its scale; 72 F are 22.2 C; US volumes by NIST SP 811.
describe("loggedReading", () => {
  it.each<[number | string, Unit, number]>([
    [1800, "uS/cm", 1.8], ["1800 uS/cm", "mS/cm", 1.8], [18, "CF", 1.8], [180, "mS/m", 1.8], [0.18, "S/m", 1.8], [1.8, "dS/m", 1.8],
    [900, "ppm 500", 1.8], [1260, "ppm 700", 1.8], [1152, "ppm 640", 1.8], ["900 ppm", "ppm 500", 1.8], ["6,1", "pH", 6.1],
    [500, "mL", 0.5], [1, "gal", 3.785411784], [1, "qt", 0.946352946], [1, "fl oz", 0.0295735296], [72, "F", 22.2222], [0.55, "share", 55],
    [55, "%", 55], [2000, "L", 2000], ["~6.2", "pH", 6.2], [25, "mS/cm", 25],
  ])("%s in %s is %d", (cell, unit, value) => {
    expect(loggedReading(cell, unit)).toBeCloseTo(value, 4);
  });

  it("is nothing where nothing was measured: a blank, n/a, and 0 of anything but a volume", () => {
    expect(([undefined, "", "n/a", "-"] as const).map((cell) => loggedReading(cell, "mS/cm"))).toEqual(Array(4).fill(undefined));
    expect((["mS/cm", "pH", "C", "%", "ppm 500"] as const).map((unit) => loggedReading(0, unit))).toEqual(Array(5).fill(undefined));
    expect(loggedReading(0, "L")).toBe(0);
    expect(loggedReading(0, "mL")).toBe(0);
  });

  it.each<[number | string | boolean, Unit, string]>([
    [">5", "mS/cm", "is a limit"], ["1.8-2.0", "mS/cm", "more than one number"], ["high", "mS/cm", "is not a number"], [true, "pH", "not a number"],
    [45, "pH", "pH"], [-1, "mS/cm", "below 0"], ["pH 6", "mS/cm", "says pH"], ["22 C", "mS/cm", "not in a unit"], ["900 ppm", "mS/cm", "not in a unit"], [140, "C", "hard to believe"],
    [120, "%", "0 to 100"], [-1, "L", "cannot be"], [0.05, "mS/cm", "out of the water"],
  ])("refuses %s in %s as implausible, and says why: %s", (cell, unit, says) => {
    expect(refusalOf(cell, unit)).toEqual(["implausible", expect.stringContaining(says)]);
  });
});

describe("usedRange", () => {
  it.each<[Parameters<typeof usedRange>[0], number, boolean, number]>([
    ["mS/cm", 0.1, true, 200], ["uS/cm", 0.1, true, 200], ["ppm 700", 0.1, true, 200], ["CF", 0.1, true, 200], ["", 1, false, 14],
    ["L", 0, true, 1_000_000], ["gal", 0, true, 1_000_000], ["C", 5, true, 45], ["F", 5, true, 45], ["%", 0, false, 100], ["share", 0, false, 100],
  ])("of %j is %d to %d", (unit, low, withLow, high) => {
    expect(usedRange(unit)).toEqual({ low, withLow, high });
  });
});
