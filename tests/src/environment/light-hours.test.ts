import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { dailyLight, dailyLightIntegral, hours, lightHours, photonFlux } from "../../../src/index";
import { expectRefusal } from "../refused";

describe("lightHours", () => {
  it("undoes dailyLight", () => {
    fc.assert(fc.property(fc.double({ min: 10, max: 1000, noNaN: true }), fc.double({ min: 0, max: 24, noNaN: true }), (flux, day) => {
      const light = dailyLightIntegral(dailyLight(photonFlux(flux), hours(day)));
      return Math.abs(lightHours(photonFlux(flux), light) - day) < 1e-9;
    }));
  });

  it("takes a whole day whose last digit rounds up: 25.632299095044154 umol/m2 s", () => {
    const flux = photonFlux(25.632299095044154);
    expect(lightHours(flux, dailyLightIntegral(dailyLight(flux, hours(24))))).toBe(24);
  });

  it("24 hours of 200 umol/m2 s are 17.28 mol/m2; 17.29 are refused, and so is no light", () => {
    expect(lightHours(photonFlux(200), dailyLightIntegral(17.28))).toBeCloseTo(24, 9);
    expectRefusal(() => lightHours(photonFlux(200), dailyLightIntegral(17.29)), "outside-validity", "at most 17.28 at this PPFD");
    expectRefusal(() => lightHours(photonFlux(0), dailyLightIntegral(1)), "impossible", "PPFD 0 umol/m2 s cannot be");
  });

  it("0.5 umol/m2 s, a candle's light, is light too: 12 hours give 0.0216 mol/m2", () => {
    expect(lightHours(photonFlux(0.5), dailyLightIntegral(0.0216))).toBeCloseTo(12, 9);
  });

  it("names the most a day can give to the hundredth: 150.1 umol/m2 s x 86 400 s are 12.96864 mol/m2", () => {
    expectRefusal(() => lightHours(photonFlux(150.1), dailyLightIntegral(20)), "outside-validity", "at most 12.97 at this PPFD");
  });
});
