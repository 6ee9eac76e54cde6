import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  acidDose, type AcidName, acidTable, alkaliDose, alkalinity, baseTable, type BaseName, bandFor, carbonateCharge, carbonateConstants,
  ec25, fitWashout, type FlushReading, flushLeft, flushPlan, flushStop, flushVolume, freeAcid, leachNeed, litres, drainedMedia, milliequivalents,
  molesPerBottle, overFlushLimit, type Percent, ph, protonsGiven, totalCarbonate, washoutEc, washoutLitres, washoutRate,
} from "../../src/index";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const wash = fc
  .record({ water: number(0.02, 1.5), over: number(0.1, 3), above: number(0.1, 8), pot: number(0.2, 200), medium: fc.constantFrom(...drainedMedia) })
  .map(({ water, over, above, pot, medium }) => ({
    runoff: ec25(water + over + above),
    target: ec25(water + over),
    given: { containerLitres: litres(pot), waterEc: ec25(water), medium },
  }));

/** Floating point may lose the last digit of an EC. */
const roundOff = 1e-12;

describe("washout", () => {
  it("falls with every litre, towards the water's EC and never below it", () => {
    fc.assert(
      fc.property(wash, number(0, 100), number(0, 100), ({ runoff, given }, first, more) => {
        const ratePerLitre = washoutRate(given.containerLitres, given.medium);
        const after = (poured: number) => washoutEc(runoff, given.waterEc, { litres: litres(poured), ratePerLitre });
        expect(after(first + more)).toBeLessThanOrEqual(after(first) + roundOff);
        expect(after(first)).toBeLessThanOrEqual(runoff + roundOff);
        expect(after(first)).toBeGreaterThanOrEqual(given.waterEc - roundOff);
      }),
    );
  });

  it("FLUSHVOLUME and the model invert each other; what is poured ends at the over-flush limit", () => {
    fc.assert(
      fc.property(wash, ({ runoff, target, given }) => {
        const ratePerLitre = washoutRate(given.containerLitres, given.medium);
        const { litres: poured, neededLitres, limitLitres, capped, expectedEc } = flushVolume(runoff, target, given);
        expect(washoutEc(runoff, given.waterEc, { litres: neededLitres, ratePerLitre })).toBeCloseTo(target, 9);
        expect(poured).toBeLessThanOrEqual(limitLitres);
        expect(poured).toBe(capped ? limitLitres : neededLitres);
        expect(expectedEc).toBeGreaterThanOrEqual(target - roundOff);
      }),
    );
  });

  it("pulses of q capacities into a fully mixed pot leave (1 + q)^-n; small ones leave least, towards exp(-1) of one capacity", () => {
    const pulses = (count: number) => (1 + 1 / count) ** -count;
    const slug = washoutEc(ec25(1), ec25(0), { litres: litres(1), ratePerLitre: 1 });
    expect([1, 2, 10].map((count) => Number(pulses(count).toFixed(4)))).toEqual([0.5, 0.4444, 0.3855]);
    expect(pulses(1e6)).toBeCloseTo(slug, 5);
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 1000 }), (count) => {
        expect(pulses(count + 1)).toBeLessThan(pulses(count));
        expect(pulses(count)).toBeGreaterThan(slug);
      }),
    );
  });
});

describe("flush plan", () => {
  it("portions are alike, sum to the volume or to the limit, and end at the target unless capped", () => {
    fc.assert(
      fc.property(wash, ({ runoff, target, given }) => {
        const { portions, neededLitres, limitLitres, capped } = flushPlan(runoff, target, given);
        const sum = portions.reduce((total, portion) => total + portion.litres, 0);
        const last = portions.at(-1);
        expect(sum).toBeCloseTo(Math.min(neededLitres, limitLitres), 6);
        expect(last?.litresSoFar).toBeCloseTo(sum, 6);
        expect(sum).toBeLessThanOrEqual(limitLitres * (1 + 1e-9));
        if (capped) expect(last?.expectedEc).toBeGreaterThan(target);
        else expect(last?.expectedEc).toBeCloseTo(target, 6);
      }),
    );
  });
});

describe("litres left", () => {
  it("the fit finds the rate that made the readings", () => {
    fc.assert(
      fc.property(number(2, 10), number(0.02, 1), number(0.02, 1), (start, water, ratePerLitre) => {
        const points = [0, 1, 2, 3].map((soFar) => ({
          litresSoFar: litres(soFar),
          ec: washoutEc(ec25(start), ec25(water), { litres: litres(soFar), ratePerLitre }),
        }));
        expect(fitWashout(points, ec25(water))).toBeCloseTo(ratePerLitre, 9);
      }),
    );
  });

  it("readings that follow the model lead back to the model's own litres", () => {
    fc.assert(
      fc.property(number(5, 10), number(0.05, 1), number(0.1, 0.3), (start, water, ratePerLitre) => {
        const ecs = [0, 1, 2].map((poured) => washoutEc(ec25(start), ec25(water), { litres: litres(poured), ratePerLitre }));
        const readings = ecs.map((ec, row): FlushReading => ({ ph: undefined, ec, litres: litres(row === 0 ? 0 : 1) }));
        const target = ec25(water + 0.5);
        const expected = washoutLitres(ecs[2] ?? ec25(0), target, { waterEc: ec25(water), ratePerLitre });
        expect(flushLeft(readings, target, ec25(water)).litres).toBeCloseTo(expected, 6);
      }),
    );
  });
});

