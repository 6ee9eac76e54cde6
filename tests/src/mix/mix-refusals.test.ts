import { describe, expect, it } from "vitest";
import {
  analyteNamed, blendEc, blendShare, cations, days, dilution, ec25, feedGrams, labelPercent, leachingShare, litres, ppm, recoveryFeed,
  type RefusalCode, stockDose, stockStrength, swapOut,
} from "../../../src/index";
import { expectRefusal } from "../refused";

const tank = { litres: litres(10), ec: ec25(2) };
const ramp = { startShare: leachingShare(0.5), daysToFull: days(7) };
const nan = NaN as never;

describe("mixes and feeds say no with a code and what to do", () => {
  it.each<[string, () => unknown, RefusalCode, string]>([
    ["dilution: target 2.1 above the 2.0 that is there", () => dilution(tank, ec25(2.1), ec25(0.4)), "order", "STOCKDOSE strengthens"],
    ["dilution: target 0.4 with water of 0.4", () => dilution(tank, ec25(0.4), ec25(0.4)), "order", "above the water's own 0.4"],
    ["dilution: target 0.3 below water of 0.4", () => dilution(tank, ec25(0.3), ec25(0.4)), "order", "above the water's own 0.4"],
    ["dilution: a target that is NaN", () => dilution(tank, nan, ec25(0.4)), "order", "above the water's own"],
    ["swapOut: target 2.1 above the 2.0 that is there", () => swapOut(tank, ec25(2.1), ec25(0.4)), "order", "STOCKDOSE strengthens"],
    ["swapOut: target 0.3 below water of 0.4", () => swapOut(tank, ec25(0.3), ec25(0.4)), "order", "above the water's own 0.4"],
    ["stockDose: target 1.9 below water of 2.0", () => stockDose(tank, ec25(1.9), stockStrength(0.3)), "order", "at least the water's own 2"],
    ["stockDose: a stock that adds nothing", () => stockDose(tank, ec25(3), stockStrength(0)), "impossible", "read the rise"],
    ["blendEc: no parts", () => blendEc([]), "missing", "litres and EC of each part"],
    ["blendEc: 0 L in all", () => blendEc([{ litres: litres(0), ec: ec25(2) }]), "missing", "litres and EC of each part"],
    ["blendShare: two waters of 0.4", () => blendShare(ec25(0.4), ec25(0.4), ec25(0.4)), "impossible", "waters of different EC"],
    ["blendShare: target 2.5 outside 0.4 to 2.4", () => blendShare(ec25(2.4), ec25(0.4), ec25(2.5)), "order", "between 0.4 and 2.4"],
    ["blendShare: target 0.3 outside 0.4 to 2.4", () => blendShare(ec25(0.4), ec25(2.4), ec25(0.3)), "order", "between 0.4 and 2.4"],
    ["analyteNamed: kryptonite", () => analyteNamed("kryptonite"), "unknown-choice", "N, P, K, Ca, Mg, S, Fe"],
    ["feedGrams: a label of 0 %", () => feedGrams(litres(10), ppm(100), { percent: labelPercent(0), analyte: "N" }), "impossible", "less than 1000 g in a litre"],
    ["feedGrams: 100 000 ppm from 5 %", () => feedGrams(litres(10), ppm(100_000), { percent: labelPercent(5), analyte: "N" }), "impossible", "less than 1000 g"],
    ["recoveryFeed: full feed 0.3 below its water of 0.4", () => recoveryFeed({ full: ec25(0.3), water: ec25(0.4) }, days(1), ramp), "order", "at least the water's own 0.4"],
    ["recoveryFeed: the day before the flush", () => recoveryFeed({ full: ec25(2), water: ec25(0.4) }, -1 as never, ramp), "order", "0 or later"],
    ["recoveryFeed: a day that is NaN", () => recoveryFeed({ full: ec25(2), water: ec25(0.4) }, nan, ramp), "order", "0 or later"],
    ["recoveryFeed: a start share of 0", () => recoveryFeed({ full: ec25(2), water: ec25(0.4) }, days(1), { ...ramp, startShare: leachingShare(0) }), "impossible", "above 0 and at most 1"],
    ["recoveryFeed: 0 days to full", () => recoveryFeed({ full: ec25(2), water: ec25(0.4) }, days(1), { ...ramp, daysToFull: days(0) }), "impossible", "above 0"],
    ["litres: -1", () => litres(-1), "impossible", "0 to 1000000"],
    ["labelPercent: 101", () => labelPercent(101), "impossible", "0 to 100"],
  ])("%s is refused", (_, formula, code, says) => {
    expectRefusal(formula, code, says);
  });
});

