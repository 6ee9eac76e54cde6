import { describe, expect, it } from "vitest";
import {
  alkalinityUnitNamed, bufferNamed, calibrationDue, celsiusFromFahrenheit, days, ec25, ecAsRead, ecAt25, ecMeter, ecUnitNamed, kclStandardAt,
  millivolts, percentPerCelsius, phBuffer, ppmScaleNamed, probeCheck, probeLine, sheetDate, solutionCelsius,
} from "../../../src/index";
import { inUnitOfLimits, meterStep, meterTolerance } from "../../../src/readings/series-unit";
import { expectRefusal } from "../refused";

const t = solutionCelsius;

describe("ecAt25 at its limits", () => {
  it("0 C and 50 C belong to it: EC / (1 + 0.0191 x (t - 25))", () => {
    expect(ecAt25(ecAsRead(1), t(0))).toBeCloseTo(1 / 0.5225, 12);
    expect(ecAt25(ecAsRead(1), t(50))).toBeCloseTo(1 / 1.4775, 12);
  });

  it("4 % per C at 0 C leaves nothing to divide by; 3.9 % leaves 0.025", () => {
    expectRefusal(() => ecAt25(ecAsRead(1), t(0), percentPerCelsius(4)), "outside-validity", "solution temperature 0 C is outside");
    expect(ecAt25(ecAsRead(1), t(0), percentPerCelsius(3.9))).toBeCloseTo(40, 9);
  });
});

// NIST, ITS-90 [pratt2001]: rows of 0.01 and 0.1 mol/kg KCl, uS/cm.
describe("kclStandardAt", () => {
  it.each([
    [0, 772.92, 7116.85], [15, 1141.45, 10_437.1], [20, 1273.03, 11_615.9], [25, 1408.23, 12_824.6], [30, 1546.63, 14_059.2],
    [35, 1687.79, 15_316], [45, 1976.62, 17_880.6],
  ])("at %d C the weak one conducts %d uS/cm, the strong one %d", (celsius, weak, strong) => {
    expect(1000 * kclStandardAt(ec25(1.40823), t(celsius))).toBeCloseTo(weak, 6);
    expect(1000 * kclStandardAt(ec25(12.8246), t(celsius))).toBeCloseTo(strong, 6);
  });

  it("a standard goes by the curve it is nearer to by its logarithm: 4.2 by the weak one's, 4.3 by the strong one's", () => {
    expect(kclStandardAt(ec25(4.2), t(10)) / 4.2).toBeCloseTo(1013.95 / 1408.23, 9);
    expect(kclStandardAt(ec25(4.3), t(10)) / 4.3).toBeCloseTo(9291.72 / 12_824.6, 9);
  });

  it("outside 0 to 50 C it is refused as the standard's temperature", () => {
    expectRefusal(() => kclStandardAt(ec25(1.413), t(50.1)), "outside-validity", "standard's temperature 50.1 C is outside");
  });
});

describe("ecMeter: what it says of an error", () => {
  const said = (shown: number): string => ecMeter(ec25(shown), ec25(10), { celsius: t(25), compensating: true }).reason;

  it.each([
    [10, "0.0 % off, within 2 %"],
    [10.2, "2.0 % off, within 2 %"],
    [10.204, "2.0 % off, within 2 %"],
    [10.206, "2.1 % off, beyond 2 %: clean, rinse, calibrate and repeat"],
    [9.79, "-2.1 % off, beyond 2 %: clean"],
    [13, "30.0 % off, beyond 2 %: clean"],
    [13.006, "30.1 % off: check that it is this standard and this unit"],
    [6.9, "-31.0 % off: check that it is this standard"],
  ])("%d shown in a standard of 10: %s", (shown, words) => {
    expect(said(shown)).toContain(words);
  });

  it("tells which figure it compares with, and why", () => {
    expect(said(10)).toContain("a true meter would show 10.000 mS/cm (a compensating meter shows its EC at 25 C)");
    const plain = ecMeter(ecAsRead(1.2), ec25(1.40823), { celsius: t(20), compensating: false });
    expect(plain.reason).toContain("a true meter would show 1.273 mS/cm (without compensation at 20 C)");
  });

  it("half and twice the standard are a meter far off, anything beyond another standard or unit", () => {
    expect([said(5), said(20)].every((words) => words.includes("check that it is this standard"))).toBe(true);
    expectRefusal(() => said(4.99), "wrong-unit", "EC shown 4.99 mS/cm looks like another unit: expected about 10.000 mS/cm in a standard of 10");
    expectRefusal(() => said(20.01), "wrong-unit", "EC shown 20.01 mS/cm");
    expectRefusal(() => ecMeter(ec25(1), ec25(0), { celsius: t(25), compensating: true }), "impossible", "standard EC 0 mS/cm cannot be");
  });

  it("a weak standard of 0.5 is one too", () => {
    expect(ecMeter(ec25(0.51), ec25(0.5), { celsius: t(25), compensating: true }).errorPercent).toBeCloseTo(2, 9);
  });
});