describe("stop check", () => {
  const anyNumber = fc.option(fc.oneof(fc.double(), number(0, 12)), { nil: undefined });
  const anyReading = fc.record({ ph: anyNumber, ec: anyNumber, litres: fc.option(number(0, 20).map((poured) => litres(poured)), { nil: undefined }) });

  it("answers one of its words with a reason, whatever the readings, and never throws", () => {
    const words = ["keep going", "stop: in band", "stop: no longer falling", "stop: enough water", "pause and measure again", "cannot say"];
    fc.assert(
      fc.property(fc.array(anyReading), fc.constantFrom(...drainedMedia), number(0.1, 100), (readings, medium, pot) => {
        const { answer, reasons } = flushStop(readings, bandFor(medium), litres(pot));
        expect(words).toContain(answer);
        expect(reasons[0].length).toBeGreaterThan(0);
        expect(reasons.join()).not.toMatch(/undefined|null/);
      }),
    );
  });

  it("never says keep going once the water limit is reached, nor on a last row without pH and EC", () => {
    fc.assert(
      fc.property(fc.array(anyReading), anyReading, fc.constantFrom(...drainedMedia), (readings, last, medium) => {
        const pot = litres(10);
        const drowned = [...readings, { ...last, litres: overFlushLimit(pot, medium) }];
        expect(flushStop(drowned, bandFor(medium), pot).answer).not.toBe("keep going");
        expect(flushStop([...readings, { ...last, ph: undefined, litres: litres(1) }], bandFor(medium), pot).answer).toBe("cannot say");
        expect(flushStop([...readings, { ...last, ec: NaN }], bandFor(medium), pot).answer).toBe("cannot say");
      }),
    );
  });
});

/** The pH at which charges balance, found by halving: an equilibrium of its own, knowing nothing of doses. */
function equilibriumPh(chargeAt: (ph: number) => number): number {
  let [low, high] = [2, 13];
  for (let step = 0; step < 60; step++) {
    const middle = (low + high) / 2;
    if (chargeAt(middle) > 0) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

describe("doses", () => {
  const constants = carbonateConstants();
  const names = Object.keys(acidTable) as AcidName[];

  it("ACIDDOSE, before it is rounded, then equilibrium returns the target pH", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names), number(10, 38), number(6, 8.5), number(20, 400), number(4.5, 6), number(0.1, 5000),
        (name, strength, now, mgPerLitre, target, volume) => {
          const percent = strength as Percent;
          const water = { litres: litres(volume), alkalinity: alkalinity(mgPerLitre), phNow: ph(now) };
          const { exact, measured } = acidDose(water, ph(target), { name, percent });
          const total = totalCarbonate(milliequivalents(water.alkalinity), water.phNow, constants);
          const acid = (exact / volume) * molesPerBottle(name, percent);
          const balance = (at: number) =>
            milliequivalents(water.alkalinity) - acid * protonsGiven(name, at as typeof water.phNow) -
            total * carbonateCharge(at as typeof water.phNow, constants) + freeAcid(at as typeof water.phNow, constants);
          expect(equilibriumPh(balance)).toBeCloseTo(target, 6);
          expect(measured).toBeLessThanOrEqual(exact * 1.005);
          expect(measured).toBeGreaterThan(exact * 0.9);
        },
      ),
    );
  });

  it("ALKALIDOSE, before it is rounded, then equilibrium returns the target pH", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...(Object.keys(baseTable) as BaseName[])), number(4.5, 5.5), number(1, 20), number(5.6, 6.2),
        (name, now, mgPerLitre, target) => {
          const water = { litres: litres(100), alkalinity: alkalinity(mgPerLitre), phNow: ph(now) };
          const { molarMass, potassium, carbonate } = baseTable[name];
          const total = totalCarbonate(milliequivalents(water.alkalinity), water.phNow, constants);
          const wanted = alkaliOrSaltLoad(() => alkaliDose(water, ph(target), { name }).exact);
          if (wanted === undefined) return;
          const added = ((wanted / 100) * 1000) / molarMass;
          const balance = (at: number) =>
            milliequivalents(water.alkalinity) + added * potassium -
            (total + added * carbonate) * carbonateCharge(at as typeof water.phNow, constants) + freeAcid(at as typeof water.phNow, constants);
          expect(equilibriumPh(balance)).toBeCloseTo(target, 6);
        },
      ),
    );
  });

  it("the leaching requirement rises with the input EC and stays below 1", () => {
    fc.assert(
      fc.property(number(0.1, 3), number(0.01, 1), number(3, 10), (input, more, tolerated) => {
        const [less, need] = [leachNeed(ec25(input), ec25(tolerated)), leachNeed(ec25(input + more), ec25(tolerated))];
        expect(need).toBeGreaterThan(less);
        expect(need).toBeLessThan(1);
      }),
    );
  });
});

/** A step that needs too much potassium is refused; every other refusal is a failure. */
function alkaliOrSaltLoad(dose: () => number): number | undefined {
  try {
    return dose();
  } catch (problem) {
    expect(problem).toMatchObject({ code: "outside-validity" });
    return undefined;
  }
}
