import { describe, expect, it } from "vitest";
import {
  ec25, type Ec25, type FlushReading, fitWashout, flushLeft, flushPlan, flushVolume, leachNeed, litres, type Medium, type Share, washingCourse, washoutEc, washoutLitres,
} from "../../../src/index";

// One container capacity of water, mixing efficiency 1, 0.7, 0.5: what is left of the excess is exp(-f L / CC), plain arithmetic.
describe("washoutEc", () => {
  it.each([
    [0.25, 0.7788, 0.8395, 0.8825],
    [0.5, 0.6065, 0.7047, 0.7788],
    [1, 0.3679, 0.4966, 0.6065],
    [1.5, 0.2231, 0.3499, 0.4724],
    [2, 0.1353, 0.2466, 0.3679],
    [3, 0.0498, 0.1225, 0.2231],
  ])("after %d capacities %d, %d, %d of the excess is left at mixing 1, 0.7, 0.5 (computed)", (capacities, ...left) => {
    const shares = [1, 0.7, 0.5].map((ratePerLitre) => washoutEc(ec25(1.4), ec25(0.4), { litres: litres(capacities), ratePerLitre }) - 0.4);
    shares.forEach((share, index) => {
      expect(share).toBeCloseTo(left[index] ?? NaN, 4);
    });
  });

  it.each([
    [0.5, 0.693],
    [0.2, 1.609],
    [0.1, 2.303],
    [0.05, 2.996],
  ])("%d of the excess is left after %d capacities of a fully mixed pot (computed)", (left, capacities) => {
    expect(washoutLitres(ec25(1.5), ec25(0.5 + left), { waterEc: ec25(0.5), ratePerLitre: 1 })).toBeCloseTo(capacities, 3);
  });
});

const pot = (medium: Medium, containerLitres = 10, waterEc = 0.4) => ({ containerLitres: litres(containerLitres), waterEc: ec25(waterEc), medium });

