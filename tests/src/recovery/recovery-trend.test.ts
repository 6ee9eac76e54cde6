import { describe, expect, it } from "vitest";
import { recoveryTrend } from "../../../src/index";

/** One reading a day, or on the days given, against the band 2 to 3.5. */
const trend = (values: readonly number[], days: readonly number[] = values.map((_, at) => at)) =>
  recoveryTrend(values.map((value, at) => ({ day: days[at] ?? NaN, value })), 2, 3.5);
const reasons = (values: readonly number[], days?: readonly number[]): string => trend(values, days).reasons.join("; ");

describe("recoveryTrend: what it cannot say", () => {
  it("of no reading it says so", () => {
    expect(trend([])).toEqual({ answer: "cannot say", reasons: ["no reading yet"] });
  });

  it("four readings of one moment are no course: 5 and 4.8 before 4.6 and 4.4", () => {
    expect(reasons([5, 4.8, 4.6, 4.4], [1, 1, 1, 1])).toContain("all readings are of one moment");
  });

  // Kendall 1975, appendix table 1: 6 readings, S 9, chance 0.0681.
  it("6 readings whose S is -9 are not told from chance at 5 %; they fall by a slope of 1 a day and scatter by 0 about it", () => {
    expect(trend([12, 11, 10, 7, 8, 9]).answer).toBe("cannot say");
    expect(reasons([12, 11, 10, 7, 8, 9])).toContain("a change of 5 over 5 days beside a scatter of 0: too few readings");
  });
});

describe("recoveryTrend: two or three readings", () => {
  it.each<[string, number[], string]>([
    ["0.12 nearer is 2 % of 6, what a meter can be off", [6, 5.88], "cannot say"],
    ["0.13 nearer is more", [6, 5.87], "likely recovering"],
    ["nearer, then away", [6, 5.2, 5.3], "cannot say"],
    ["away, then nearer", [6, 6.2, 5.2], "cannot say"],
    ["out for the first time", [3.4, 3.6], "cannot say"],
  ])("%s: %j is %s", (_, values, expected) => {
    expect(trend(values).answer).toBe(expected);
  });

  it("a single one is told by where it stands, and how many a trend needs", () => {
    expect(reasons([4.1])).toBe("the last reading is 0.6 outside the band 2 to 3.5; 1 of the 4 readings a trend needs");
    expect(reasons([3.51])).toContain("0.01 outside the band");
    expect(reasons([3])).toContain("the last reading is in the band 2 to 3.5");
  });
});

describe("recoveryTrend: the band, at the meter's resolution of 0.01", () => {
  it("half a step outside still belongs to it, however the machine writes it; 0.006 does not", () => {
    expect(trend([3.505, 1.995]).answer).toBe("recovered");
    expect(recoveryTrend([3505, 1995].map((value, day) => ({ day, value })), 2000, 3500).answer).toBe("recovered");
    expect(trend([3.506, 3.506]).answer).not.toBe("recovered");
  });

  it("one step in all is holding, two without any scatter are not", () => {
    expect(trend([5, 5, 5.01, 5.01], [0, 0, 1, 1]).answer).toBe("holding");
    expect(trend([5, 5, 5.02, 5.02], [0, 0, 1, 1]).answer).toBe("cannot say");
  });

  // By hand: the distances 1.5, 1.7, 1.4, 1.6, 1.5 fall by 0.025 a day; about that line their median distance is 0.1, times 1.4826.
  it("tells the change over the days and the scatter about the line, in the log's own unit", () => {
    expect(trend([5, 5.2, 4.9, 5.1, 5])).toEqual({
      answer: "holding",
      reasons: ["the last reading is 1.5 outside the band 2 to 3.5", "a change of 0.1 over 4 days beside a scatter of 0.148"],
    });
  });

  it("readings of half a day can hold too", () => {
    expect(trend([5, 5.1, 4.9, 5], [0, 0.2, 0.4, 0.5]).answer).toBe("holding");
  });
});

// Kendall 1975, appendix table 1: 5 readings, S 10, 0.0083; 7 readings, S 15, 0.0151.
describe("recoveryTrend: how often chance shows as much", () => {
  it("5 falling readings: fewer than 1 of 100; 7 whose S is -15: about 2; 4 rising ones: about 4", () => {
    expect(reasons([8, 7, 6, 5, 4])).toContain("the distance to the band falls: chance alone shows as much in fewer than 1 of 100 such logs");
    expect(reasons([12, 11, 10, 9, 6, 7, 8])).toContain("falls: chance alone shows as much in about 2 of 100 such logs");
    expect(reasons([4, 5, 6, 7])).toContain("the distance to the band grows: chance alone shows as much in about 4 of 100 such logs");
  });

  it("a relapse counts how often it was out since", () => {
    expect(reasons([4.1, 3.4, 3.3, 3.9, 4.2])).toBe("the last reading is 0.7 outside the band 2 to 3.5; out of the band 2 times in a row after it was back in");
  });
});
