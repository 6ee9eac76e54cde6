import { describe, expect, it } from "vitest";
import { bandFor, ec25, ph, spread } from "../../../../src/index";
import { laneBands } from "../../../../src/recovery/timeline/lane-bands";
import { laneDefinitions } from "../../../../src/recovery/timeline/lanes";
import { segments } from "../../../../src/recovery/timeline/segments";
import { watches } from "../../../../src/recovery/timeline/watch";
import { watchPlan } from "../../../../src/recovery/watch-plan";
import { ownBand } from "../../../../src/bands/band";

const points = (days: readonly number[]) => days.map((day, row) => ({ day, value: 2, row }));
const lengths = (days: readonly number[]): number[] => segments(points(days)).map(({ length }) => length);

describe("segments", () => {
  it("a pause of exactly three usual ones is none, a longer one is: 21 and 22 days in a weekly log", () => {
    expect(lengths([0, 7, 14, 35, 42])).toEqual([5]);
    expect(lengths([0, 7, 14, 36, 43])).toEqual([3, 2]);
  });

  it("two days are never a gap, even between hours; a little more is", () => {
    expect(lengths([0, 0.25, 0.5, 2.5, 2.75])).toEqual([5]);
    expect(lengths([0, 0.25, 0.5, 2.75, 3])).toEqual([3, 2]);
  });

  it("no reading has no run, one has its own", () => {
    expect([lengths([]), lengths([5])]).toEqual([[], [1]]);
  });
});

describe("watches", () => {
  const flushedOn = (...days: number[]) => watches(days.map((day) => ({ kind: "flush", words: "flushed", day })));

  it("less than a day and a half apart is one flush, timed from the last of it", () => {
    expect(flushedOn(10, 11.25)).toEqual([{ flushed: 11.25, from: 12.25, to: 13.25 }]);
    expect(flushedOn(10, 11.5).map(({ flushed }) => flushed)).toEqual([10, 11.5]);
  });

  it("only a flush is watched", () => {
    expect(watches([{ kind: "drench", words: "drenched", day: 10 }])).toEqual([]);
  });
});

describe("spread", () => {
  const told = (days: readonly number[], slices: number) => spread(days.map((day, row) => ({ day, value: row, row })), slices);

  it("of no reading is nothing; readings of one moment are one slice", () => {
    expect(told([], 5)).toEqual([]);
    expect(told([3, 3, 3], 5)).toEqual([{ day: 3, low: 0, middle: 1, high: 2 }]);
  });

  it("slices of equal time: days 0 to 9 in two are 0 to 4 and 5 to 9, the last day in the last slice", () => {
    expect(told([0, 1, 2, 3, 4, 5, 6, 7, 8, 9], 2).map(({ day, low, high }) => [day, low, high])).toEqual([[2, 0, 4], [7, 5, 9]]);
    expect(told([0, 1, 2, 3], 2).map(({ day, low, high }) => [day, low, high])).toEqual([[0.5, 0, 1], [2.5, 2, 3]]);
  });
});

describe("laneBands", () => {
  const today = ownBand(ph(5.5), ph(6.5), ec25(2), ec25(6));
  const [coir, other] = [bandFor("coir"), ownBand(ph(5.5), ph(6.5), ec25(1.2), ec25(4))];
  const bands = (earlier: readonly [band: typeof coir, until: number][], span: readonly [number, number]) =>
    laneBands(({ ec }) => ec, { today, earlier: earlier.map(([band, until]) => ({ band, until })) }, span).map(({ from, to, limits }) => [from, to, limits[1]]);

  it("limits that differ at one end only are two bands", () => {
    expect(bands([[coir, 12], [other, 14]], [10, 20])).toEqual([[undefined, 12, 3.5], [12, 14, 4], [14, undefined, 6]]);
  });

  it("the same limits before and after are one band", () => {
    expect(bands([[coir, 12], [coir, 14]], [10, 20])).toEqual([[undefined, 14, 3.5], [14, undefined, 6]]);
  });

  it("a band that ends with the day of the first reading has none of it; one that begins with the last has it", () => {
    expect(bands([[coir, 10]], [10, 20])).toEqual([[undefined, undefined, 6]]);
    expect(bands([[coir, 12], [other, 20]], [10, 20])).toEqual([[undefined, 12, 3.5], [12, 20, 4], [20, undefined, 6]]);
    expect(bands([[coir, 20], [other, 25]], [10, 20])).toEqual([[undefined, 20, 3.5], [20, undefined, 4], [25, undefined, 6]]);
  });

  it("limits in disorder never run backwards: one that ended before the one before it held for nobody", () => {
    expect(bands([[coir, 14], [other, 12]], [10, 20])).toEqual([[undefined, 14, 3.5], [14, undefined, 6]]);
  });

  it("a lane without limits has no band", () => {
    expect(laneBands(() => undefined, { today, earlier: [] }, [10, 20])).toEqual([]);
  });
});

// Units as the sheet's columns have them; decimals as the meters show them.
describe("laneDefinitions", () => {
  it("are the root zone, the plant, then air and water, each in its unit and its meter's decimals", () => {
    expect(laneDefinitions.map(({ name, group, unit, decimals }) => [name, group, unit, decimals])).toEqual([
      ["EC", "root zone", "mS/cm", 2],
      ["pH", "root zone", "", 2],
      ["salt ratio", "root zone", "", 2],
      ["uptake", "plant", "L a watering", 2],
      ["plant trouble", "plant", "of 3", 0],
      ["VPD", "air and water", "kPa", 2],
      ["air temperature", "air and water", "C", 1],
      ["solution temperature", "air and water", "C", 1],
    ]);
  });

  it("have a line for what was poured and one for what drained, told last, or one only", () => {
    const roles = laneDefinitions.map(({ series }) => series.map(({ role }) => role).join(", "));
    expect(roles).toEqual(["input, runoff", "input, runoff", "only", "only", "only", "only", "only", "only"]);
  });

  it("tell no steps apart that their decimals do not show", () => {
    for (const { decimals, resolution } of laneDefinitions) expect(resolution).toBeCloseTo(10 ** -decimals, 12);
  });

  it("draw at least a point of pH or EC, half a litre, 5 C and all 3 degrees of trouble", () => {
    expect(laneDefinitions.map(({ leastSpan }) => leastSpan)).toEqual([1, 1, 1, 0.5, 3, 1, 5, 5]);
  });
});

describe("watchPlan", () => {
  it("looks at once, after 1, 24 and 48 hours, then daily to a week, by these names", () => {
    expect(watchPlan.map(({ hours }) => hours)).toEqual([0, 1, 24, 48, 72, 96, 120, 144, 168]);
    expect(watchPlan.map(({ name }) => name)).toEqual(["0 h", "1 h", "24 h", "48 h", "day 3", "day 4", "day 5", "day 6", "day 7"]);
  });

  it("gives the light back from 60 % to all of it on day 7, never more than a tenth at a look", () => {
    const shares = watchPlan.map(({ lightShare }) => lightShare);
    expect([shares[0], shares.at(-1)]).toEqual([0.6, 1]);
    shares.slice(1).forEach((share, at) => {
      const step = share - (shares[at] ?? NaN);
      expect(step).toBeGreaterThanOrEqual(0);
      expect(step).toBeLessThan(0.1 + 1e-9);
    });
  });
});
