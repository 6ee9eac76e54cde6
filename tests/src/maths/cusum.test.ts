import { describe, expect, it } from "vitest";
import { cusum } from "../../../src/maths/cusum";

describe("cusum", () => {
  it("NIST/SEMATECH 6.3.2.3: target 325, k 0.3175; the upper sum passes h 4.1959 first at group 14, the lower never", () => {
    const means = [
      324.925, 324.675, 324.725, 324.35, 325.35, 325.225, 324.125, 324.525, 325.225, 324.6, 324.625, 325.15, 328.325, 327.25, 327.825,
      328.5, 326.675, 327.775, 326.875, 328.35,
    ];
    const high = [0, 0, 0, 0, 0.0325, 0, 0, 0, 0, 0, 0, 0, 3.0075, 4.94, 7.4475, 10.63, 11.9875, 14.445, 16.0025, 19.035];
    const low = [0, 0.0075, 0, 0.3325, 0, 0, 0.5575, 0.715, 0.1725, 0.255, 0.3125, 0, 0, 0, 0, 0, 0, 0, 0, 0];
    const steps = cusum(means, 325, 0.3175);
    steps.forEach((step, at) => {
      expect(step.high).toBeCloseTo(high[at] ?? NaN, 9);
      expect(step.low).toBeCloseTo(low[at] ?? NaN, 9);
    });
    expect(steps.findIndex((step) => step.high > 4.1959)).toBe(13);
  });

  it("Montgomery and Runger, target 99, K 1: upper 2, 0, 0, 0, 2, 0.5, lower 0, 3.2, 2.9, 2.5, 0", () => {
    const steps = cusum([102, 94.8, 98.3, 98.4, 102, 98.5, 99, 97.7, 100, 98.1], 99, 1);
    const high = [2, 0, 0, 0, 2, 0.5, 0, 0, 0, 0];
    const low = [0, 3.2, 2.9, 2.5, 0, 0, 0, 0.3, 0, 0];
    steps.forEach((step, at) => {
      expect(step.high).toBeCloseTo(high[at] ?? NaN, 9);
      expect(step.low).toBeCloseTo(low[at] ?? NaN, 9);
    });
  });
});
