import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { crisis } from "../../sample-workbooks/scenario/crisis";
import { drink, newPot, pour } from "../../sample-workbooks/scenario/pot";
import { noise } from "../../sample-workbooks/scenario/random";
import { flushDay, saltBuildup } from "../../sample-workbooks/scenario/salt-buildup";
import { tell } from "../../sample-workbooks/scenario/story";

const medium = { channelling: 0.15, phExchange: 0.3 };
const amount = (max: number) => fc.double({ min: 0.01, max, noNaN: true });

describe("pot: the balance that every log comes from", () => {
  it("keeps salt: what is poured is what drains, what the plant took and what stays", () => {
    fc.assert(
      fc.property(amount(5), amount(5), amount(3), amount(3), (startEc, feedEc, litres, drunk) => {
        const start = newPot(5, { ec: startEc, ph: 6 }, medium);
        const thirsty = drink(start, { litres: drunk, ecTaken: 0, phPerLitre: 0 });
        const { pot, drained } = pour(thirsty, { litres, ec: feedEc, ph: 6 });
        expect(pot.saltLoad + drained.litres * drained.ec).toBeCloseTo(start.saltLoad + litres * feedEc, 9);
        expect(pot.waterLitres + drained.litres).toBeCloseTo(thirsty.waterLitres + litres, 9);
      }),
    );
  });

  it("washes out: 10 pours of 2 L at EC 0.3 leave every runoff below the one before and above 0.3", () => {
    let pot = newPot(5, { ec: 5, ph: 5.3 }, medium);
    let last = 5;
    for (let portion = 0; portion < 10; portion++) {
      const after = pour(pot, { litres: 2, ec: 0.3, ph: 6 });
      expect(after.drained.ec).toBeLessThan(last);
      expect(after.drained.ec).toBeGreaterThan(0.3);
      last = after.drained.ec;
      ({ pot } = after);
    }
  });
});

describe("noise", () => {
  it("gives the same numbers for the same seed and others for another", () => {
    const ten = (seed: number): number[] => Array.from({ length: 10 }, noise(seed).even);
    expect(ten(1)).toEqual(ten(1));
    expect(ten(1)).not.toEqual(ten(2));
  });

  it("scatters around 0 with the spread asked for: 10,000 draws of spread 1 have mean 0 and variance 1 within 0.05", () => {
    const { around0 } = noise(7);
    const draws = Array.from({ length: 10_000 }, () => around0(1));
    const mean = draws.reduce((sum, each) => sum + each, 0) / draws.length;
    const variance = draws.reduce((sum, each) => sum + (each - mean) ** 2, 0) / draws.length;
    expect(Math.abs(mean)).toBeLessThan(0.05);
    expect(Math.abs(variance - 1)).toBeLessThan(0.05);
  });
});

describe("crisis: the story its log tells", () => {
  const last = tell(crisis).slice(-2).map(({ entry }) => entry);

  it("ends on the day of the trouble: two runoff readings above coir's 3.5 mS/cm, the later one higher, under 15 % drained", () => {
    expect(last.every(({ runoffEc = 0 }) => runoffEc > 3.5)).toBe(true);
    expect(last[1]?.runoffEc).toBeGreaterThan(last[0]?.runoffEc ?? Infinity);
    expect(last.every(({ runoffLitres = 9, feedLitres = 1 }) => runoffLitres / feedLitres < 0.15)).toBe(true);
    expect(last[1]?.note).toMatch(/burnt/);
  });
});

describe("salt build-up: the story its log tells", () => {
  const told = tell(saltBuildup);
  const at = (day: number) => told.find(({ entry }) => entry.day === day)?.entry;

  it("runs over 75 days with at least 60 rows", () => {
    expect(told.at(-1)?.entry.day).toBe(74);
    expect(told.length).toBeGreaterThanOrEqual(60);
  });

  it("shows runoff EC more than doubling and runoff pH more than 0.5 down by the eve of the flush", () => {
    expect(at(flushDay - 1)?.runoffEc ?? 0).toBeGreaterThan(2 * (at(1)?.runoffEc ?? Infinity));
    expect(at(flushDay - 1)?.runoffPh ?? 9).toBeLessThan((at(1)?.runoffPh ?? 0) - 0.5);
  });

  it("shows the flush in 4 portions, each runoff EC below the one before, and ends with runoff at most 1.5 times the feed", () => {
    const portions = told.find(({ entry }) => entry.day === flushDay)?.portions.map(({ runoffEc }) => runoffEc ?? NaN) ?? [];
    expect(portions).toHaveLength(4);
    portions.slice(1).forEach((ec, i) => {
      expect(ec).toBeLessThan(portions[i] ?? 0);
    });
    const last = at(74);
    expect(last?.runoffEc ?? Infinity).toBeLessThan(1.5 * (last?.feedEc ?? 0));
    expect(last?.runoffPh ?? 0).toBeGreaterThan(at(flushDay)?.runoffPh ?? Infinity);
  });

  it("leaves some cells blank, as real logs do", () => {
    expect(told.filter(({ entry }) => entry.runoffEc === undefined || entry.feedPh === undefined || entry.celsius === undefined).length).toBeGreaterThanOrEqual(4);
  });
});
