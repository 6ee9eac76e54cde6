import { describe, expect, it } from "vitest";
import { isAbove, isBelow, standing } from "../../../src/maths/compare";

// Half a step of the meter is no difference to it, more is: figures that a machine holds exactly.
describe("compared at the meter's resolution", () => {
  it("above 10 by half a step of 1 is not above it, by 0.75 it is; 0.3 of a step is not", () => {
    expect([10.5, 10.75, 10.3, 10, 9].map((value) => isAbove(value, 10, 1))).toEqual([false, true, false, false, false]);
  });

  it("below 10 by half a step of 1 is not below it, by 0.75 it is", () => {
    expect([9.5, 9.25, 9.7, 10, 11].map((value) => isBelow(value, 10, 1))).toEqual([false, true, false, false, false]);
  });

  it("2.4 / 1.6, which the machine writes as 1.4999999999999998, is 1.5", () => {
    expect([isAbove(2.4 / 1.6, 1.5, 0.01), isBelow(2.4 / 1.6, 1.5, 0.01)]).toEqual([false, false]);
  });

  it("both limits and half a step beyond them are inside", () => {
    expect([1.25, 1.5, 2, 4, 4.5, 4.75].map((value) => standing(value, [2, 4], 1))).toEqual(["low", "inside", "inside", "inside", "inside", "high"]);
  });

  it("no number is neither above nor below", () => {
    expect([isAbove(NaN, 10, 1), isBelow(NaN, 10, 1)]).toEqual([false, false]);
  });
});
