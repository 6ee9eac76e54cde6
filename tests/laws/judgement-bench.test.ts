import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Act, judge, type PotReading, urgencies, whichFirst } from "../../src/index";
import { anyBand, anyLog, potLog } from "./judgement-logs";
import { times } from "./times";

const named = (vessel: string, log: readonly PotReading[]) => log.map((row) => ({ ...row, vessel }));

/** Rows of two pots as a bench is logged: in turns. */
function inTurns<T>(one: readonly T[], other: readonly T[]): T[] {
  const most = Math.max(one.length, other.length);
  return Array.from({ length: most }, (_, place) => [one[place], other[place]])
    .flatMap((pair) => pair.filter((row) => row !== undefined));
}

describe("judgement: laws of a bench", () => {
  it("rows of another pot never change a word of a pot's judgement, over 1,000 pairs of random logs", () => {
    fc.assert(
      fc.property(potLog, potLog, anyBand, (log, neighbour, band) => {
        const found = whichFirst(inTurns(named("A", log), named("B", neighbour)), band);
        expect(found.find(({ vessel }) => vessel === "A")?.judgement).toEqual(judge(log, band));
      }),
      times(1000),
    );
  });

  it("the pots stand by falling urgency, each once", () => {
    fc.assert(
      fc.property(potLog, potLog, potLog, anyBand, (a, b, c, band) => {
        const found = whichFirst([...named("A", a), ...named("B", b), ...named("C", c)], band);
        const ranks = found.map(({ judgement }) => urgencies.indexOf(judgement.urgency));
        expect(ranks).toEqual([...ranks].sort((x, y) => y - x));
        expect(found.map(({ vessel }) => vessel).sort()).toEqual(["A", "B", "C"]);
      }),
      times(1000),
    );
  });
});

/** What must be said beside an act that can hurt: drain water near electricity, acids and bases, concentrates. */
const cautions: readonly (readonly [readonly Act[], RegExp])[] = [
  [["flush", "go on flushing", "reset the pH", "let more run off"], /electric|Acids and bases/],
  [["mend the input pH", "treat the alkalinity"], /goggles|gloves/],
  [["raise the feed", "feed by the ramp"], /label/],
];

describe("judgement: cautions", () => {
  it.each(cautions)("stand with %s, over 2,000 random logs", (acts, caution) => {
    fc.assert(
      fc.property(anyLog, anyBand, (log, band) => {
        const { course } = judge(log, band);
        const text = course.map(({ says }) => says).join("\n");
        if (course.some(({ act }) => acts.includes(act))) expect(text).toMatch(caution);
      }),
      times(2000),
    );
  });
});
