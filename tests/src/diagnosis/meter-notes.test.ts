import { describe, expect, it } from "vitest";
import { bandFor, judge, type PotReading } from "../../../src/index";

/** Common practice, no source: what growers write of a meter, and what they write that only sounds like it. */
const judged = (notes: string): string => {
  const rows = [1, 2, 3].map((day): PotReading => ({ day: 45_300 + 3 * day, inputPh: 5.8, inputEc: 1.8, runoffPh: 6, runoffEc: 2.3 }));
  return judge(rows.map((row, at) => (at === 2 ? { ...row, notes } : row)), bandFor("coir")).verdict;
};

describe("a note on the meter", () => {
  it.each([
    "pH pen reads 7.8 in the 7.00 buffer", "calibration failed", "EC meter is broken", "the pen was off by 0.4", "pen drifts",
    "calibrated, it was 0.8 too high", "meter shows 7,4 in 7.0 buffer", "yesterday's readings were wrong", "pen reads high",
  ])("%s: the meter is doubted", (notes) => { expect(judged(notes)).toBe("check the meter"); });

  it.each([
    "pen reads 7.01 in 7.00", "calibrated both", "pen checked, no drift", "meter was not off", "EC meter reads 2.3, a little high",
    "lights off at 9", "switched pump off", "drip 2 in 4 pots", "calibrated, 7.00 in 7.00 and 4.05 in 4.00", "poured 3 in 10 portions", "tap water pH 6.2 in 4 portions", "pH 6 in 7 days",
    "drain wrong colour", "feed was too high last week",
  ])("%s: it is not", (notes) => { expect(judged(notes)).toBe("in band"); });
});
