import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { slopesAround } from "../../../src/maths/pair-slopes";
import { aboveAll, belowAll, edgesAt, pairsOfDifferentDays, type SlopePoints } from "../../../src/maths/slope-edge";

/** Readings in order of day and value, as both ask for. */
const pointsOf = (readings: readonly (readonly [day: number, value: number])[]): SlopePoints => {
  const ordered = [...readings].sort(([day, value], [other, beside]) => day - other || value - beside);
  return { days: Float64Array.from(ordered, ([day]) => day), values: Float64Array.from(ordered, ([, value]) => value) };
};

/** The slopes of all pairs on different days, rising, by looking at every pair. */
function allSlopes({ days, values }: SlopePoints): number[] {
  const slopes: number[] = [];
  for (const [later, day] of days.entries()) {
    for (let earlier = 0; earlier < later; earlier++) {
      const run = day - (days[earlier] ?? NaN);
      if (run > 0) slopes.push(((values[later] ?? NaN) - (values[earlier] ?? NaN)) / run);
    }
  }
  return slopes.sort((a, b) => a - b);
}

const few = fc.array(fc.tuple(fc.integer({ min: 0, max: 6 }), fc.integer({ min: 0, max: 4 })), { minLength: 2, maxLength: 14 }).map(pointsOf);

describe("edgesAt(points, slope)", () => {
  it("3 readings on a line: none of its slopes below it, all three at it, the readings turned round above", () => {
    const points = pointsOf([[0, 0], [1, 1], [2, 2]]);
    expect(edgesAt(points, { rise: 1, run: 1 })).toEqual([
      { rank: 0, order: Int32Array.of(0, 1, 2) },
      { rank: 3, order: Int32Array.of(2, 1, 0) },
    ]);
    expect(edgesAt(points, { rise: 2, run: 1 }).map(({ rank }) => rank)).toEqual([3, 3]);
  });

  it("counts the slopes below any slope, and those up to it", () => {
    fc.assert(
      fc.property(few, fc.integer({ min: -4, max: 4 }), fc.integer({ min: 1, max: 6 }), (points, rise, run) => {
        const slopes = allSlopes(points);
        const counts = [slopes.filter((slope) => slope < rise / run).length, slopes.filter((slope) => slope <= rise / run).length];
        expect(edgesAt(points, { rise, run }).map(({ rank }) => rank)).toEqual(counts);
      }),
    );
  });

  it("below all slopes lies none, above all lies each", () => {
    fc.assert(
      fc.property(few, (points) => {
        const { length } = allSlopes(points);
        expect([belowAll(points).rank, aboveAll(points).rank, pairsOfDifferentDays(points.days)]).toEqual([0, length, length]);
      }),
    );
  });
});

describe("slopesAround(points, rank)", () => {
  const agrees = (points: SlopePoints, rank: number, slopes: readonly number[]): void => {
    const { from, upTo, slopeAt } = slopesAround(points, rank);
    expect(from).toBeLessThanOrEqual(rank);
    expect(upTo).toBeGreaterThan(rank);
    const { rise, run } = slopeAt(rank);
    expect(rise / run).toBe(slopes[rank]);
  };

  it("of few readings is the slope of that rank among all of them", () => {
    fc.assert(
      fc.property(few, fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }), (points, share) => {
        const slopes = allSlopes(points);
        fc.pre(slopes.length > 0);
        agrees(points, Math.floor(share * slopes.length), slopes);
      }),
    );
  });

  /** The minimal standard generator of Park and Miller. */
  function* drawn(): Generator<number, never> {
    for (let state = 42; ; ) yield (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  }
  const draw = drawn();
  const manyOf = (value: (x: number, at: number) => number) => pointsOf(Array.from({ length: 400 }, (_, at) => [at, value(draw.next().value, at)] as const));

  it.each([
    ["no two alike", manyOf((x, at) => x + at / 100)],
    ["whole numbers, thousands of slopes alike", manyOf((x) => Math.round(3 * x))],
    ["falling", manyOf((x, at) => Math.round(1000 * x) - 10 * at)],
    ["two levels", manyOf((x, at) => (at > 200 ? 1 : 0) + (x > 0.9 ? 1 : 0))],
  ])("of 79,800 slopes, more than are listed at once, %s: at the first, the last and between", (_, points) => {
    const slopes = allSlopes(points);
    expect(slopes).toHaveLength(79_800);
    for (const rank of [0, 1, 777, 20_000, 39_899, 39_900, 60_000, 79_798, 79_799]) agrees(points, rank, slopes);
  });
});
