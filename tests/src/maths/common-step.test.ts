import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { commonStep } from "../../../src/maths/common-step";

describe("commonStep", () => {
  it.each([
    ["a pen that shows one decimal", [5.6, 5.7, 6.1, 6.4], 0.1],
    ["steps of 2 and 3 tenths only: their common step is 1 tenth", [1, 1.2, 1.5, 1.8], 0.1],
    ["10 ppm on the 700 scale, in mS/cm", [100, 110, 140, 200].map((ppm) => ppm / 700), 10 / 700],
    ["five minutes, as a sheet writes them to ten decimals", [46_023, 46_023.0034722222, 46_023.0069444444, 46_123.4548611111], 1 / 288],
    ["whole days with a long pause", [0, 1, 400, 401], 1],
    ["a thousandth of a day, far from day 0", [46_023, 46_023.001, 46_023.003], 0.001],
    ["3 and 5 thousandths: 1 thousandth", [0, 0.003, 0.005], 0.001],
    ["67,108,864 steps, of which two counts still multiply exactly", [0, 1, 2 ** 26], 1],
  ])("%s", (_, values, step) => {
    expect((commonStep(Float64Array.from(values)) ?? NaN) / step).toBeCloseTo(1, 6);
  });

  it.each([
    ["equal values", [3, 3, 3]],
    ["one value", [3]],
    ["no value", []],
    ["values without a common measure", [0, 1, Math.SQRT2, Math.PI]],
    ["a millionth of a step off is on it, a thousandth is not", [0, 1, 2.001, 3]],
  ])("%s: none as coarse as that, or the thousandth itself", (_, values) => {
    expect(commonStep(Float64Array.from(values)) ?? 0.001).toBeLessThanOrEqual(0.001 + 1e-9);
  });

  it("more steps than that are none: two counts of them no longer multiply exactly", () => {
    expect(commonStep(Float64Array.of(0, 1, 2 ** 26 + 1))).toBeUndefined();
  });

  it("any whole numbers: their greatest common divisor, counted from the first", () => {
    const gcd = (a: number, b: number): number => (b === 0 ? a : gcd(b, a % b));
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 500 }), { minLength: 1, maxLength: 30 }), (gaps) => {
        const values = gaps.reduce((so, gap) => [...so, (so.at(-1) ?? 0) + gap], [0]);
        expect(commonStep(Float64Array.from(values))).toBeCloseTo(gaps.reduce(gcd, 0), 9);
      }),
    );
  });
});
