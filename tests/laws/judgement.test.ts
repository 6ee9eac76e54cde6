import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { judge, type PotJudgement, type PotReading } from "../../src/index";
import { contradictions, excluding } from "./judgement-exclusions";
import { anyBand, anyLog, potLog } from "./judgement-logs";
import { times } from "./times";

const many = times(2000);

/** All that a grower reads, apart from the places, which shift with a row. */
const said = ({ verdict, urgency, phase, causes, course, reasons }: PotJudgement): object =>
  ({ verdict, urgency, phase, causes, course, reasons });

function frozen<T>(value: T): T {
  if (typeof value === "object" && value !== null) Object.values(Object.freeze(value)).forEach(frozen);
  return value;
}

describe("judgement: laws over random logs", () => {
  it("no course contradicts itself, doses on a doubted meter, or acts on pH before the salt is down", () => {
    fc.assert(
      fc.property(anyLog, anyBand, (log, band) => {
        expect(contradictions(judge(log, band))).toEqual([]);
      }),
      many,
    );
  });

  it("a course is never empty, nor are the reasons, and no text or figure holds NaN, undefined or null", () => {
    fc.assert(
      fc.property(anyLog, anyBand, (log, band) => {
        const { course, reasons, restsOn } = judge(log, band);
        expect(course.length).toBeGreaterThan(0);
        expect(reasons.length).toBeGreaterThan(0);
        const texts = [...reasons, ...course.map(({ says }) => says)];
        for (const text of texts) expect(text).toMatch(/^(?!.*\b(NaN|undefined|null|Infinity)\b).+$/s);
        const figures = course.flatMap(({ litres, ec, ph, share, at }) => [litres, ec, ph, share, at]);
        for (const figure of figures) if (figure !== undefined) expect(Number.isFinite(figure)).toBe(true);
        for (const place of restsOn) expect(log[place]).toBeDefined();
      }),
      many,
    );
  });

  it("is pure: frozen readings are judged, and twice alike", () => {
    fc.assert(
      fc.property(anyLog, anyBand, (log, band) => {
        const readings = frozen(log.map((row) => ({ ...row })));
        const once = judge(readings, frozen(band));
        expect(judge(readings, band)).toEqual(once);
      }),
      times(1000),
    );
  });

  it("a blank row changes not a word, wherever it is added", () => {
    fc.assert(
      fc.property(potLog, anyBand, fc.nat(), (log, band, at) => {
        const place = at % (log.length + 1);
        const blank: PotReading = { day: log[place]?.day ?? log.at(-1)?.day };
        expect(said(judge([...log.slice(0, place), blank, ...log.slice(place)], band))).toEqual(said(judge(log, band)));
      }),
      many,
    );
  });

  it("the check of courses finds each excluding pair, in either order", () => {
    const course = (acts: readonly string[]): PotJudgement =>
      ({ verdict: "salt buildup", causes: [], course: acts.map((act) => ({ act })) }) as unknown as PotJudgement;
    for (const [one, other] of excluding) {
      expect(contradictions(course([one, other])).length, `${one}, ${other}`).toBeGreaterThan(0);
      expect(contradictions(course([other, one])).length, `${other}, ${one}`).toBeGreaterThan(0);
    }
    expect(contradictions(course(["flush", "lower the feed", "ease the load"]))).toEqual([]);
  });
});
