import { describe, expect, it } from "vitest";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const blanks = ["zero", "null", "empty"] as const;
const down = (...cells: CellValue[]): Matrix => cells.map((cell) => [cell]);
const one = (cell: CellValue): Matrix => [[cell]];
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : "");

describe("UPTAKE", () => {
  it("2 L in, 0.5 L out is 1.5 L a day; over 48 hours half of it; no runoff is all of it", () => {
    expect(host.call("UPTAKE", [one(2), down(0.5, 0), undefined]).flat()).toEqual([1.5, 2]);
    expect(host.call("UPTAKE", [one(2), one(0.5), one(48)])).toEqual([[0.75]]);
  });

  it.each(blanks)("nothing poured is blank (%s)", (blank) => {
    expect(host.call("UPTAKE", [down(undefined, 2), one(0.5)], blank)).toEqual([[""], [1.5]]);
  });

  it.each(["null", "empty"] as const)("a runoff not measured is blank (%s)", (blank) => {
    expect(host.call("UPTAKE", [one(2), down(undefined, 0.5)], blank)).toEqual([[""], [1.5]]);
  });

  it("refuses more runoff than input, negative and endless hours, and text", () => {
    const said = (...cells: CellValue[]): string => reasonOf(host.call("UPTAKE", cells.map(one))[0]?.[0]);
    expect(said(2, 3)).toContain("at most the input volume 2");
    expect(said(2, 1, -5)).toContain("0.25 to 8784 h");
    expect(said(2, 1, 100_000)).toContain("0.25 to 8784 h");
    expect(said(2, 1, 2 / 24)).toContain("in days");
    expect(said(2, 1, "a day")).toContain("not a number");
  });
});

