import { describe, expect, it } from "vitest";
import {
  bufferNamed, calibrationDue, days, ec25, ecAsRead, ecAt25, ecAtTemperature, ecFromPpm, ecInUnit, ecMeter, ecUnitNamed, millivolts,
  percentPerCelsius, phBuffer, ppm, ppmScale, ppmScaleNamed, probeCheck, probeLine, type RefusalCode, sheetDate, solutionCelsius,
} from "../../../src/index";
import { expectRefusal } from "../refused";

const t = solutionCelsius;
const reading = (buffer: string, mv: number) => ({ buffer: bufferNamed(buffer), millivolts: millivolts(mv) });
const NaNas = (value: number) => value as never;

describe("readings say no with a code and what to do", () => {
  it.each<[string, () => unknown, RefusalCode, string]>([
    ["ecAt25: a solution of 51 C", () => ecAt25(ecAsRead(2), t(51)), "outside-validity", "0 to 50 C"],
    ["ecAt25: a solution of -1 C", () => ecAt25(ecAsRead(2), t(-1)), "outside-validity", "0 to 50 C"],
    ["ecAt25: a temperature that is NaN", () => ecAt25(ecAsRead(2), NaNas(NaN)), "outside-validity", "0 to 50 C"],
    ["ecAtTemperature: 10 % per C at 5 C leaves nothing", () => ecAtTemperature(ec25(2), t(5), percentPerCelsius(10)), "outside-validity", "0 to 50 C"],
    ["percentPerCelsius: 0.0191, the share for 1.91 %", () => percentPerCelsius(0.0191), "impossible", "0.5 to 10"],
    ["ecAsRead: 1413 mS/cm", () => ecAsRead(1413), "wrong-unit", "divide uS/cm by 1000"],
    ["ecInUnit: 250 dS/m", () => ecInUnit(250, "dS/m", "uS/cm"), "wrong-unit", "250 dS/m"],
    ["ecInUnit: 250 mS/cm", () => ecInUnit(250, "mS/cm", "uS/cm"), "wrong-unit", "EC 250 mS/cm looks like another unit"],
    ["ecInUnit: -1 uS/cm", () => ecInUnit(-1, "uS/cm", "mS/cm"), "impossible", "0 to 200"],
    ["ecInUnit: NaN", () => ecInUnit(NaN, "uS/cm", "mS/cm"), "not-a-number", "NaN"],
    ["ecUnitNamed: furlongs", () => ecUnitNamed("furlongs"), "unknown-choice", "mS/cm, uS/cm, dS/m, mS/m, S/m"],
    ["ppmScaleNamed: nothing", () => ppmScaleNamed(undefined), "missing", "choose 500 (EC x 0.5), 640 (EC x 0.64), 700"],
    ["ppmScaleNamed: 0.5", () => ppmScaleNamed(0.5), "unknown-choice", "500 (EC x 0.5)"],
    ["ppmScaleNamed: 399", () => ppmScaleNamed(399), "unknown-choice", "400 to 1000"],
    ["ppmScaleNamed: 1001", () => ppmScaleNamed(1001), "unknown-choice", "400 to 1000"],
    ["ppmScaleNamed: \"parts\"", () => ppmScaleNamed("parts"), "unknown-choice", "\"parts\" is not known"],
    ["ppmScaleNamed: NaN", () => ppmScaleNamed(NaN), "unknown-choice", "400 to 1000"],
    ["ecFromPpm: 150 000 ppm on the 500 scale is EC 300", () => ecFromPpm(ppm(150_000), ppmScale(500)), "wrong-unit", "300"],
    ["phBuffer: 51 C", () => phBuffer("7.00", t(51)), "outside-validity", "0 to 50 C"],
    ["phBuffer: -1 C", () => phBuffer("7.00", t(-1)), "outside-validity", "0 to 50 C"],
    ["phBuffer: NaN", () => phBuffer("7.00", NaNas(NaN)), "outside-validity", "0 to 50 C"],
    ["bufferNamed: 7.02", () => bufferNamed("7.02"), "unknown-choice", "4.01, 6.86, 7.00, 7.01, 9.18, 10.01"],
    ["bufferNamed: \"pH\"", () => bufferNamed("pH"), "unknown-choice", "4.01, 6.86, 7.00, 7.01, 9.18, 10.01"],
    ["probeLine: 6.86 beside 7.00", () => probeLine(reading("6.86", 8), reading("7", 1), t(25)), "impossible", "at least 1 pH apart"],
    ["probeLine: one buffer twice", () => probeLine(reading("7", 8), reading("7", 1), t(25)), "impossible", "at least 1 pH apart"],
    ["ecMeter: a standard of -1 C", () => ecMeter(ecAsRead(1.1), ec25(1.413), { celsius: t(-1), compensating: false }), "outside-validity", "0 to 50 C"],
    ["ecMeter: a standard of 51 C, compensated", () => ecMeter(ec25(1.4), ec25(1.413), { celsius: t(51), compensating: true }), "outside-validity", "0 to 50 C"],
    ["ecMeter: a standard of 0", () => ecMeter(ec25(1.4), ec25(0), { celsius: t(25), compensating: true }), "impossible", "above 0"],
    ["calibrationDue: calibrated tomorrow", () => calibrationDue(sheetDate(45001), days(7), sheetDate(45000)), "order", "last calibration a day after today is out of order"],
    ["calibrationDue: every 0 days", () => calibrationDue(sheetDate(45000), days(0), sheetDate(45000)), "impossible", "1 or more"],
    ["sheetDate: 20260301 typed for a date", () => sheetDate(20_260_301), "impossible", "1 to 2958465"],
    ["millivolts: 1600", () => millivolts(1600), "impossible", "-1000 to 1000"],
  ])("%s is refused", (_, formula, code, says) => {
    expectRefusal(formula, code, says);
  });
});