describe("flushVolume", () => {
  // by hand: ln(5.6 / 2.6) x held / mixing x 10 L; shares held and mixing from the table of judgement
  it.each([
    ["coir", 7.125],
    ["bark", 6.394],
    ["mineral wool", 7.221],
    ["inert", 3.836],
    ["soil", 6.713],
  ] as const)("10 L of %s from 6 to 3 with water of 0.4 wants %d L (hand arithmetic)", (medium, expected) => {
    expect(flushVolume(ec25(6), ec25(3), pot(medium)).litres).toBeCloseTo(expected, 2);
  });

  it("wants 0 L when the runoff is at the target, or below", () => {
    expect(flushVolume(ec25(3), ec25(3), pot("coir")).litres).toBe(0);
    expect(flushVolume(ec25(2), ec25(3), pot("coir")).litres).toBe(0);
  });

  it("10 L of soil from 9 to 1 ends at its limit of 7 L, at 4.26 mS/cm: 0.4 + 8.6 exp(-0.4 x 7 / 3.5)", () => {
    const { litres: poured, capped, neededLitres, expectedEc, reasons } = flushVolume(ec25(9), ec25(1), pot("soil"));
    expect([poured, capped]).toEqual([7, true]);
    expect(neededLitres).toBeCloseTo(23.3, 1);
    expect(expectedEc).toBeCloseTo(0.4 + 8.6 * Math.exp(-0.8), 9);
    expect(reasons.join("; ")).toContain("ends at the over-flush limit of 7 L: the runoff is expected at 4.26 mS/cm, not at 1.00 mS/cm");
  });

  it("a pot of 2500 L is asked about: mL?", () => {
    expect(() => flushVolume(ec25(6), ec25(3), pot("coir", 2500))).toThrow(/divide mL by 1000/);
  });

  it.each([0.4, 0.3, 0.404])("refuses a target of %d with water of 0.4: washing cannot go below the water", (target) => {
    expect(() => flushVolume(ec25(6), ec25(target), pot("coir"))).toThrow(/target EC .* above the water's own 0.40 mS\/cm/);
  });
});

describe("what is not a number", () => {
  it.each([
    ["runoff EC", NaN, 0.1],
    ["rate", 6, NaN],
    ["rate of nothing", 6, 0],
  ])("is refused: %s", (_title, start, ratePerLitre) => {
    expect(() => washoutLitres(start as Ec25, ec25(3), { waterEc: ec25(0.4), ratePerLitre })).toThrow(/above 0/);
  });

  it("is no course: an EC that is not a number makes too few readings", () => {
    expect(washingCourse([4, NaN, 4] as Ec25[])).toBe("too few");
  });
});

describe("flushPlan", () => {
  it("10 L of coir from 6 to 3: 7.13 L in 5 portions of at most 1.625 L, ending at 3", () => {
    const plan = flushPlan(ec25(6), ec25(3), pot("coir"));
    expect(plan.portions.map(({ portion }) => portion)).toEqual([1, 2, 3, 4, 5]);
    expect(plan.portions.at(-1)?.litresSoFar).toBeCloseTo(7.125, 2);
    expect(plan.portions.at(-1)?.expectedEc).toBeCloseTo(3, 9);
    expect(plan.capped).toBe(false);
  });

  it("ends at the over-flush limit: 10 L of soil from 9 to 1 stops at 7 L of the 23 L the model asks for", () => {
    const plan = flushPlan(ec25(9), ec25(1), pot("soil"));
    expect(plan).toMatchObject({ capped: true });
    expect(plan.limitLitres).toBeCloseTo(7, 9);
    expect(plan.neededLitres).toBeCloseTo((Math.log(8.6 / 0.6) * 3.5) / 0.4, 9);
    expect(plan.portions.at(-1)?.litresSoFar).toBeCloseTo(7, 9);
  });

  it("is empty when the runoff is at the target", () => {
    expect(flushPlan(ec25(3), ec25(3), pot("coir")).portions).toEqual([]);
  });

  it.each([0, 0.04, 1.5, NaN])("refuses portions of %d container capacities", (share) => {
    expect(() => flushPlan(ec25(6), ec25(3), { ...pot("coir"), portionShare: share as Share })).toThrow(/portion share/);
  });
});

const flush = (...rows: (readonly [ec: number | undefined, poured?: number])[]): FlushReading[] =>
  rows.map(([ec, poured]) => ({ ph: undefined, ec, litres: poured === undefined ? undefined : litres(poured) }));

describe("flushLeft", () => {
  it("8.4, 4.4, 2.4 by portions of 2 L in water of 0.4 halves the excess each time: 2 L more to 1.4 (hand arithmetic)", () => {
    expect(flushLeft(flush([8.4], [4.4, 2], [2.4, 2]), ec25(1.4), ec25(0.4)).litres).toBeCloseTo(2, 9);
  });

  it("is 0 when the last reading is at the target, even with one reading", () => {
    expect(flushLeft(flush([3]), ec25(3), ec25(0.4)).litres).toBe(0);
  });

  it("a portion whose reading is missing still counts as water: 2 L + 2 L between 8.4 and 2.4", () => {
    expect(flushLeft(flush([16.4], [8.4, 2], [undefined, 2], [2.4, 2]), ec25(1.4), ec25(0.4)).litres).toBeCloseTo(2, 9);
  });

  it.each([
    ["two readings", flush([6], [4, 2]), "runoff EC read 2 times is too few"],
    ["the last reading missing", flush([6], [5, 2], [4.5, 2], [undefined, 2]), "runoff EC is missing"],
    ["a curve that has flattened", flush([6], [4.1, 2], [4.1, 2], [4.1, 2]), "more water no longer helps"],
    ["a last portion that took off 0.2 where the fit expects 1.7", flush([12.4], [6.4, 2], [4.1, 2], [3.9, 2]), "flattening: the last portion took off 0.20"],
    ["a rise", flush([6], [4, 2], [5, 2]), "rising"],
    ["no litres written", flush([6], [5], [4]), "no litres poured between the readings"],
    ["a last reading in uS/cm", flush([6], [5, 2], [4500, 2]), "divide uS/cm by 1000"],
  ])("cannot say with %s", (_title, readings, says) => {
    const left = flushLeft(readings, ec25(3), ec25(0.4));
    expect(left.litres).toBe("cannot say");
    expect(left.reasons.join("; ")).toContain(says);
  });

  it("refuses a target at the water's own EC", () => {
    expect(() => flushLeft(flush([6], [5, 2], [4, 2]), ec25(0.4), ec25(0.4))).toThrow(/cannot go below the water/);
  });
});

describe("fitWashout", () => {
  it("draws no line through readings at one volume, or through a rise", () => {
    expect(fitWashout([{ litresSoFar: litres(2), ec: ec25(6) }, { litresSoFar: litres(2), ec: ec25(5) }], ec25(0.4))).toBeUndefined();
    expect(fitWashout([{ litresSoFar: litres(0), ec: ec25(5) }, { litresSoFar: litres(2), ec: ec25(6) }], ec25(0.4))).toBeUndefined();
    expect(fitWashout([], ec25(0.4))).toBeUndefined();
  });

  it("follows the steep readings rather than one doubtful reading near the water's EC", () => {
    const exact = [0, 2, 4, 6].map((soFar) => ({ litresSoFar: litres(soFar), ec: washoutEc(ec25(8), ec25(0.4), { litres: litres(soFar), ratePerLitre: 0.4 }) }));
    const doubtful = { litresSoFar: litres(12), ec: ec25(0.41) };
    expect(fitWashout([...exact, doubtful], ec25(0.4))).toBeCloseTo(0.4, 2);
  });
});

describe("leachNeed", () => {
  it.each([
    [4, 1.5],
    [2.5, 1],
    [3.75, 1.5],
  ])("refuses input EC %d against a tolerated ECe of %d: no share below 1 is enough", (input, tolerated) => {
    expect(() => leachNeed(ec25(input), ec25(tolerated))).toThrow(/feed weaker/);
  });
});
