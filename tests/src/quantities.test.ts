import { describe, expect, it } from "vitest";
import { leachingFraction, leachingShare, litres } from "../../src/index";

describe("a quantity", () => {
  it("of -0, which a sheet does not know, is 0, and so is what is reckoned from it", () => {
    expect(Object.is(litres(-0), 0)).toBe(true);
    expect(Object.is(leachingFraction(litres(-0), litres(2)), 0)).toBe(true);
    expect(Object.is(leachingShare(-0), 0)).toBe(true);
  });
});
