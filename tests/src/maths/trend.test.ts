import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { medianSorted } from "simple-statistics";
import { type Dated } from "../../../src/index";
import { inversionChances } from "../../../src/maths/inversion-chances";
import { inversions, type OnInversions } from "../../../src/maths/inversions";
import { daysSpanned } from "../../../src/maths/dated";
import { limitsInOrder } from "../../../src/maths/limits";
import { mannKendall } from "../../../src/maths/mann-kendall";
import { meanAndScatter } from "../../../src/maths/mean-and-scatter";
import { median } from "../../../src/maths/median";
import { normalTail } from "../../../src/maths/normal-tail";
import { theilSen } from "../../../src/maths/theil-sen";
import { expectRefusal } from "../refused";
import { nile } from "./nile";

const daily = (...values: number[]): Dated[] => values.map((value, day) => ({ day, value }));
const dated = (days: readonly number[], values: readonly number[]): Dated[] => days.map((day, at) => ({ day, value: values[at] ?? NaN }));
const years = nile.map((value, at) => ({ day: 1871 + at, value }));

describe("theilSen", () => {
  it("Nile 1871 to 1970: the flow falls by 2.6 a year, the line stands at 5886.8 in year 0 (SciPy 1.10.1 theilslopes)", () => {
    expect(nile.reduce((sum, flow) => sum + flow, 0)).toBe(91_935);
    expect(theilSen(years).slope).toBeCloseTo(-2.6, 12);
    expect(theilSen(years).at(0)).toBeCloseTo(5886.8, 9);
  });

  it.each([
    ["5, 6, 11, 8, 10 (EPA QA/G-9S-type example)", [0, 1, 2, 3, 4], [5, 6, 11, 8, 10], 1.125],
    ["uneven days", [0, 1, 2, 4, 7, 8, 10], [4.1, 3.6, 3.3, 2.7, 2, 1.9, 1.5], -0.26],
    ["9.9 among falling values around 2.5", [0, 1, 2, 3, 4, 5, 6, 7], [3.2, 3, 2.8, 2.7, 9.9, 2.3, 2.1, 1.9], -0.18333333333333335],
    ["doubled dates", [0, 0, 1, 1, 2, 3, 3, 5, 6, 8], [2.1, 2.3, 2.2, 2.6, 2.5, 2.9, 2.4, 3.1, 3, 3.6], 0.16],
  ])("%s: the slope SciPy 1.10.1 finds", (_, days, values, slope) => {
    expect(theilSen(dated(days, values)).slope).toBeCloseTo(slope, 12);
  });

  it("an even number of pairs takes the mean of the middle two: slopes 1, 1, 2, 2, 3, 3 give 2; 1, 2, 3 of 1, 3, 4 give 1.5", () => {
    expect(theilSen(daily(0, 1, 4)).slope).toBe(2);
    expect(theilSen(dated([0, 0, 1], [0, 1, 3])).slope).toBe(2.5);
  });

  it.each([
    ["noise", (x: number, at: number) => x * 3 + at / 100],
    ["readings at one decimal, thousands of equal slopes", (x: number) => Math.round(x * 5) / 10],
    ["all equal", () => 5.8],
    ["a step", (x: number, at: number) => (at > 400 ? 4 : 2) + x / 100],
  ])("%s, 700 readings: the median of all 244,650 pair slopes (simple-statistics medianSorted)", (_, value) => {
    const readings = pseudoRandom(700).map((x, at) => ({ day: 46_000 + at + (at % 7) / 10, value: value(x, at) }));
    expect(theilSen(readings).slope).toBeCloseTo(allPairs(readings), 13);
  });

  it.each<[string, (x: number, at: number) => Dated]>([
    ["a pen's tenths every five minutes", (x, at) => ({ day: 46_000 + at / 288, value: Math.round(60 + 8 * x + at / 400) / 10 })],
    ["a pen's tenths without a trend", (x, at) => ({ day: 46_000 + at / 288, value: Math.round(60 + 8 * x) / 10 })],
    ["ten ppm on the 700 scale, at any moment", (x, at) => ({ day: 46_000 + at / 288 + x / 1e4, value: (10 * Math.round(60 + 8 * x)) / 700 })],
    ["24 readings a day under one date", (x, at) => ({ day: 46_000 + Math.floor(at / 24), value: Math.round(60 + 8 * x + at / 400) / 10 })],
    ["no two alike", (x, at) => ({ day: 46_000 + at + x / 2, value: 2 + x + at / 1000 })],
  ])("%s, 2,000 readings: the median of all 2 million pair slopes, to 12 digits", (_, reading) => {
    const readings = pseudoRandom(2000).map(reading);
    expect(theilSen(readings).slope).toBeCloseTo(allPairs(readings), 12);
  });

  it.each([["1/3 a day", 1 / 3], ["the square root of 2 a day", Math.SQRT2], ["falling by pi a day", -Math.PI]])(
    "a straight line, %s, whose 320,400 slopes differ in their last digits only, at any moments",
    (_, slope) => {
      const days = pseudoRandom(801).map((x, at) => 46_000 + at + x / 2);
      expect(theilSen(dated(days, days.map((day) => 3 + slope * (day - 46_000)))).slope).toBeCloseTo(slope, 9);
    },
  );

  it("any readings, days doubled or not: the median of all pair slopes", () => {
    const reading = fc.record({ day: fc.integer({ min: 0, max: 40 }), value: fc.integer({ min: 0, max: 30 }).map((tenths) => tenths / 10) });
    fc.assert(
      fc.property(fc.array(reading, { minLength: 2, maxLength: 80 }), (readings) => {
        fc.pre(new Set(readings.map(({ day }) => day)).size > 1);
        expect(theilSen(readings).slope).toBeCloseTo(allPairs(readings), 12);
      }),
    );
  });

  it("refuses one day, no reading, and NaN", () => {
    expectRefusal(() => theilSen([]), "not-enough-readings", "days with a reading: 0 readings are too few: at least 2 needed");
    expectRefusal(() => theilSen(dated([3, 3], [1, 2])), "not-enough-readings", "days with a reading: 1 reading is too few: at least 2 needed");
    expectRefusal(() => theilSen(daily(1, NaN, 3)), "not-a-number", 'a reading "NaN on day 1" is not a number');
    expectRefusal(() => theilSen(dated([1, Infinity], [1, 2])), "not-a-number", 'a reading "2 on day Infinity" is not a number');
  });
});