describe("limits are compared at the meter's resolution of 0.01", () => {
  it("dilution: a target of 2.004 in a tank of 2.0 is there already; 2.006 is refused", () => {
    expect(dilution(tank, ec25(2.004), ec25(0.4))).toBe(0);
    expectRefusal(() => dilution(tank, ec25(2.006), ec25(0.4)), "order", "water only weakens");
  });

  it("dilution: a target 0.004 above the water is refused rather than answered with 4990 L", () => {
    expectRefusal(() => dilution(tank, ec25(0.404), ec25(0.4)), "order", "above the water's own");
  });

  it("blendShare: a target of 2.404 of waters of 0.4 and 2.4 is all of the strong one, 0.396 all of the weak one, 2.406 none", () => {
    expect([2.404, 0.396].map((target) => blendShare(ec25(2.4), ec25(0.4), ec25(target)))).toEqual([1, 0]);
    expectRefusal(() => blendShare(ec25(2.4), ec25(0.4), ec25(2.406)), "order", "target EC 2.406 mS/cm is out of order");
  });

  it("recoveryFeed: a full feed of 0.396 in water of 0.4 is that water: 0.4, never below it", () => {
    expect(recoveryFeed({ full: ec25(0.396), water: ec25(0.4) }, days(7), ramp)).toBe(0.4);
  });

  it("cations: K/Ca of 2.504 counts as balanced, 2.54 does not; 0.70 lies below 0.75, 0.748 does not", () => {
    const answers = [250.4, 254, 70, 74.8].map((k) => cations(ppm(k), ppm(100), ppm(k < 100 ? 30 : 50)).answer);
    expect(answers).toEqual(["balanced", "K high against Ca", "Ca high against K", "balanced"]);
  });
});

describe("the limits themselves are still answered", () => {
  it("feedGrams: 10 g of a trace in a litre, 1000 g of a fertiliser, nothing for 0 ppm", () => {
    expect(feedGrams(litres(2), ppm(100), { percent: labelPercent(1), analyte: "Fe" })).toBe(20);
    expect(feedGrams(litres(2), ppm(200_000), { percent: labelPercent(20), analyte: "N" })).toBe(2000);
    expect(feedGrams(litres(2), ppm(0), { percent: labelPercent(20), analyte: "N" })).toBe(0);
  });

  it("feedGrams: 11 g of a label of 1 % is asked about, as is 1001 g", () => {
    const grams = (target: number, percent: number) => () => feedGrams(litres(2), ppm(target), { percent: labelPercent(percent), analyte: "N" });
    expectRefusal(grams(110, 1), "wrong-unit", "label analysis 1 % looks like another unit: expected a percentage, 20 for 20 %: 1 % would take 11 g in each litre");
    expect(grams(110, 1.1)()).toBeCloseTo(20, 9);
    expectRefusal(grams(190_190, 19), "impossible", "190190 ppm from a label of 19 % cannot be");
  });

  it("stockDose: 250 mL in a litre", () => {
    expect(stockDose({ litres: litres(2), ec: ec25(0) }, ec25(2.5), stockStrength(0.01))).toBeCloseTo(500, 9);
    expectRefusal(() => stockDose({ litres: litres(2), ec: ec25(0) }, ec25(2.51), stockStrength(0.01)), "outside-validity", "a dose of 251 mL in each litre");
  });

  it("recoveryFeed: a start share of all, none above", () => {
    expect(recoveryFeed({ full: ec25(2), water: ec25(0.4) }, days(0), { ...ramp, startShare: leachingShare(1) })).toBe(2);
    expectRefusal(() => recoveryFeed({ full: ec25(2), water: ec25(0.4) }, days(0), { ...ramp, startShare: 1.5 as never }), "impossible", "start share 1.5 cannot be");
  });
});

describe("cations", () => {
  it("are told apart by a ratio of 0.01, half of it no breach: K/Ca of 2.508 is one; a weak feed of half a ppm is judged too", () => {
    expect(cations(ppm(250.8), ppm(100), ppm(50)).answer).toBe("K high against Ca");
    expect(cations(ppm(0.8), ppm(0.5), ppm(0.2)).answer).toBe("balanced");
  });

  it("400 : 100 : 40 names both breaches, and its reason every ratio with its limits", () => {
    const { answer, reasons } = cations(ppm(400), ppm(100), ppm(40));
    expect(answer).toBe("K high against Ca; K high against Mg");
    expect(reasons[0]).toBe("K/Ca 4.00 (0.75 to 2.5), K/Mg 10.00 (2 to 7), Ca/Mg 2.50 (2 to 5)");
  });

  it("cannot say when one of the three is 0 or no number", () => {
    expect(cations(ppm(200), ppm(0), ppm(50)).answer).toBe("cannot say");
    expect(cations(nan, ppm(100), ppm(50)).answer).toBe("cannot say");
  });
});

describe("analyteNamed", () => {
  it.each([["p2o5", "P2O5"], ["P\u2082O\u2085", "P2O5"], [" k2o ", "K2O"], ["NO3-N", "N"], ["fe", "Fe"], ["SIO2", "SiO2"], ["N-NO3", "N"], ["nh4-n", "N"], ["n-NH4", "N"]])("\"%s\" is %s", (text, analyte) => {
    expect(analyteNamed(text)).toBe(analyte);
  });

  it.each(["N", "P", "K", "Ca", "Mg", "S", "Fe", "Mn", "Zn", "Cu", "B", "Mo", "Si", "Cl", "Na", "CaO", "MgO", "SO3", "SO4", "NO3", "NH4"])(
    "%s, as a label states it, is itself",
    (analyte) => {
      expect([analyteNamed(analyte), analyteNamed(analyte.toLowerCase())]).toEqual([analyte, analyte]);
    },
  );

  it("what is none is refused as an analyte", () => {
    expectRefusal(() => analyteNamed("xyz"), "unknown-choice", 'analyte "xyz" is not known');
  });
});
