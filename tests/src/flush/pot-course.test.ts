import { describe, expect, it } from "vitest";
import { bandFor, type Ec25, ec25, fitWashout, flushStop, litres, phInAir, washingCourse } from "../../../src/index";
import { carbonateConstants } from "../../../src/flush/carbonate/constants";

const points = (rows: readonly (readonly [number, number])[]) =>
  rows.map(([poured, ec]) => ({ litresSoFar: litres(poured), ec: ec25(ec) }));

// Weighted least squares of numpy 2.4.6 (polyfit, weights EC - ECw), run once for these points.
describe("fitWashout(points, waterEc)", () => {
  it.each<[readonly (readonly [number, number])[], number, number]>([
    [[[0, 6], [4, 4.1], [8, 2.4], [12, 1.9]], 0.4, 0.11507965240686854],
    [[[0, 5], [5, 3], [9, 1.2]], 0.5, 0.13785214153079695],
  ])("of %j over water of %d is %d a litre", (rows, water, rate) => {
    expect(fitWashout(points(rows), ec25(water))).toBeCloseTo(rate, 12);
  });

  it("is none where the runoff rises, and none of one volume", () => {
    expect(fitWashout(points([[0, 2], [5, 3]]), ec25(0.4))).toBeUndefined();
    expect(fitWashout(points([[5, 3], [5, 2.8]]), ec25(0.4))).toBeUndefined();
  });
});

describe("washingCourse(ecs)", () => {
  it.each<[readonly number[], string]>([
    [[], "too few"], [[5], "too few"], [[5, 5], "too few"], [[5, 5, 5], "flat"],
    [[5, 4], "falling"], [[4, 5], "rising"], [[5, 4.95, 4.9], "flat"], [[3, 5, 5], "rising"], [[7, 5, 5], "falling"],
  ])("of %j is %s", (ecs, course) => {
    expect(washingCourse(ecs as readonly Ec25[])).toBe(course);
  });
});

// A strong acid of 0.1 meq/L that is free is pH 4 by definition; what the air's CO2 adds is below 0.01.
it("phInAir(-0.1, at 25 C) is 4.00: acid that nothing binds stays acid in the air", () => {
  expect(phInAir(-0.1, carbonateConstants())).toBeCloseTo(4, 1);
});

describe("flushStop beside a pH out of its band", () => {
  const band = bandFor("coir", "medium", "pour-through");
  it.each([[5, "below"], [7.2, "above"]])("says that pH %d is %s", (ph, side) => {
    const readings = [{ ph: 6, ec: 6, litres: undefined }, { ph, ec: 3, litres: undefined }];
    const { answer, reasons } = flushStop(readings, band);
    expect(answer).toBe("pause and measure again");
    expect(reasons[0]).toContain(` is ${side} 5.50 to 6.50`);
  });
});
