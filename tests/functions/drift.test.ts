import { describe, expect, it } from "vitest";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const blanks = ["zero", "null", "empty"] as const;
const down = (...cells: CellValue[]): Matrix => cells.map((cell) => [cell]);
const one = (cell: CellValue): Matrix => [[cell]];
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : "");
const first = (id: string, args: readonly (Matrix | undefined)[], blank: (typeof blanks)[number] = "zero"): CellValue =>
  host.call(id, args, blank)[0]?.[0];
const days = (count: number): Matrix => down(...Array.from({ length: count }, (_, day) => 46_023 + day));

describe("SALTKEPT", () => {
  it.each(blanks)("10 L at 2 less 2 L at 4 leave 7.68 g on the 640 scale, 6 g on the 500 scale; a blank is blank, litres that arrive as 0 are asked about (%s)", (blank) => {
    const answer = host.call("SALTKEPT", [down(2, 2, undefined, 2), one(10), one(4), down(2, undefined, 2, 2), down(640, 640, 640, 500)], blank);
    const [kept, unmeasured, noEc, onAnother] = answer.flat();
    expect([kept, noEc, onAnother]).toEqual([7.68, "", 6]);
    expect(blank === "zero" ? reasonOf(unmeasured) : unmeasured).toEqual(blank === "zero" ? expect.stringContaining("0 L beside a runoff EC") : "");
  });

  it("a flush washes out: 10 L at 0.3 in, 8 L at 4 out is -18.56 g", () => {
    expect(first("SALTKEPT", [one(0.3), one(10), one(4), one(8)])).toBeCloseTo(-18.56, 12);
  });

  it("refuses more runoff than input, a negative volume, uS/cm, text and a scale of 2", () => {
    expect(reasonOf(first("SALTKEPT", [one(2), one(2), one(4), one(3)]))).toContain("at most the input volume 2");
    expect(reasonOf(first("SALTKEPT", [one(2), one(-2), one(4), one(3)]))).toContain("input volume -2 L cannot be");
    expect(reasonOf(first("SALTKEPT", [one(2000), one(2), one(4), one(1)]))).toContain("divide uS/cm by 1000");
    expect(reasonOf(first("SALTKEPT", [one("two"), one(2), one(4), one(1)]))).toContain('"two" is not a number');
    expect(reasonOf(first("SALTKEPT", [one(2), one(2), one(4), one(1), one(2)]))).toContain("400 to 1000");
  });
});

describe("DRIFT", () => {
  it("the order of rows does not matter: 2, 2.4, 2.8 every second day is 0.2 a day", () => {
    expect(first("DRIFT", [down(46_027, 46_023, 46_025), down(2.8, 2, 2.4)])).toBeCloseTo(0.2, 12);
    expect(first("DRIFT", [[[46_027, 46_023, 46_025]], [[2.8, 2, 2.4]]])).toBeCloseTo(0.2, 12);
  });

  it.each(blanks)("rows without their date or value are passed over; no reading at all is blank (%s)", (blank) => {
    const dates = down(46_023, 46_024, undefined, 46_025, 46_027);
    expect(first("DRIFT", [dates, down(2, undefined, 9, 2.4, 2.8)], blank)).toBeCloseTo(0.2, 12);
    expect(first("DRIFT", [down(undefined, undefined), down(undefined, undefined)], blank)).toBe("");
  });

  it("one reading, or all on one day, is #N/A with the count that is needed", () => {
    for (const args of [[down(46_023), down(2)], [down(46_023, 46_023), down(2, 3)]]) {
      expect(first("DRIFT", args)).toMatchObject({ error: "#N/A" });
      expect(reasonOf(first("DRIFT", args))).toContain("at least 2 needed");
    }
  });

  it("refuses a date as text, a negative date, a value as text, 1e9, an error cell, and 3 dates beside 2 values", () => {
    expect(reasonOf(first("DRIFT", [down("5 May", 46_024), down(2, 3)]))).toMatch(/date "5 May" is not a number: enter it as a date/);
    expect(reasonOf(first("DRIFT", [down(-1, 46_024), down(2, 3)]))).toContain("date -1 cannot be");
    expect(reasonOf(first("DRIFT", [down(1e9, 46_024), down(2, 3)]))).toContain("date 1000000000 cannot be");
    expect(reasonOf(first("DRIFT", [days(2), down("high", 3)]))).toContain('"high" is not a number');
    expect(reasonOf(first("DRIFT", [days(2), down(1e9, 3)]))).toContain("cannot be");
    expect(first("DRIFT", [days(2), down({ error: "#N/A" }, 3)])).toMatchObject({ error: "#N/A" });
    expect(reasonOf(first("DRIFT", [days(3), down(2, 3)]))).toMatch(/3 x 1.*2 x 1/);
    expect(reasonOf(first("DRIFT", [[[1, 2], [3, 4]], down(2, 3)]))).toContain("one column or one row");
  });
});