function allPairs(readings: readonly Dated[]): number {
  const slopes: number[] = [];
  readings.forEach((a, at) => {
    for (const b of readings.slice(at + 1)) if (a.day !== b.day) slopes.push((b.value - a.value) / (b.day - a.day));
  });
  return medianSorted(Array.from(Float64Array.from(slopes).sort()));
}

/** The minimal standard generator of Park and Miller, so that a run can be repeated. */
function pseudoRandom(count: number): number[] {
  let state = 42;
  return Array.from({ length: count }, () => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647);
}

describe("mannKendall", () => {
  it("Nile: S = -1387 and z = -4.1281, chance 3.658e-5 two-sided (SciPy)", () => {
    expect(mannKendall(years).s).toBe(-1387);
    expect(mannKendall(years).twoSided).toBeCloseTo(3.658e-5, 8);
  });

  it("5, 6, 11, 8, 10: S = 6, chance 14 of 120 orders", () => {
    expect(mannKendall(daily(5, 6, 11, 8, 10))).toEqual({ s: 6, oneSided: expect.closeTo(14 / 120, 14) as number, twoSided: expect.closeTo(28 / 120, 14) as number });
  });

  // Exact one-sided P(S >= s): Kendall 1975, Appendix table 1 (from memory); each equals a count of orders over n!.
  it.each([
    [4, 4, 0.1667], [4, 6, 0.0417], [5, 6, 0.1167], [5, 8, 0.0417], [5, 10, 0.0083], [6, 9, 0.0681], [6, 11, 0.0278], [6, 13, 0.0083],
    [6, 15, 0.0014], [7, 11, 0.0681], [7, 13, 0.0345], [7, 15, 0.0151], [7, 17, 0.0054], [8, 12, 0.0894], [8, 14, 0.0543], [8, 16, 0.0305],
    [8, 18, 0.0156], [9, 16, 0.0597], [9, 18, 0.0376], [9, 20, 0.0223], [10, 19, 0.0542], [10, 21, 0.0363], [10, 23, 0.0233], [10, 25, 0.0143],
  ])("%d readings, S >= %d: chance %d", (count, s, chance) => {
    const chances = inversionChances(count, []);
    const most = ((count * (count - 1)) / 2 - s) / 2;
    expect(chances.slice(0, most + 1).reduce((sum, each) => sum + each, 0)).toBeCloseTo(chance, 4);
  });

  // Counted over all orders in Python 3.11 itertools.permutations.
  it.each<[string, Dated[], number, number]>([
    ["1, 1, 2, 2, 3, 3", daily(1, 1, 2, 2, 3, 3), 12, 8 / 720],
    ["1, 2, 2, 3, 3, 3, 4", daily(1, 2, 2, 3, 3, 3, 4), 17, 12 / 5040],
    ["4, 3, 3, 2, 2, 1", daily(4, 3, 3, 2, 2, 1), -13, 4 / 720],
    ["days 0, 0, 1, 2, 2, 3 rising", dated([0, 0, 1, 2, 2, 3], [1, 2, 3, 4, 5, 6]), 13, 4 / 720],
    ["8 readings, ties in days and values", dated([0, 0, 1, 2, 3, 4, 5, 6], [1, 2, 2, 3, 4, 5, 7, 6]), 24, 24 / 40_320],
    ["days 0, 1, 1, 2, 3, 3 and ties in the values", dated([0, 1, 1, 2, 3, 3], [1, 2, 2, 3, 4, 4]), 13, 4 / 720],
  ])("ties, exactly: %s", (_, readings, s, chance) => {
    expect(mannKendall(readings).s).toBe(s);
    expect(mannKendall(readings).oneSided).toBeCloseTo(chance, 14);
  });

  it("50 readings are still exact, S = 197 two-sided 0.101294 (SciPy 1.10.1); 60 take the normal curve, S = 370 one-sided 0.0092999", () => {
    const saw = (count: number): Dated[] => Array.from({ length: count }, (_, day) => ({ day, value: ((day * 37) % 61) + day * 0.2 }));
    expect(mannKendall(saw(50)).s).toBe(197);
    expect(mannKendall(saw(50)).twoSided).toBeCloseTo(0.10129425855783196, 12);
    expect(mannKendall(saw(60)).s).toBe(370);
    expect(mannKendall(saw(60)).oneSided).toBeCloseTo(0.009299918324297045, 12);
  });

  it("12 readings with ties in days and in values: S = 58, chance 3.195e-5 (variance as SciPy 1.10.1, continuity added)", () => {
    const readings = dated([0, 0, 1, 1, 2, 3, 4, 4, 5, 6, 7, 8], [1, 2, 2, 3, 3, 3, 4, 4, 5, 6, 6, 7]);
    expect(mannKendall(readings).s).toBe(58);
    expect(mannKendall(readings).oneSided).toBeCloseTo(3.194928004428385e-5, 12);
  });

  // Shuffled values reach the greatest S only in the orders that keep equal ones together: 2^5 of 10!, in days as in values.
  it("10 readings with ties in days only, or in values only, are still counted exactly: S = 40, 1 of 113 400", () => {
    const [twice, once] = [[0, 0, 1, 1, 2, 2, 3, 3, 4, 4], [0, 1, 2, 3, 4, 5, 6, 7, 8, 9]];
    for (const readings of [dated(twice, once), dated(once, twice)]) {
      expect(mannKendall(readings).s).toBe(40);
      expect(mannKendall(readings).oneSided).toBeCloseTo(1 / 113_400, 14);
    }
  });

  // The variance of S over all 30,240 different orders of the values, counted in Python 3.11: 83.1190476; the tail beyond 28 / sqrt(var) by erfc.
  it("9 readings with three alike both in days and in values: S = 29, chance 0.0010660102", () => {
    const readings = dated([0, 0, 0, 1, 1, 2, 3, 4, 5], [1, 1, 1, 2, 3, 3, 4, 6, 5]);
    expect(mannKendall(readings).s).toBe(29);
    expect(mannKendall(readings).oneSided).toBeCloseTo(0.0010660102128308587, 12);
  });

  it("3 readings in a row reach 1/6 at best, equal readings 1, no reading 1", () => {
    expect(mannKendall(daily(1, 2, 3)).oneSided).toBeCloseTo(1 / 6, 14);
    expect(mannKendall(daily(2, 2, 2, 2))).toEqual({ s: 0, oneSided: 1, twoSided: 1 });
    expect(mannKendall([]).oneSided).toBe(1);
    const twice = [0, 0, 1, 1, 2, 2, 3, 3, 4, 4];
    expect(mannKendall(dated(twice, twice.map(() => 5)))).toEqual({ s: 0, oneSided: 1, twoSided: 1 });
  });

  it("S is the sum over all pairs, whatever the readings", () => {
    const reading = fc.record({ day: fc.integer({ min: 0, max: 9 }), value: fc.integer({ min: 0, max: 9 }) });
    fc.assert(
      fc.property(fc.array(reading, { maxLength: 40 }), (readings) => {
        const s = readings.flatMap((a, at) => readings.slice(at + 1).map((b) => Math.sign(b.value - a.value) * Math.sign(b.day - a.day)));
        expect(mannKendall(readings).s).toBe(s.reduce((sum, each) => sum + each, 0));
      }),
    );
  });
});

