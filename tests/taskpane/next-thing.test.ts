import { describe, expect, test } from "vitest";
import { bandFor, ec25, judge, ph } from "../../src/index";
import { nextThing } from "../../taskpane/next-thing";
import { nextThingWords } from "../../taskpane/words/next-thing";

type Reading = Parameters<typeof judge>[0][number];

const coir = bandFor("coir");
const day = (place: number, inputPh: number, runoffPh: number, runoffEc: number): Reading =>
  ({ day: 46_082 + place, inputEc: ec25(1.8), inputPh: ph(inputPh), runoffEc: ec25(runoffEc), runoffPh: ph(runoffPh) });

const pressed = (readings: readonly Reading[]): string | undefined => {
  const next = nextThing(judge(readings, coir));
  return next === undefined ? undefined : nextThingWords(next.tool, next.act);
};

describe("the one button under the verdict", () => {
  test("input and runoff pH both at 7.0 in three rows: a dead electrode, and the button checks the meter", () => {
    expect(pressed([0, 1, 2].map((place) => day(place, 7, 7, 2.2)))).toBe("Check the meter");
  });

  test("one reading far outside, and none before it: the button goes to the row for the second", () => {
    expect(pressed([day(0, 5.8, 5.9, 7.5)])).toBe("Go to the next empty row");
  });

  test("salt for days: the flush comes first", () => {
    expect(pressed([0, 1, 2, 3].map((place) => day(place, 5.8, 5.9, 5 + place / 2)))).toBe("Plan the flush for this pot");
  });

  test("all in band: there is nothing to press", () => {
    expect(pressed([0, 1, 2, 3].map((place) => day(place, 5.8, 6, 2.2)))).toBeUndefined();
  });
});
