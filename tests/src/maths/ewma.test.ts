import { describe, expect, it } from "vitest";
import { ewma } from "../../../src/maths/ewma";

describe("ewma", () => {
  it("NIST/SEMATECH 6.3.2.4: weight 0.3 from 50 over 20 values, to the two decimals printed; none passes 47.4115 to 52.5884", () => {
    const values = [52, 47, 53, 49.3, 50.1, 47, 51, 50.1, 51.2, 50.5, 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    const printed = [
      50.6, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33, 50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99,
    ];
    const levels = ewma(values, 50, 0.3);
    expect(levels).toHaveLength(printed.length);
    levels.forEach((level, at) => {
      expect(Math.abs(level - (printed[at] ?? NaN))).toBeLessThanOrEqual(0.0051);
      expect(level > 47.4115 && level < 52.5884).toBe(true);
    });
  });

  it("a weight of 1 follows every value; of values at the start it never leaves it", () => {
    expect(ewma([3, 9, 4], 5, 1)).toEqual([3, 9, 4]);
    expect(ewma([5, 5, 5], 5, 0.3)).toEqual([5, 5, 5]);
  });
});