describe("the small parts", () => {
  it("inversions: 2, 3, 1 has 2; a falling row of 6 has 15; equal values none; each pair is told once", () => {
    const told: [number, number][] = [];
    const tell: OnInversions = (run, start, end, after) => { for (const place of run.slice(start, end)) told.push([place, after]); };
    expect(inversions(Float64Array.of(2, 3, 1), tell)).toEqual({ count: 2, order: Int32Array.of(2, 0, 1) });
    expect(told.sort()).toEqual([[0, 2], [1, 2]]);
    expect(inversions(Float64Array.of(6, 5, 4, 3, 2, 1)).count).toBe(15);
    expect(inversions(Float64Array.of(4, 4, 4)).count).toBe(0);
  });

  it("median: simple-statistics agrees on any values; none and NaN are refused", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -99, max: 99 }), { minLength: 1 }), (values) => {
        expect(median(values)).toBe(medianSorted([...values].sort((a, b) => a - b)));
      }),
    );
    expectRefusal(() => median([]), "not-enough-readings", "median: 0 readings are too few: at least 1 needed");
    expectRefusal(() => median([1, NaN]), "not-a-number", "one of the values");
  });

  it.each([[0, 0.5], [0.5, 0.3085375387259869], [1, 0.15865525393145707], [1.959963984540054, 0.025], [3, 0.0013498980316300933], [4.1281, 1.8288652430992703e-5], [6, 9.865876450376946e-10]])(
    "normalTail: beyond %d lie %d (SciPy 1.10.1 norm.sf)",
    (z, chance) => {
      expect(normalTail(z) / chance).toBeCloseTo(1, 11);
      expect(normalTail(-z)).toBeCloseTo(1 - chance, 12);
    },
  );

  it("normalTail: far beyond all values lie, or none", () => {
    expect([normalTail(-40), normalTail(-1000), normalTail(1000)]).toEqual([1, 1, 0]);
  });

  // A textbook sample: 2, 4, 4, 4, 5, 5, 7, 9 has the mean 5 and the sum of squares 32, over 7.
  it("meanAndScatter of 2, 4, 4, 4, 5, 5, 7, 9 is 5 and the square root of 32 / 7; one value has none", () => {
    const { mean, scatter } = meanAndScatter([2, 4, 4, 4, 5, 5, 7, 9]);
    expect([mean, scatter]).toEqual([5, expect.closeTo(Math.sqrt(32 / 7), 12)]);
    expect(meanAndScatter([1, 3])).toEqual({ mean: 2, scatter: Math.SQRT2 });
    expectRefusal(() => meanAndScatter([4]), "not-enough-readings", "scatter: 1 reading is too few: at least 2 needed");
  });

  it("limitsInOrder: a band has a low limit below its high one; the same figure twice, or none, is no band", () => {
    expect(() => { limitsInOrder(2, 2.1); }).not.toThrow();
    for (const low of [3, 4, NaN]) expectRefusal(() => { limitsInOrder(low, 3); }, "order", `low limit ${low} is out of order: it must be below the high limit 3`);
  });

  it("daysSpanned: from the first reading to the last", () => {
    expect([daysSpanned(daily(5, 6, 7)), daysSpanned(dated([46_000, 46_010.5], [1, 2])), daysSpanned(daily(5))]).toEqual([2, 10.5, 0]);
  });
});