describe("ppmScaleNamed", () => {
  it("a meter's own factor from 400 to 1000, both still in it", () => {
    expect([ppmScaleNamed(400), ppmScaleNamed(1000), ppmScaleNamed("640")]).toEqual([400, 1000, 640]);
  });

  it("an empty cell is missing, whatever way it is empty", () => {
    expectRefusal(() => ppmScaleNamed(""), "missing", "ppm scale is missing: a ppm without its scale means nothing");
    expectRefusal(() => ppmScaleNamed("x"), "unknown-choice", 'ppm scale "x" is not known');
  });
});

describe("calibrationDue", () => {
  it("calibrated today it is due after the whole interval: every day, or once in a leap year", () => {
    expect(calibrationDue(sheetDate(45000), days(1), sheetDate(45000))).toBe(1);
    expect(calibrationDue(sheetDate(45000), days(366), sheetDate(45000.9))).toBe(366);
  });

  it("less often than once a year is hard to believe, more often than daily cannot be", () => {
    expectRefusal(() => calibrationDue(sheetDate(45000), days(367), sheetDate(45000)), "implausible", "days between calibrations 367 is hard to believe: usual is 7 to 30");
    expectRefusal(() => calibrationDue(sheetDate(45000), days(0.5), sheetDate(45000)), "impossible", "days between calibrations 0.5");
    expectRefusal(() => calibrationDue(sheetDate(45002), days(7), sheetDate(45000)), "order", "last calibration 2 days after today");
  });
});

// IUPAC 2002, table 2, at 0 C; the technical buffer as instrument makers print it, 7.01 standing 0.01 above 7.00.
describe("phBuffer", () => {
  it.each([["4.01", 4.0], ["6.86", 6.984], ["7.00", 7.118], ["7.01", 7.128], ["9.18", 9.464], ["10.01", 10.317]] as const)(
    "%s at 0 C is pH %d",
    (buffer, ph) => {
      expect(phBuffer(buffer, t(0))).toBeCloseTo(ph, 9);
    },
  );

  it("is refused as the buffer's temperature", () => {
    expectRefusal(() => phBuffer("7.00", t(50.1)), "outside-validity", "buffer temperature 50.1 C is outside");
    for (const text of ["5", "", " ", "pH"]) expectRefusal(() => bufferNamed(text), "unknown-choice", `buffer "${text}" is not known`);
  });
});

describe("probeLine and probeCheck", () => {
  const mv = (buffer: "4.01" | "7.00" | "9.18" | "10.01", at: number) => ({ buffer, millivolts: millivolts(at) });
  /** An electrode of so many % of Nernst's 59.159 mV in 7.00 and 4.01, 2.995 pH apart at 25 C. */
  const electrode = (percent: number) => () => probeLine(mv("7.00", 0), mv("4.01", (percent / 100) * 59.159 * 2.995), t(25));

  it("9.18 and 10.01 lie 0.83 pH apart: too close for a slope", () => {
    expectRefusal(() => probeLine(mv("9.18", 0), mv("10.01", -49), t(25)), "impossible", "a slope from buffers 9.18 and 10.01 cannot be");
  });

  it("mV look exchanged when the other way round the electrode would be accepted, 85 to 105 %", () => {
    for (const percent of [-85.5, -100, -104.5]) expectRefusal(electrode(percent), "order", "mV in the two buffers is out of order: it must be falling as pH rises");
    for (const percent of [-84.5, -105.5]) expect(probeCheck(electrode(percent)()).answer).toBe("reject");
  });

  it("told apart by 0.1 % and 1 mV: half a step beside a limit is on it", () => {
    const by = (slopePercent: number, offsetMillivolts = 0) => probeCheck({ slopePercent, offsetMillivolts }).answer;
    expect([by(94.96), by(94.94), by(102.04), by(102.06)]).toEqual(["good", "clean and repeat", "good", "clean and repeat"]);
    expect([by(89.96), by(89.94)]).toEqual(["clean and repeat", "usable, watch it"]);
    expect([by(84.96), by(84.94), by(105.04), by(105.06)]).toEqual(["usable, watch it", "reject", "clean and repeat", "reject"]);
    expect([15.4, 15.6, 30.4, 30.6, 60.4, 60.6].map((offset) => by(98, offset))).toEqual(
      ["good", "usable, watch it", "usable, watch it", "clean and repeat", "clean and repeat", "reject"]);
  });

  it("an endless slope or offset is rejected", () => {
    expect(probeCheck({ slopePercent: Infinity, offsetMillivolts: 0 }).answer).toBe("reject");
    expect(probeCheck({ slopePercent: 98, offsetMillivolts: -Infinity }).answer).toBe("reject");
  });
});

