import { describe, expect, it } from "vitest";
import { inUnitOfLimits, meterStep, meterTolerance } from "../../../src/readings/series-unit";
import { expectRefusal } from "../refused";

describe("a series without its unit", () => {
  it("is pH or mS/cm up to 200 and steps by 0.01; above it is uS/cm or ppm and steps by 10", () => {
    expect([6.2, 200, 201, 2400].map(meterStep)).toEqual([0.01, 0.01, 10, 10]);
  });

  it("tells two readings apart beyond 2 %, at least 0.05: 0.05 at 2, 0.12 at 6; 50 and 120 in uS/cm", () => {
    expect([2, 6, 2000, 6000].map((figure) => Number(meterTolerance(figure).toFixed(9)))).toEqual([0.05, 0.12, 50, 120]);
  });

  it("refuses 2400 beside limits of 2 to 3.5, and 2.4 beside 2000 to 3500; 0.02 beside 2 is a weak runoff", () => {
    expectRefusal(() => { inUnitOfLimits([2.4, 2400], 2, 3.5); }, "wrong-unit", "the unit of its limits, 2 to 3.5");
    expectRefusal(() => { inUnitOfLimits([2.4], 2000, 3500); }, "wrong-unit", "the unit of its limits");
    expect(() => { inUnitOfLimits([0.02, 3.5, 340], 2, 3.5); }).not.toThrow();
  });
});
