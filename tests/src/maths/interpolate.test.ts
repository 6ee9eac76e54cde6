import { describe, expect, it } from "vitest";
import { interpolated } from "../../../src/index";

describe("interpolated(rows, values, x)", () => {
  it.each([
    [0, 10], [5, 15], [10, 20], [17.5, 35], [20, 40],
  ])("rows 0, 10, 20 with 10, 20, 40: at %d it is %d", (x, y) => {
    expect(interpolated([0, 10, 20], [10, 20, 40], x)).toBe(y);
  });

  it.each([-0.001, 20.001, NaN, Infinity, -Infinity])("there is nothing at %d, outside the rows 0 to 20", (x) => {
    expect(interpolated([0, 10, 20], [10, 20, 40], x)).toBeUndefined();
  });

  it("a table of one row holds at that row only; an empty one nowhere", () => {
    expect([interpolated([5], [7], 5), interpolated([5], [7], 4), interpolated([], [], 5)]).toEqual([7, undefined, undefined]);
  });
});
