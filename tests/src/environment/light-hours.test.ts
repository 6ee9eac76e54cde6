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
    expectRefusal(() => lightHours(photonFlux(0), dailyLightIntegral(1)), "impossible", "PPFD 0");
  });
});
