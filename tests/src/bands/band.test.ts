import { describe, expect, it } from "vitest";
import { bandNamed, ec25, ownBand, ph, type RefusalCode } from "../../../src/index";
import { expectRefusal } from "../refused";

describe("ownBand", () => {
  it.each<[string, readonly [number, number, number, number], RefusalCode, string]>([
    ["pH 1.5 to 3 beside EC 5.6 to 6.4: the two changed places", [1.5, 3, 5.6, 6.4], "implausible", "pH low, pH high, EC low, EC high"],
    ["pH 5.5 to 12", [5.5, 12, 2, 3.5], "implausible", "3 to 10"],
    ["pH 6.4 to 5.6", [6.4, 5.6, 1.5, 3], "order", "below the high limit 5.6"],
    ["EC up to 35", [5.6, 6.4, 1.5, 35], "wrong-unit", "up to 20"],
  ])("%s is refused", (_, [phLow, phHigh, ecLow, ecHigh], code, says) => {
    expectRefusal(() => ownBand(ph(phLow), ph(phHigh), ec25(ecLow), ec25(ecHigh)), code, says);
  });
});

describe("bandNamed", () => {
  it.each(["rock wool", "Rock  Wool", "stonewool", "mineral wool", "mineralwool"])("\"%s\" is mineral wool", (text) => {
    expect(bandNamed(text).medium).toBe("mineral wool");
  });

  it("repeats an unknown feeder without the space before it", () => {
    expectRefusal(() => bandNamed("coir, huge"), "unknown-choice", 'feeder "huge" is not known');
  });
});
