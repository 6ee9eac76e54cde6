import { describe, expect, it } from "vitest";
import { type LogEvent } from "../../../../src/index";
import { laneTrend } from "../../../../src/recovery/timeline/lane-trend";

const flush = (day: number): LogEvent & { day: number } => ({ kind: "flush", words: "flushed", day });
const points = (days: readonly number[], values: readonly number[] = days) => days.map((day, row) => ({ day, value: values[row] ?? NaN, row }));
const meter = { events: [], axis: "dates", resolution: 0.01, decimals: 2 } as const;

describe("laneTrend: which readings it looks at", () => {
  it("the last two weeks: a reading of exactly 14 days ago counts, one of 14.1 days does not", () => {
    expect(laneTrend(points([6, 10, 15, 20]), meter).words).toBe("rising 1.000 a day (4 readings, last 14 days)");
    expect(laneTrend(points([5.9, 10, 15, 20]), meter).words).toBe("too few readings (3, last 14 days)");
  });

  it("those after the last flush, when it lies within the two weeks, 14 days ago at the most", () => {
    const days = [5, 6, 7, 10, 15, 20];
    expect(laneTrend(points(days), { ...meter, events: [flush(6)] })).toMatchObject({ readings: 4, words: "rising 1.000 a day (4 readings, since the flush)" });
    expect(laneTrend(points(days), { ...meter, events: [flush(5.9)] })).toMatchObject({ readings: 5, words: "rising 1.000 a day (5 readings, last 14 days)" });
    expect(laneTrend(points(days), { ...meter, events: [flush(6), flush(12)] }).words).toBe("too few readings (2, since the flush)");
  });

  it("the readings of the flush itself are those before it: flushed with the last one, nothing is read since", () => {
    expect(laneTrend(points([1, 2, 3, 4]), { ...meter, events: [flush(4)] }).words).toBe("too few readings (0, since the flush)");
  });

  it("a flush after the lane's last reading, and a deed that is no flush, start nothing anew", () => {
    expect(laneTrend(points([1, 2, 3, 4]), { ...meter, events: [flush(5)] }).answer).toBe("rising");
    const drench = { kind: "drench", words: "drenched", day: 3 } as const;
    expect(laneTrend(points([1, 2, 3, 4]), { ...meter, events: [drench] }).words).toBe("rising 1.000 a day (4 readings, last 14 days)");
  });

  it("without dates all readings since the flush, or all: 20 places in the log are no days", () => {
    const twenty = Array.from({ length: 20 }, (_, at) => at + 1);
    expect(laneTrend(points(twenty), { ...meter, axis: "readings" }).words).toBe("rising 1.000 each (20 readings, so far)");
    expect(laneTrend(points(twenty), { ...meter, axis: "readings", events: [flush(2)] }).words).toBe("rising 1.000 each (18 readings, since the flush)");
  });
});

// Mann-Kendall, one-sided: 4 readings in a row are 1 of 24 orders, 3 are 1 of 6 [kendall-1975].
describe("laneTrend: what it calls a trend", () => {
  it("4 readings on 4 days; three, or four on three days, are too few", () => {
    expect(laneTrend(points([1, 2, 3, 4], [5, 4, 3, 2]), meter)).toEqual({ answer: "falling", words: "falling 1.000 a day (4 readings, last 14 days)", changePerDay: -1, readings: 4 });
    expect(laneTrend(points([1, 2, 3]), meter)).toEqual({ answer: "too few readings", words: "too few readings (3, last 14 days)", changePerDay: undefined, readings: 3 });
    expect(laneTrend(points([1, 2, 3, 3], [1, 2, 3, 4]), meter).answer).toBe("too few readings");
    expect(laneTrend([], meter).words).toBe("too few readings (0, last 14 days)");
  });

  it("a change of a whole step of the meter, never less: 1 over 4 days of a resolution of 1, not 0.96", () => {
    const looks = { ...meter, resolution: 1, decimals: 0 };
    expect(laneTrend(points([0, 1, 2, 3, 4], [0, 0.25, 0.5, 0.75, 1]), looks).words).toBe("rising 0.3 a day (5 readings, last 14 days)");
    expect(laneTrend(points([0, 1, 2, 3, 4], [0, 0.24, 0.48, 0.72, 0.96]), looks)).toMatchObject({ answer: "no clear trend", words: "no clear trend (5 readings, last 14 days)" });
  });

  it("one that chance shows less than once in 20: S 9 of 6 readings, 0.0681, is none", () => {
    expect(laneTrend(points([1, 2, 3, 4, 5, 6], [3, 2, 1, 4, 5, 6]), meter).answer).toBe("no clear trend");
  });
});
