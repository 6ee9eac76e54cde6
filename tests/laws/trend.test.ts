import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Dated, drift, driftLeft, recoveryTrend, uptake, saltKept, litres, ec25 } from "../../src/index";

const reading: fc.Arbitrary<Dated> = fc.record({
  day: fc.integer({ min: 46_000, max: 46_060 }),
  value: fc.integer({ min: 50, max: 800 }).map((hundredths) => hundredths / 100),
});
const log = fc.array(reading, { minLength: 2, maxLength: 30 }).filter((readings) => new Set(readings.map(({ day }) => day)).size > 1);
const shuffled = log.chain((readings) => fc.tuple(fc.constant(readings), fc.shuffledSubarray(readings, { minLength: readings.length })));

describe("DRIFT, DRIFTLEFT, RECOVERYTREND: laws", () => {
  it("the order of the rows changes nothing", () => {
    fc.assert(
      fc.property(shuffled, ([readings, mixed]) => {
        expect(drift(mixed)).toBe(drift(readings));
        expect(driftLeft(mixed, 2, 3.5)).toBe(driftLeft(readings, 2, 3.5));
        expect(recoveryTrend(mixed, 2, 3.5)).toEqual(recoveryTrend(readings, 2, 3.5));
      }),
    );
  });

  it("readings in uS/cm drift 1000 times as fast as in mS/cm, and leave the band on the same day", () => {
    fc.assert(
      fc.property(log, (readings) => {
        const micro = readings.map(({ day, value }) => ({ day, value: value * 1000 }));
        expect(drift(micro)).toBeCloseTo(1000 * drift(readings), 8);
        const [left, leftMicro] = [driftLeft(readings, 2, 3.5), driftLeft(micro, 2000, 3500)];
        if (left === undefined) expect(leftMicro).toBeUndefined();
        else expect(leftMicro).toBeCloseTo(left, 6);
        expect(recoveryTrend(micro, 2000, 3500).answer).toBe(recoveryTrend(readings, 2, 3.5).answer);
      }),
    );
  });

  it("dates on another calendar, 1462 days off, change nothing; a straight line is found to the last digit shown", () => {
    fc.assert(
      fc.property(log, fc.integer({ min: -50, max: 50 }), (readings, tenths) => {
        expect(drift(readings.map(({ day, value }) => ({ day: day + 1462, value })))).toBe(drift(readings));
        expect(drift(readings.map(({ day }) => ({ day, value: 3 + (tenths / 10) * (day - 46_000) })))).toBeCloseTo(tenths / 10, 9);
      }),
    );
  });

  it("one outlier of any size, at any place, cannot turn the sign of DRIFT on ten steady readings that rise, or fall, each day", () => {
    const outlier = fc.double({ min: -1000, max: 1000, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(0.05, -0.05), fc.integer({ min: 0, max: 9 }), outlier, (slope, at, wrong) => {
        const steady = Array.from({ length: 10 }, (_, day) => ({ day, value: 3 + slope * day }));
        expect(Math.sign(drift(steady.map((each, place) => (place === at ? { ...each, value: wrong } : each))))).toBe(Math.sign(slope));
      }),
    );
  });

  it("the mirror image about the middle of the band has the same trend: it works from above and from below", () => {
    fc.assert(
      fc.property(log, (readings) => {
        const mirrored = readings.map(({ day, value }) => ({ day, value: 8 - value }));
        expect(recoveryTrend(mirrored, 3, 5).answer).toBe(recoveryTrend(readings, 3, 5).answer);
      }),
    );
  });
});

describe("SALTKEPT, UPTAKE: laws", () => {
  const volumes = fc.tuple(fc.double({ min: 0.1, max: 50, noNaN: true }), fc.double({ min: 0, max: 1, noNaN: true }));
  it("salt kept and uptake fall as more drains; two halves of an irrigation keep what the whole keeps", () => {
    fc.assert(
      fc.property(volumes, fc.double({ min: 0.2, max: 8, noNaN: true }), fc.double({ min: 0.2, max: 8, noNaN: true }), ([poured, share], inEc, outEc) => {
        const kept = (v: number, out: number): number => saltKept({ ec: ec25(inEc), litres: litres(v) }, { ec: ec25(outEc), litres: litres(out) });
        expect(2 * kept(poured / 2, (poured / 2) * share)).toBeCloseTo(kept(poured, poured * share), 9);
        expect(kept(poured, poured * share)).toBeLessThanOrEqual(kept(poured, 0));
        expect(uptake(litres(poured), litres(poured * share))).toBeLessThanOrEqual(uptake(litres(poured), litres(0)));
      }),
    );
  });
});
