import { describe, expect, it } from "vitest";
import { blankDeliveries, type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const deliveries = Object.keys(blankDeliveries) as (keyof typeof blankDeliveries)[];
const down = (...cells: CellValue[]): Matrix => cells.map((cell) => [cell]);
const asCells = (arg: CellValue | readonly CellValue[]): Matrix => (Array.isArray(arg) ? down(...(arg as CellValue[])) : [[arg as CellValue]]);
const call = (id: string, ...args: (CellValue | readonly CellValue[])[]): CellValue => host.call(id, args.map(asCells), "null")[0]?.[0];
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : `no error but ${String(cell)}`);

// Each by hand from the relation in docs/formulas.md, with the water's EC left out.
describe("pure water, EC 0", () => {
  it.each<[string, (CellValue | readonly CellValue[])[], number]>([
    ["DILUTION: 20 L at 2.4 to 1.6 takes 20 x 0.8 / 1.6 L", [20, 2.4, 1.6, 0], 10],
    ["SWAPOUT: 10 L at 3 to 1.8 takes 10 x 1.2 / 3 L", [10, 3, 1.8, 0], 4],
    ["STOCKDOSE: 20 L to 1.5 at 0.3 a mL is 20 x 1.5 / 0.3 mL", [20, 1.5, 0, 0.3], 100],
    ["BLENDEC: 5 L of 3 and 5 L of pure water", [[5, 5], [3, 0]], 1.5],
    ["BLENDSHARE: 2.4 in pure water to 0.6", [2.4, 0, 0.6], 0.25],
    ["FLUSHVOLUME: coir of 10 L from 6 to 3, ln 2 x 6.5 / 0.7", [10, 6, 3, 0, "coir"], 6.436_367],
    ["FLUSHLEFT: halved by every 2 L, from 2 to 1", [[0, 2, 2], [8, 4, 2], 1, 0], 2],
    ["RECOVERYFEED: half of 2 on the day of the flush", [2, 0, 0], 1],
    ["LEACHNEED: pure water needs none", [0, 2.5], 0],
  ])("%s", (title, args, expected) => {
    expect(call(title.split(":")[0] ?? "", ...args)).toBeCloseTo(expected, 6);
  });

  it("FLUSHPLAN: the first of four portions from 6 to 3 leaves 6 x 2 ^ -0.25", () => {
    const rows = host.call("FLUSHPLAN", [10, 6, 3, 0, "coir"].map(asCells));
    expect([rows.length, rows[1]?.[3]]).toEqual([5, expect.closeTo(6 * 2 ** -0.25, 9)]);
  });
});

describe("day 0", () => {
  it("DRIFT counts it among day numbers: 2, 2.4, 9 on days 0, 1, 2 is 0.4, 6.6 and 3.5 a day, in the middle 3.5", () => {
    expect(call("DRIFT", [0, 1, 2], [2, 2.4, 9])).toBeCloseTo(3.5, 12);
    expect(call("DRIFT", [2, 1, 0], [9, 2.4, 2])).toBeCloseTo(3.5, 12);
  });

  it("DRIFTLEFT has its five readings with day 0: 2.8 and 0.2 a day is 3.5 days from 3.5", () => {
    expect(call("DRIFTLEFT", [0, 1, 2, 3, 4], [2, 2.2, 2.4, 2.6, 2.8], 2, 3.5)).toBeCloseTo(3.5, 9);
  });

  it("RECOVERYTREND has its four readings with day 0, and half days", () => {
    expect(call("RECOVERYTREND", [0, 1, 2, 3], [6, 5.2, 4.6, 4.1], 2, 3.5)).toBe("recovering");
    expect(call("RECOVERYTREND", [0, 0.5, 1, 1.5], [6, 5.2, 4.6, 4.1], 2, 3.5)).toBe("recovering");
  });

  it.each(deliveries)("among dates it is a blank cell: the row is passed over (delivered as %s)", (blank) => {
    const dates = down(46_023, undefined, 46_025, 46_027);
    expect(host.call("DRIFT", [dates, down(2, 9, 2.4, 2.8)], blank)[0]?.[0]).toBeCloseTo(0.2, 12);
    expect(host.call("DRIFT", [down(undefined, undefined), down(2, 3)], blank)).toEqual([[""]]);
  });

  it("a low limit of 0 is none", () => {
    expect(call("RECOVERYTREND", [0, 1], [0.4, 0.3], 0, 3.5)).toBe("recovered");
  });
});

describe("hours of UPTAKE", () => {
  it.each(deliveries)("a blank cell, or 0, gives a blank; only the argument left out means 24 (delivered as %s)", (blank) => {
    const hours = host.call("UPTAKE", [down(2, 2, 2), down(0.5, 0.5, 0.5), down(48, undefined, 0)], blank);
    expect(hours).toEqual([[0.75], [""], [""]]);
    expect(host.call("UPTAKE", [down(2), down(0.5)], blank)).toEqual([[1.5]]);
  });
});

describe("nothing that was typed is answered by nothing", () => {
  it("SALTKEPT: 10 L at 2 mS/cm and no runoff keep 2 x 10 x 0.64 = 12.8 g; an EC beside 0 L asks for the litres", () => {
    expect(call("SALTKEPT", 2, 10, undefined, 0)).toBeCloseTo(12.8, 12);
    expect(reasonOf(call("SALTKEPT", 2, 10, 4, 0))).toContain("runoff volume is missing: 0 L beside a runoff EC");
    expect(call("SALTKEPT", 2, 10, undefined, 2)).toBe("");
  });

  it.each(["check", "slope", "offset"])("PHPROBE asks about a mV of exactly 0 beside another, for its %s", (part) => {
    expect(reasonOf(call("PHPROBE", 7, 0, 4.01, 177, 25, part))).toContain("mV in buffer A is missing: a cell of exactly 0 can be a blank one");
    expect(reasonOf(call("PHPROBE", 7, -15, 4.01, 0, 25, part))).toContain("mV in buffer B");
    expect(call("PHPROBE", 7, 0, 4.01, 0, 25, part)).toBe("");
    expect(call("PHPROBE", 7, 0.1, 4.01, 177, 25)).toBe("good");
  });
});
