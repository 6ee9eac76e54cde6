import { describe, expect, it } from "vitest";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const blanks = ["zero", "null", "empty"] as const;
const down = (...cells: CellValue[]): Matrix => cells.map((cell) => [cell]);
const one = (cell: CellValue): Matrix => [[cell]];
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : "");
const salty: Matrix[] = [down(5.9, 5.9), down(2, 2), down(6, 6.1), down(4.6, 4.9)];
const say = (args: readonly (Matrix | undefined)[], blank: (typeof blanks)[number] = "zero"): CellValue => host.call("DIAGNOSE", args, blank)[0]?.[0];

// Coir, medium feeder: drain EC 1.2 to 3.5, pH 5.5 to 6.5. What is said: common practice, no source.
describe("DIAGNOSE", () => {
  it("EC 4.6 then 4.9 in coir is salt buildup; explain names the rows, the figures and the course in its order", () => {
    const [answer, why] = host.call("DIAGNOSE", [...salty, one("coir"), undefined, one(true)])[0] ?? [];
    expect(answer).toBe("salt buildup");
    for (const part of ["runoff EC 4.6 mS/cm, then 4.9 mS/cm: above 3.5 twice", "rests on rows 1 and 2", "urgency: today", "1. flush, now: ", "Keep drain water away from electrical gear"]) {
      expect(why).toContain(part);
    }
  });

  it("a leaching fraction of 0.05 names too little runoff and never makes it milder", () => {
    const [answer, why] = host.call("DIAGNOSE", [...salty, one("coir"), one(0.05), one(true)])[0] ?? [];
    expect(answer).toBe("salt buildup");
    expect(why).toContain("only 5 % drains: that is why salt stays");
    expect(why).toContain("urgency: today");
  });

  it("litres, dates and notes weigh: 8 % drains and a wilting plant make EC 4.6 then 4.9 an emergency", () => {
    const more = [down(46_023, 46_025), down(1, 1), down(0.08, 0.08), down("calibrated", "wilting")];
    const [answer, why] = host.call("DIAGNOSE", [...salty, one("coir"), undefined, one(true), ...more])[0] ?? [];
    expect(answer).toBe("salt buildup");
    for (const part of ["urgency: now", "too little runoff", "noted: wilting", "ease the load"]) expect(why).toContain(part);
  });

  it("rows out of order are put in order by their dates, and the rows named are the range's", () => {
    const turned = [down(5.9, 5.9), down(2, 2), down(6.1, 6), down(4.9, 2.6)];
    expect(say([...turned, one("coir"), undefined, undefined, down(46_025, 46_023)])).toBe("confirm with a second reading");
    expect(say([...turned, one("coir")])).toBe("in band");
  });

  it("a row noted as a flush is no evidence: EC 2.5 in it does not end the salt buildup, and 1.3 poured after is the ramp", () => {
    const log = [down(5.8, 5.8, 5.9, 5.8), down(2.2, 2.2, 0.4, 1.3), down(6, 6, 6, 6), down(6.4, 7, 2.6, 2.5)];
    const [answer, why] = host.call("DIAGNOSE", [...log, one("coir"), undefined, one(true), down(46_020, 46_022, 46_023, 46_024), undefined, undefined, down("", "", "flushed", "")])[0] ?? [];
    expect(answer).toBe("in band");
    expect(why).toContain("after a flush");
    expect(why).toContain("feed by the ramp");
  });

  it("the grower's own four cells win: pH 5 to 7, EC 1 to 6 makes it in band", () => {
    expect(say([...salty, [[5, 7, 1, 6]]])).toBe("in band");
  });

  it.each(blanks)("blank rows, between and below, change nothing; nothing but blanks, or no band, is blank (%s)", (blank) => {
    const gaps = [down(5.9, undefined, 5.9, undefined), down(2, undefined, 2, undefined), down(6, undefined, 6.1, undefined), down(4.6, undefined, 4.9, undefined)];
    expect(say([...gaps, one("coir")], blank)).toBe("salt buildup");
    expect(say([one(undefined), one(undefined), one(undefined), one(undefined), one("coir")], blank)).toBe("");
    expect(say([...salty, one(undefined)], blank)).toBe("");
  });

  it.each(blanks)("a column left empty is not measured: without any input the verdict rests on the runoff (%s)", (blank) => {
    expect(say([one(undefined), one(undefined), down(6, 6.1), down(4.6, 4.9), one("coir")], blank)).toBe("salt buildup");
  });

  it.each(blanks)("volumes that wait to be filled in do not read as nothing drained (%s)", (blank) => {
    const [, why] = host.call("DIAGNOSE", [...salty, one("coir"), undefined, one(true), undefined, down(1, 1), down(undefined, undefined)], blank)[0] ?? [];
    expect(why).not.toContain("too little water");
  });

  it("readings that cannot be are judged: -1, 15 and 4900 are check the meter", () => {
    for (const bad of [-1, 4900]) expect(say([down(5.9), down(2), down(6), down(bad), one("coir")])).toBe("check the meter");
    expect(say([down(5.9), down(2), down(15), down(3), one("coir")])).toBe("check the meter");
  });

  it("refuses text, unequal columns, an unknown medium with the list, a leaching fraction of 2, and passes an error cell on", () => {
    const said = (args: (Matrix | undefined)[]): string => reasonOf(say(args));
    expect(said([down("high", 5.9), down(2, 2), down(6, 6), down(3, 3), one("coir")])).toContain('"high" is not a number');
    expect(said([down(5.9, 5.9, 5.9), down(2, 2), down(6, 6), down(3, 3), one("coir")])).toContain("columns of 3, 2, 2, 2 readings");
    expect(said([...salty, one("coir"), undefined, undefined, down(46_023)])).toContain("columns of 1, 2, 2, 2, 2 readings");
    expect(said([...salty, one("moon dust")])).toContain("coir, peat, bark, mineral wool, inert, soil, water culture");
    expect(said([...salty, one("constructor")])).toContain("is not known");
    expect(said([...salty, one("coir"), one(2)])).toContain("leaching fraction 2 cannot be");
    expect(say([down({ error: "#N/A" }, 5.9), down(2, 2), down(6, 6), down(3, 3), one("coir")])).toMatchObject({ error: "#N/A" });
  });
});