// The rules in words: last two in band; else a one-sided Mann-Kendall chance of 5 % or less on the distance to the band.
describe("RECOVERYTREND", () => {
  const trend = (values: readonly CellValue[], low = 2, high = 3.5): CellValue => {
    const dates = down(...values.map((_, day) => 46_023 + day));
    return host.call("RECOVERYTREND", [dates, down(...values), one(low), one(high)])[0]?.[0];
  };

  it.each<[string, number[], string]>([
    ["4.1, 3.4, 3.2: the last two in band", [4.1, 3.4, 3.2], "recovered"],
    ["3.5 and 2, the limits themselves", [3.5, 2], "recovered"],
    ["from below: 0.8, 1.4, 2.1, 2.2", [0.8, 1.4, 2.1, 2.2], "recovered"],
    ["6, 5.2, 4.6, 4.1: 1 of 24 orders", [6, 5.2, 4.6, 4.1], "recovering"],
    ["from below: 0.5, 0.9, 1.2, 1.6", [0.5, 0.9, 1.2, 1.6], "recovering"],
    ["the last in band, the one before not", [6, 5.2, 4.6, 3.4], "recovering"],
    ["3.6, 4.1, 4.6, 5.2", [3.6, 4.1, 4.6, 5.2], "worsening"],
    ["below and falling: 1.9, 1.6, 1.2, 0.9", [1.9, 1.6, 1.2, 0.9], "worsening"],
    ["5, 5.2, 4.9, 5.1, 5: no change beyond the scatter", [5, 5.2, 4.9, 5.1, 5], "holding"],
    ["5, 5, 5, 5", [5, 5, 5, 5], "holding"],
    ["three readings, each nearer by more than 2 %", [6, 5.2, 4.6], "likely recovering"],
    ["two readings, the second in band", [4.1, 3.4], "likely recovering"],
    ["two readings 0.05 apart: the meter can be off so much", [6, 5.95], "cannot say"],
    ["out twice after in", [4.1, 3.4, 3.3, 3.9, 4.2], "relapsed"],
    ["out twice after in, from below", [1.5, 2.2, 1.8, 1.6], "relapsed"],
    ["out once after in", [3.3, 3.4, 3.9], "cannot say"],
    ["in, then 6, 5.2, 4.6, 4.1: back on its way", [3.4, 6, 5.2, 4.6, 4.1], "recovering"],
    ["one reading in band", [3], "cannot say"],
    ["6, 5.4, 4.6, 4.7: falling, but chance shows that too", [6, 5.4, 4.6, 4.7], "cannot say"],
  ])("%s: %s is %s", (_, values, expected) => {
    expect(trend(values)).toBe(expected);
  });

  it("a log in uS/cm says what it says in mS/cm, dust of the machine or not", () => {
    const logs = [[6, 5.2, 4.6, 4.1], [4.1, 3.4, 3.2], [5, 5.2, 4.9, 5.1, 5], [6, 5.4, 4.6, 4.7], [3.505, 3.504], [6, 5.2], [3.4, 3.9, 4.2], [3.6, 3.61, 3.62, 3.63]];
    for (const log of logs) expect(trend(log.map((value) => Math.round(1000 * value)), 2000, 3500), String(log)).toBe(trend(log));
  });

  it("readings in uS/cm beside limits in mS/cm are asked about, and the other way round", () => {
    const said = (...args: Matrix[]): string => reasonOf(host.call("RECOVERYTREND", args)[0]?.[0]);
    expect(said(down(1, 2), down(2400, 2300), one(2), one(3.5))).toContain("looks like another unit: expected the unit of its limits, 2 to 3.5");
    expect(said(down(1, 2), down(2.4, 2.3), one(2000), one(3500))).toContain("looks like another unit");
  });

  it("the order of rows does not matter, dates on one day are taken, and the worse of two on the last day counts", () => {
    const args = (dates: number[], values: number[]): Matrix[] => [down(...dates), down(...values), one(2), one(3.5)];
    expect(host.call("RECOVERYTREND", args([46_026, 46_023, 46_025, 46_024], [4.1, 6, 4.6, 5.2]))).toEqual([["recovering"]]);
    for (const last of [[3.4, 4.1], [4.1, 3.4]]) {
      expect(host.call("RECOVERYTREND", args([46_023, 46_024, 46_024], [3.3, ...last]))).toEqual([["cannot say"]]);
    }
    expect(host.call("RECOVERYTREND", args([46_023, 46_023, 46_023, 46_023], [5, 4.8, 4.6, 4.4]))).toEqual([["cannot say"]]);
  });

  it("explain gives the last distance and the chance: 0.6 outside 2 to 3.5, 1 in 24 orders is about 4 of 100", () => {
    const args = [down(46_023, 46_024, 46_025, 46_026), down(6, 5.2, 4.6, 4.1), one(2), one(3.5), one(true)];
    const [answer, reason] = host.call("RECOVERYTREND", args)[0] ?? [];
    expect(answer).toBe("recovering");
    expect(reason).toBe("the last reading is 0.6 outside the band 2 to 3.5; the distance to the band falls: chance alone shows as much in about 4 of 100 such logs");
  });

  it.each(blanks)("blank rows change nothing; a blank limit, or no reading, is blank; a low limit that arrives as 0 is none (%s)", (blank) => {
    const [dates, values] = [down(46_023, undefined, 46_024, 46_025, 46_026, 46_027), down(6, undefined, 5.2, 4.6, 4.1, undefined)];
    const call = (...args: Matrix[]): CellValue => host.call("RECOVERYTREND", args, blank)[0]?.[0];
    expect(call(dates, values, one(2), one(3.5))).toBe("recovering");
    expect(call(dates, values, one(undefined), one(3.5))).toBe(blank === "zero" ? "recovering" : "");
    expect(call(dates, values, one(2), one(undefined))).toBe("");
    expect(call(down(undefined), down(undefined), one(2), one(3.5))).toBe("");
  });

  it("refuses limits in the wrong order, dates as text, unequal lengths and an unknown explain", () => {
    const said = (...args: Matrix[]): string => reasonOf(host.call("RECOVERYTREND", args)[0]?.[0]);
    expect(said(down(1, 2), down(5, 4), one(3.5), one(2))).toContain("out of order");
    expect(said(down("2026-05-01", 2), down(5, 4), one(2), one(3.5))).toContain("enter it as a date");
    expect(said(down(1, 2, 3), down(5, 4), one(2), one(3.5))).toMatch(/3 x 1.*2 x 1/);
    expect(said(down(1, 2), down(5, 4), one(2), one(3.5), one("maybe"))).toContain("TRUE or FALSE");
  });
});
