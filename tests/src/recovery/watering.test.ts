import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leachingFraction, leachingShare, litres, uptake, watering } from "../../../src/index";
import { expectRefusal } from "../refused";

describe("watering", () => {
  it("1.2 L a day in three waterings of which a fifth drains is 0.5 L each", () => {
    expect(watering(litres(1.2), leachingShare(0.2), 3)).toBeCloseTo(0.5, 12);
  });

  it("what it pours gives back the uptake and the leaching fraction it was asked for", () => {
    const some = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(fc.property(some, fc.double({ min: 0, max: 0.6, noNaN: true }), (taken, share) => {
      const poured = watering(litres(taken), leachingShare(share));
      const drained = litres(poured * share);
      return Math.abs(uptake(poured, drained) - taken) < 1e-9 * taken && Math.abs(leachingFraction(drained, poured) - share) < 1e-12;
    }));
  });

  it("up to 0.6 and 100 waterings still belong to it", () => {
    expect(watering(litres(1), leachingShare(0.6))).toBeCloseTo(2.5, 12);
    expect(watering(litres(1), leachingShare(0), 100)).toBeCloseTo(0.01, 12);
    expect(watering(litres(1), leachingShare(0), 0.5)).toBe(2);
  });

  it("refuses a fraction above 0.6, no waterings, more than 100, and NaN", () => {
    expectRefusal(() => watering(litres(1), leachingShare(0.61)), "outside-validity", "0 to 0.6");
    for (const waterings of [0, -1, 101, NaN]) {
      expectRefusal(() => watering(litres(1), leachingShare(0.2), waterings), "impossible", "waterings a day");
    }
  });
});

describe("uptake", () => {
  it("a day unless given: 1 L of 1.5 is 1 L a day; of a quarter of an hour 96 times, of a leap year a 366th", () => {
    expect(uptake(litres(1.5), litres(0.5))).toBe(1);
    expect(uptake(litres(1.5), litres(0.5), 0.25)).toBe(96);
    expect(uptake(litres(1.5), litres(0.5), 8784)).toBeCloseTo(1 / 366, 12);
  });

  it("refuses less and more than that, in hours", () => {
    for (const hours of [0.24, 8785, NaN]) {
      expectRefusal(() => uptake(litres(1.5), litres(0.5), hours), "impossible", `time between irrigations ${hours} h cannot be: it must be 0.25 to 8784 h`);
    }
  });
});