describe("DRIFTLEFT", () => {
  const left = (values: readonly CellValue[], low: CellValue, high: CellValue): CellValue =>
    first("DRIFTLEFT", [days(values.length), down(...values), one(low), one(high)]);

  it("2 to 2.8 in four days reaches 3.5 in 3.5 days, 2 below it never; falling it is the low limit", () => {
    expect(left([2, 2.2, 2.4, 2.6, 2.8], 2, 3.5)).toBeCloseTo(3.5, 9);
    expect(left([3.2, 3, 2.8, 2.6, 2.4], 2, 3.5)).toBeCloseTo(2, 9);
  });

  it("already outside is 0 days, above and below", () => {
    expect(left([3.2, 3.4, 3.6, 3.8, 4], 2, 3.5)).toBe(0);
    expect(left([2.6, 2.4, 2.2, 2, 1.8], 2, 3.5)).toBe(0);
  });

  it("no drift that stands out of chance, no date: scatter, four readings, equal readings", () => {
    expect(left([2.4, 2.2, 2.5, 2.3, 2.4], 2, 3.5)).toBe("");
    expect(left([2, 2.2, 2.4, 2.6], 2, 3.5)).toBe("");
    expect(left([2.4, 2.4, 2.4, 2.4, 2.4], 2, 3.5)).toBe("");
  });

  it.each(blanks)("a blank limit is blank, but a low one that arrives as 0 is none; limits in the wrong order are refused (%s)", (blank) => {
    const args = [days(5), down(2, 2.2, 2.4, 2.6, 2.8)];
    expect(first("DRIFTLEFT", [...args, one(undefined), one(3.5)], blank)).toEqual(blank === "zero" ? expect.closeTo(3.5, 9) : "");
    expect(first("DRIFTLEFT", [...args, one(2), one(undefined)], blank)).toBe("");
    expect(reasonOf(first("DRIFTLEFT", [...args, one(3.5), one(2)], blank))).toContain("out of order");
  });
});

// Baseline 6, 6.02, 5.98, 6.01, 5.99: mean 6, standard deviation 0.0158, below the meter tolerance of 2 %, 0.12; k = 0.5 s, h = 5 s, a reading counts as 4 s at most.
describe("DRIFTALARM", () => {
  const baseline = [6, 6.02, 5.98, 6.01, 5.99];
  const alarm = (...values: CellValue[]): CellValue => first("DRIFTALARM", [down(...baseline, ...values)]);

  it.each<[string, number[], string]>([
    ["two readings within the scatter", [6, 6.02], "steady"],
    ["one reading far off: 3.5 s of 5", [6.9], "steady"],
    ["the same, then back", [6.9, 6, 6.01], "steady"],
    ["two in a row far off: 7 s", [6.9, 6.9], "drifting up"],
    ["far off downwards", [5.1, 5.1], "drifting down"],
    ["1.25 s up, seven times: 5.25 s", [6.15, 6.15, 6.15, 6.15, 6.15, 6.15, 6.15], "drifting up"],
    ["1.25 s up, six times: 4.5 s", [6.15, 6.15, 6.15, 6.15, 6.15, 6.15], "steady"],
    ["back for good after a rise", [6.9, 6.9, 6, 6, 6, 6, 6], "steady"],
    ["leaping: five far up leave 8.5 s, two far down add 7 s", [6.9, 6.9, 6.9, 6.9, 6.9, 5.1, 5.1], "cannot say"],
  ])("%s is %s", (_, values, expected) => {
    expect(alarm(...values)).toBe(expected);
  });

  it("equal baseline readings: the scatter is the meter's tolerance, 2 % of 6, and the reason says so", () => {
    const [answer, reason] = host.call("DRIFTALARM", [down(6, 6, 6, 6, 6, 6, 6.01), undefined, one(true)])[0] ?? [];
    expect(answer).toBe("steady");
    expect(reason).toContain("scatter 0.12, the meter's tolerance");
  });

  it("the baseline alone cannot say; fewer than 3, 2.5 or a word as baseline are refused", () => {
    expect(alarm()).toBe("cannot say");
    for (const count of [2, 2.5, -1]) expect(reasonOf(first("DRIFTALARM", [down(...baseline, 6), one(count)]))).toContain("a whole number of 3 or more");
    expect(reasonOf(first("DRIFTALARM", [down(...baseline, 6), one("five")]))).toContain("not a number");
  });

  it.each(blanks)("blanks are passed over, wherever they stand; nothing but blanks is blank (%s)", (blank) => {
    expect(first("DRIFTALARM", [down(6, undefined, 6.02, 5.98, 6.01, 5.99, undefined, 6.9, undefined, 6.9)], blank)).toBe("drifting up");
    expect(first("DRIFTALARM", [down(undefined, undefined)], blank)).toBe("");
  });
});