describe("series without their unit, at the limits", () => {
  it("a hundredfold beyond the limits is another unit, exactly a hundredfold is not", () => {
    expect(() => { inUnitOfLimits([350], 2, 3.5); }).not.toThrow();
    expectRefusal(() => { inUnitOfLimits([350.1], 2, 3.5); }, "wrong-unit", "a reading of 350.1 looks like another unit");
    expect(() => { inUnitOfLimits([20, 0], 2000, 3500); }).not.toThrow();
    expectRefusal(() => { inUnitOfLimits([3000, 19.9], 2000, 3500); }, "wrong-unit", "a reading of 19.9");
  });

  it("limits up to 200 are no ppm, and a low figure beside them is low", () => {
    expect(() => { inUnitOfLimits([0.5], 100, 200); }).not.toThrow();
    expectRefusal(() => { inUnitOfLimits([0.5], 100, 201); }, "wrong-unit", "a reading of 0.5");
  });

  it("a distance below 0 has the step of its size", () => {
    expect([meterStep(-3), meterStep(-300), meterTolerance(-6), meterTolerance(0)].map((step) => Number(step.toFixed(9)))).toEqual([0.01, 10, 0.12, 0.05]);
  });
});

it("a temperature that is no number is refused as one", () => {
  expectRefusal(() => celsiusFromFahrenheit(Infinity), "not-a-number", 'temperature "Infinity" is not a number');
});

describe("spellings, each of them", () => {
  it.each([
    ["ms", "mS/cm"], ["milliSiemens/cm", "mS/cm"], ["mmho/cm", "mS/cm"], ["mmhos/cm", "mS/cm"], ["mS/cm", "mS/cm"],
    ["\u03BCS", "uS/cm"], ["microsiemens/cm", "uS/cm"], ["umho/cm", "uS/cm"], ["\u00B5mhos/cm", "uS/cm"], ["uS/cm", "uS/cm"],
    ["dS", "dS/m"], ["dS/m", "dS/m"], ["mS/m", "mS/m"], ["S/m", "S/m"], ["cf", "CF"],
  ])("EC: %s is %s", (text, unit) => {
    expect(ecUnitNamed(text)).toBe(unit);
  });

  it.each([
    ["CaCO3 mg/L", "mg/L CaCO3"], ["CaCO3", "mg/L CaCO3"], ["HCO3 mg/l", "mg/L HCO3"], ["HCO3", "mg/L HCO3"], ["mg/L HCO3-", "mg/L HCO3"],
    ["ppm bicarbonate", "mg/L HCO3"], ["meq", "meq/L"], ["mval/l", "meq/L"], ["mmol/l HCO3-", "mmol/L HCO3"], ["mmol/L as bicarbonate", "mmol/L HCO3"],
    ["mmol/L HCO3", "mmol/L HCO3"], ["\u00B0dH", "dH"], ["dH", "dH"], ["dKH", "dH"], ["\u00B0dKH", "dH"], ["KH", "dH"], ["\u00B0KH", "dH"], ["degrees", "dH"],
  ])("alkalinity: %s is %s", (text, unit) => {
    expect(alkalinityUnitNamed(text)).toBe(unit);
  });

  it("no unit is refused by what it was asked for", () => {
    expectRefusal(() => ecUnitNamed("g"), "unknown-choice", 'EC unit "g" is not known: choose mS/cm, uS/cm');
    expectRefusal(() => alkalinityUnitNamed("g"), "unknown-choice", 'alkalinity unit "g" is not known');
  });
});
