import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandFor, type Medium, media, type RootZoneReading, verdict } from "../../src/index";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const hundredths = (low: number, high: number): fc.Arbitrary<number> => fc.integer({ min: low * 100, max: high * 100 }).map((each) => each / 100);
const maybe = <T>(value: fc.Arbitrary<T>): fc.Arbitrary<T | undefined> => fc.option(value, { nil: undefined, freq: 5 });

const reading: fc.Arbitrary<RootZoneReading> = fc.record({
  inputPh: maybe(hundredths(5, 7)),
  inputEc: maybe(hundredths(0.2, 4)),
  runoffPh: maybe(hundredths(4.5, 7.5)),
  runoffEc: maybe(hundredths(0.3, 9)),
});
const readings = fc.array(reading, { maxLength: 12 });
const medium = fc.constantFrom<Medium>(...media);
const blank: RootZoneReading = {};

/** All that a grower reads, apart from the places, which shift with a row. */
const said = (given: readonly RootZoneReading[], name: Medium): object => {
  const { answer, reasons, next, measureAgain } = verdict(given, bandFor(name));
  return { answer, reasons, next, measureAgain };
};

describe("verdict: laws", () => {
  it("a blank row, or a row of feed alone, changes not a word of it, wherever it is added", () => {
    fc.assert(
      fc.property(readings, medium, fc.nat(), fc.constantFrom(blank, { inputPh: 5.9, inputEc: 2 }), (given, name, at, added) => {
        const place = at % (given.length + 1);
        expect(said([...given.slice(0, place), added, ...given.slice(place)], name)).toEqual(said(given, name));
      }),
    );
  });

  it("rests on its own readings only: dropping every other row changes no answer where there is no trend to judge", () => {
    fc.assert(
      fc.property(readings, fc.constantFrom<Medium>("coir", "peat", "bark", "mineral wool", "inert"), (given, name) => {
        const { answer, restsOn } = verdict(given, bandFor(name));
        expect(verdict(restsOn.flatMap((place) => given[place] ?? []), bandFor(name)).answer).toBe(answer);
      }),
    );
  });

  it("EC in uS/cm turned to mS/cm by ECUNIT gives the same words as EC in mS/cm", () => {
    const column = (values: readonly (number | undefined)[]): (number | undefined)[][] => values.map((value) => [value]);
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 8 }), (given) => {
        const inputEc = column(given.map((each) => each.inputEc));
        const runoffEc = column(given.map((each) => each.runoffEc));
        const converted = [inputEc, runoffEc].map((ecs) => {
          const microsiemens = ecs.map(([ec]) => [ec === undefined ? undefined : Math.round(ec * 1000)]);
          return host.call("ECUNIT", [microsiemens, [["uS/cm"]], [["mS/cm"]]], "empty");
        });
        const phs = [column(given.map((each) => each.inputPh)), column(given.map((each) => each.runoffPh))] as const;
        const judge = (input: ReturnType<typeof host.call>, runoff: ReturnType<typeof host.call>): unknown =>
          host.call("DIAGNOSE", [phs[0], input, phs[1], runoff, [["coir"]], undefined, [[true]]], "empty");
        expect(judge(converted[0] ?? [], converted[1] ?? [])).toEqual(judge(inputEc, runoffEc));
      }),
      { numRuns: 60 },
    );
  });

  it("never names a trouble on the strength of one reading, and never advises a flush on one", () => {
    fc.assert(
      fc.property(reading, medium, (only, name) => {
        const { answer, next } = verdict([only], bandFor(name));
        expect(["in band", "confirm with a second reading", "check the meter", "cannot say"]).toContain(answer);
        expect(next).not.toMatch(/flush|leach/i);
      }),
    );
  });
});
