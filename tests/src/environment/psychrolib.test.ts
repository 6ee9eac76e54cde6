import psychrolib from "psychrolib";
import { beforeAll, describe, expect, it } from "vitest";
import { airCelsius, dewPoint, humidityPercent, saturationPressure, vapourPressureDeficit } from "../../../src/index";
import { expectRefusal } from "../refused";

beforeAll(() => {
  psychrolib.SetUnitSystem(psychrolib.SI);
});

const temperatures = [1, 5, 10, 15, 18, 20, 22, 25, 28, 30, 35];
const humidities = [15, 30, 50, 60, 75, 90, 100];
const air = temperatures.flatMap((celsius) => humidities.map((percent) => [celsius, percent] as const));

describe("air against psychrolib (ASHRAE 2017 formulas), 77 pairs of 1 to 35 C and 15 to 100 %", () => {
  it("saturationPressure: within 0.1 %", () => {
    const off = temperatures.map((t) => Math.abs((saturationPressure(airCelsius(t)) * 1000) / psychrolib.GetSatVapPres(t) - 1));
    expect(Math.max(...off)).toBeLessThan(0.001);
  });

  it("vapourPressureDeficit: within 0.1 % of the saturation pressure", () => {
    const off = air.map(([t, rh]) => {
      const saturated = psychrolib.GetSatVapPres(t) / 1000;
      return Math.abs(vapourPressureDeficit(airCelsius(t), humidityPercent(rh)) - saturated * (1 - rh / 100)) / saturated;
    });
    expect(Math.max(...off)).toBeLessThan(0.001);
  });

  it("dewPoint: within 0.05 C wherever it lies above 0 C", () => {
    const pairs = air.map(([t, rh]) => [dewPoint(airCelsius(t), humidityPercent(rh)), psychrolib.GetTDewPointFromRelHum(t, rh / 100)] as const);
    const wet = pairs.filter(([, dew]) => dew > 0);
    expect(wet.length).toBeGreaterThan(50);
    expect(Math.max(...wet.map(([ours, theirs]) => Math.abs(ours - theirs)))).toBeLessThan(0.05);
  });
});

describe("air, at its limits", () => {
  it("a leaf at the dew point of 16.70 C has a deficit of 0; a colder one has a negative one", () => {
    const dew = dewPoint(airCelsius(25), humidityPercent(60));
    expect(vapourPressureDeficit(airCelsius(25), humidityPercent(60), airCelsius(dew))).toBeCloseTo(0, 9);
    expect(vapourPressureDeficit(airCelsius(25), humidityPercent(60), airCelsius(dew - 1))).toBeLessThan(0);
  });

  it("air of 100 % has its dew point at its own temperature and a deficit of 0", () => {
    expect(dewPoint(airCelsius(22), humidityPercent(100))).toBeCloseTo(22, 9);
    expect(vapourPressureDeficit(airCelsius(22), humidityPercent(100))).toBe(0);
  });

  it("0 C and 50 C still belong to it: 0.6108 kPa, equation 11's own constant, and 12.35 kPa (ASHRAE) within 0.3 %", () => {
    expect(saturationPressure(airCelsius(0))).toBeCloseTo(0.6108, 12);
    expect(saturationPressure(airCelsius(50)) / 12.3513).toBeCloseTo(1, 2);
  });

  it("a humidity of 1.5 % is a percentage, however dry; 0.6 % is asked about in its unit", () => {
    expect(vapourPressureDeficit(airCelsius(25), humidityPercent(1.5))).toBeCloseTo(0.985 * saturationPressure(airCelsius(25)), 9);
    expectRefusal(() => dewPoint(airCelsius(25), humidityPercent(0.6)), "wrong-unit", "relative humidity 0.6 % looks");
  });

  it("51 C, -1 C and a humidity of 0.6 typed for 60 are refused", () => {
    expectRefusal(() => vapourPressureDeficit(airCelsius(51), humidityPercent(60)), "outside-validity", "air temperature 51 C is outside");
    expectRefusal(() => dewPoint(airCelsius(-1), humidityPercent(60)), "outside-validity", "0 to 50 C");
    expectRefusal(() => vapourPressureDeficit(airCelsius(25), humidityPercent(60), airCelsius(60)), "outside-validity", "leaf temperature");
    expectRefusal(() => vapourPressureDeficit(airCelsius(25), humidityPercent(0.6)), "wrong-unit", "such as 60, not a share");
    expectRefusal(() => dewPoint(airCelsius(25), humidityPercent(1)), "wrong-unit", "such as 60, not a share");
    expectRefusal(() => humidityPercent(101), "impossible", "0 to 100");
  });
});
