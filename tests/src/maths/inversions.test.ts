import { describe, expect, it } from "vitest";
import { inversionChances } from "../../../src/maths/inversion-chances";
import { inversions } from "../../../src/maths/inversions";

/** Pairs in the wrong order by looking at every pair. */
function pairsOf(values: readonly number[]): string[] {
  return values.flatMap((earlier, at) =>
    values.flatMap((later, after) => (after > at && earlier > later ? [`${at} ${after}`] : [])));
}

describe("inversions(values)", () => {
  it.each([
    [[2, 3, 1], 2], [[1, 2, 3, 4, 5], 0], [[5, 4, 3, 2, 1], 10], [[1, 1, 1], 0], [[2, 1, 2, 1, 2], 3],
    [[], 0], [[7], 0],
  ])("of %j is %i", (values, count) => {
    expect(inversions(Float64Array.from(values)).count).toBe(count);
  });

  it.each([
    [[3, 1, 2, 5, 4, 0, 6]], [[1, 0, 1, 0, 2, 2, 1, 0, 3]], [[9, 8, 7, 6, 5, 4, 3, 2]],
  ])("tells of every pair of %j once", (values) => {
    const told: string[] = [];
    const { count, order } = inversions(Float64Array.from(values), (run, start, end, after) => {
      for (let at = start; at < end; at += 1) told.push(`${run[at] ?? -1} ${after}`);
    });
    expect(told.sort()).toEqual(pairsOf(values).sort());
    expect(count).toBe(told.length);
    expect([...order].map((place) => values[place])).toEqual([...values].sort((a, b) => a - b));
  });
});

// The coefficients of the q-multinomial [stanley-2011] 1.7.1, multiplied out by hand.
describe("inversionChances(count, ties)", () => {
  it.each([
    ["3 values", 3, [], [1, 2, 2, 1]],
    ["4 values: (1+q)(1+q+q2)(1+q+q2+q3)", 4, [], [1, 3, 5, 6, 5, 3, 1]],
    ["4 values, 2 of them equal: (1+q+q2)(1+q+q2+q3)", 4, [2], [1, 2, 3, 3, 2, 1]],
    ["4 values, two pairs equal: (1+q2)(1+q+q2)", 4, [2, 2], [1, 1, 2, 1, 1]],
    ["3 values, all equal", 3, [3], [1]],
    ["4 values, 3 of them equal: 1+q+q2+q3", 4, [3], [1, 1, 1, 1]],
  ])("of %s", (_, count, ties, ways) => {
    const all = ways.reduce((sum, way) => sum + way, 0);
    const chances = [...inversionChances(count, ties)];
    expect(chances).toHaveLength(ways.length);
    chances.forEach((chance, at) => { expect(chance).toBeCloseTo((ways[at] ?? 0) / all, 12); });
  });
});