describe("spellings", () => {
  it.each([
    ["mS/cm", "mS/cm"], ["MS/CM", "mS/cm"], [" mS / cm ", "mS/cm"], ["ms", "mS/cm"], ["mmho/cm", "mS/cm"], ["mmhos/cm", "mS/cm"],
    ["\u00B5S/cm", "uS/cm"], ["\u03BCS/cm", "uS/cm"], ["us", "uS/cm"], ["umho/cm", "uS/cm"], ["dS/m", "dS/m"], ["ms/m", "mS/m"], ["S/m", "S/m"],
  ])("ecUnitNamed: \"%s\" is %s", (text, unit) => {
    expect(ecUnitNamed(text)).toBe(unit);
  });

  it.each([["4", "4.01"], ["4.00", "4.01"], ["pH 4.01", "4.01"], ["6.86", "6.86"], ["7", "7.00"], ["ph7.0", "7.00"], ["10.01", "10.01"]])(
    "bufferNamed: \"%s\" is the %s buffer",
    (text, buffer) => {
      expect(bufferNamed(text)).toBe(buffer);
    },
  );
});

describe("probeCheck", () => {
  it("cannot say when the slope or the offset is no number", () => {
    expect(probeCheck({ slopePercent: NaN, offsetMillivolts: 0 }).answer).toBe("cannot say");
    expect(probeCheck({ slopePercent: 98, offsetMillivolts: NaN }).answer).toBe("cannot say");
  });

  it("87 % and 35 mV: cleaning comes before use", () => {
    expect(probeCheck({ slopePercent: 87, offsetMillivolts: 35 }).answer).toBe("clean and repeat");
    expect(probeCheck({ slopePercent: 92, offsetMillivolts: 20 }).answer).toBe("clean and repeat");
  });

  it("names both figures and their limits", () => {
    const { answer, reasons } = probeCheck({ slopePercent: 98.77, offsetMillivolts: 12 });
    expect(answer).toBe("good");
    expect(reasons.join("; ")).toBe("slope 98.8 % of Nernst (good 95 to 102, accepted 85 to 105); offset 12 mV at pH 7 (good within 15, accepted within 30, rejected beyond 60)");
  });

  it("an offset of 31 mV asks for cleaning, of 61 mV either way it is rejected", () => {
    expect([31, 60, 61, -61].map((offsetMillivolts) => probeCheck({ slopePercent: 98, offsetMillivolts }).answer)).toEqual(
      ["clean and repeat", "clean and repeat", "reject", "reject"]);
  });

  it("two mV in each other's place are asked about; a dead electrode, -15 mV in both, is not taken for one", () => {
    expectRefusal(() => probeLine(reading("7", 160), reading("4.01", -15), t(25)), "order", "160 mV in 7.00 and -15 in 4.01 look exchanged");
    expect(probeCheck(probeLine(reading("7", -15), reading("4.01", -16), t(25))).answer).toBe("reject");
  });

  it("swapping the order of the two buffers changes neither slope nor offset", () => {
    const [a, b] = [reading("7", -15), reading("4.01", 160)];
    const [one, other] = [probeLine(a, b, t(20)), probeLine(b, a, t(20))];
    expect(other.slopePercent).toBeCloseTo(one.slopePercent, 9);
    expect(other.offsetMillivolts).toBeCloseTo(one.offsetMillivolts, 9);
  });
});
