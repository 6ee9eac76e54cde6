import { describe, expect, it } from "vitest";
import {
  airCelsius, alkalinity, dailyLightIntegral, days, ec25, gramsPerLitre, hours, humidityPercent, isPlausible, labelPercent,
  leachingFraction, leachingShare, litres, millivolts, percentPerCelsius, ph, photonFlux, ppm, ppmScale, type QuantityName, rounded,
  sheetDate, solutionCelsius, stockStrength, written,
} from "../../src/index";
import { type Check, quantities } from "../../src/quantities";
import { expectRefusal } from "./refused";

describe("a quantity", () => {
  it("of -0, which a sheet does not know, is 0, and so is what is reckoned from it", () => {
    expect(Object.is(litres(-0), 0)).toBe(true);
    expect(Object.is(leachingFraction(litres(-0), litres(2)), 0)).toBe(true);
    expect(Object.is(leachingShare(-0), 0)).toBe(true);
  });
});

/** What can be: pH, shares, percentages, hours and dates by their definitions, the rest common practice. */
const physical: readonly (readonly [check: Check<number>, called: string, unit: string, low: number, high: number])[] = [
  [ec25, "EC", "mS/cm", 0, 200],
  [ph, "pH", "", 0, 14],
  [ppm, "ppm", "ppm", 0, 200_000],
  [ppmScale, "ppm scale", "ppm per mS/cm", 400, 1000],
  [solutionCelsius, "solution temperature", "C", -5, 100],
  [airCelsius, "air temperature", "C", -50, 70],
  [humidityPercent, "relative humidity", "%", 0, 100],
  [litres, "volume", "L", 0, 1_000_000],
  [leachingShare, "leaching fraction", "", 0, 1],
  [alkalinity, "alkalinity", "mg/L as CaCO3", 0, 5000],
  [percentPerCelsius, "temperature coefficient", "% per C", 0.5, 10],
  [millivolts, "electrode reading", "mV", -1000, 1000],
  [sheetDate, "date", "", 1, 2_958_465],
  [days, "days", "days", 0, 36_525],
  [hours, "hours", "h", 0, 24],
  [photonFlux, "PPFD", "umol/m2 s", 0, 5000],
  [dailyLightIntegral, "daily light integral", "mol/m2 a day", 0, 100],
  [labelPercent, "label analysis", "%", 0, 100],
  [gramsPerLitre, "fertiliser", "g/L", 0, 1000],
  [stockStrength, "EC per mL of stock per L", "mS/cm", 0, 100],
];

describe("what can be", () => {
  it.each(physical)("%o: %s, %s, from %d to %d, both still in it", (check, called, unit, low, high) => {
    expect([check(low), check(high)]).toEqual([low, high]);
    const said = (value: number): string => [called, value, unit].filter((part) => part !== "").join(" ");
    expectRefusal(() => check(low - 0.1), "impossible", `${said(low - 0.1)} cannot be: it must be ${low} to ${high}`);
    expectRefusal(() => check(high + 0.1), called === "EC" ? "wrong-unit" : "impossible", said(high + 0.1));
    expectRefusal(() => check(NaN), "not-a-number", called);
  });

  it("EC above 200 is asked about as uS/cm, whatever it is called; EC below 0 and pH 15 are not", () => {
    expectRefusal(() => ec25(1413, "runoff EC"), "wrong-unit", "runoff EC 1413 mS/cm looks like another unit: expected mS/cm; divide uS/cm by 1000");
    expectRefusal(() => ec25(-1), "impossible", "0 to 200");
    expectRefusal(() => ph(201), "impossible", "pH 201 cannot be");
  });
});