describe("WHICHFIRST", () => {
  const bench = [
    down("A", "B", "C", "A", "B", "C"), down(46_023, 46_023, 46_023, 46_026, 46_026, 46_026),
    down(5.9, 5.9, 5.9, 5.9, 5.9, 5.9), down(2, 2, 2, 2, 2, 2), down(6, 6, 4.9, 6, 6, 4.8), down(2.8, 4.6, 2.6, 3, 5.9, 2.6),
  ];

  it("three pots, the last row the healthy one's neighbour: the one at EC 5.9 comes first, the one at pH 4.8 next", () => {
    const found = host.call("WHICHFIRST", [...bench, one("coir")]);
    expect(found[0]).toEqual(["pot", "verdict", "urgency", "first thing to do", "last reading"]);
    expect(found.slice(1).map(([pot, verdict]) => [pot, verdict])).toEqual([["B", "salt buildup"], ["C", "pH out of range"], ["A", "in band"]]);
    expect(found[1]).toEqual(["B", "salt buildup", "today", "flush", 46_026]);
  });

  it.each(blanks)("rows without a name are left out; without rows or a band it is blank (%s)", (blank) => {
    const unnamed = [down("A", undefined, undefined), down(46_023, 46_023, undefined), down(5.9, 5.9, undefined), down(2, 2, undefined), down(6, 6, undefined), down(2.8, 9, undefined)];
    expect(host.call("WHICHFIRST", [...unnamed, one("coir")], blank).slice(1).map(([pot]) => pot)).toEqual(["A"]);
    expect(host.call("WHICHFIRST", [...bench, one(undefined)], blank)).toEqual([[""]]);
  });

  it("says of each pot what DIAGNOSE says of its rows alone", () => {
    const found = host.call("WHICHFIRST", [...bench, one("coir")]).slice(1);
    for (const [at, pot] of ["A", "B", "C"].entries()) {
      const own = bench.slice(2).map((column) => [column[at] ?? [], column[at + 3] ?? []]);
      const dates = [bench[1]?.[at] ?? [], bench[1]?.[at + 3] ?? []];
      expect(found.find(([name]) => name === pot)?.[1]).toBe(say([...own, one("coir"), undefined, undefined, dates]));
    }
  });
});