/** What is believed of a pot, common practice; sheet dates from 2000 to 2099. */
const plausible: readonly (readonly [name: QuantityName, low: number, high: number])[] = [
  ["ec", 0.1, 20], ["ph", 3, 10], ["ppm", 50, 14_000], ["ppmScale", 480, 720], ["solutionCelsius", 5, 40], ["airCelsius", 5, 45],
  ["humidityPercent", 15, 100], ["litres", 0, 2000], ["saltRatio", 0.2, 20], ["leachingFraction", 0, 0.6], ["alkalinity", 5, 500],
  ["percentPerCelsius", 1.5, 2.5], ["millivolts", -500, 500], ["sheetDate", 36_526, 73_050], ["days", 0, 3650], ["hours", 4, 24],
  ["photonFlux", 10, 2200], ["dailyLight", 1, 65], ["waterings", 0.1, 50], ["labelPercent", 0.01, 65], ["gramsPerLitre", 0.05, 300],
  ["stockStrength", 0.05, 2],
];

it.each(plausible)("%s is believed from %d to %d, both still in it", (name, low, high) => {
  expect([isPlausible(low, name), isPlausible(high, name)]).toEqual([true, true]);
  expect([isPlausible(low - 1e-3, name), isPlausible(high + 1e-3, name), isPlausible(NaN, name)]).toEqual([false, false, false]);
});

/** The smallest step that is told apart: bench meters, a jug's mark of 10 mL, a drop test of alkalinity; common practice. */
const steps: readonly (readonly [name: QuantityName, step: number])[] = [
  ["ec", 0.01], ["ph", 0.01], ["ppm", 10], ["ppmScale", 1], ["solutionCelsius", 0.1], ["airCelsius", 0.1], ["humidityPercent", 1],
  ["litres", 0.01], ["saltRatio", 0.01], ["leachingFraction", 0.01], ["alkalinity", 5], ["percentPerCelsius", 0.01], ["millivolts", 1],
  ["sheetDate", 1], ["days", 1], ["hours", 0.1], ["photonFlux", 1], ["dailyLight", 0.1], ["waterings", 0.1], ["labelPercent", 0.01],
  ["gramsPerLitre", 0.01], ["stockStrength", 0.001],
];

it.each(steps)("%s is told apart in steps of %d, which are shown", (name, step) => {
  expect(quantities[name].resolution).toBe(step);
  expect(parseFloat(written(step, name).replace("pH ", ""))).toBe(step);
});

describe("written", () => {
  it.each<[number, QuantityName, string]>([
    [4.6149, "ec", "4.61 mS/cm"], [5.349, "ph", "pH 5.35"], [1152.6, "ppm", "1153 ppm"], [21.26, "solutionCelsius", "21.3 C"],
    [21.26, "airCelsius", "21.3 C"], [61.6, "humidityPercent", "62 %"], [1.2345, "litres", "1.23 L"], [2.005_1, "saltRatio", "2.01"],
    [0.2345, "leachingFraction", "0.23"], [151.6, "alkalinity", "152 mg/L as CaCO3"], [1.914, "percentPerCelsius", "1.91 % per C"],
    [-15.6, "millivolts", "-16 mV"], [700.4, "ppmScale", "700 ppm per mS/cm"], [45_000.6, "sheetDate", "45001"], [3.6, "days", "4 days"],
    [12.25, "hours", "12.3 h"], [400.6, "photonFlux", "401 umol/m2 s"], [17.28, "dailyLight", "17.3 mol/m2 a day"],
    [2.55, "waterings", "2.5"], [8.729, "labelPercent", "8.73 %"], [1.2345, "gramsPerLitre", "1.23 g/L"], [0.30049, "stockStrength", "0.3 mS/cm"],
  ])("%d of %s is %s", (value, name, words) => {
    expect(written(value, name)).toBe(words);
  });
});

describe("rounded", () => {
  it.each([[1, "1"], [1.004, "1"], [12.345_6, "12.35"], [0.012_345, "0.0123"], [0.999_4, "0.999"], [-0.012_345, "-0.0123"], [-2.5, "-2.5"], [0, "0"]])(
    "%d is %s: two decimals, three digits below 1",
    (value, words) => {
      expect(rounded(value)).toBe(words);
    },
  );
});
