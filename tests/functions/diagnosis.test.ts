import { describe, expect, it } from "vitest";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const blanks = ["zero", "null", "empty"] as const;
const down = (...cells: CellValue[]): Matrix => cells.map((cell) => [cell]);
const one = (cell: CellValue): Matrix => [[cell]];
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : "");
const flag = (row: readonly CellValue[], band: Matrix, limit?: number): CellValue =>
  host.call("ROWFLAG", [...row.map(one), band, limit === undefined ? undefined : one(limit)])[0]?.[0];

describe("SALTRATIO", () => {
  it.each(blanks)("3 over 1.5 is 2; a row with a blank reading stays blank (blank delivered as %s)", (blank) => {
    const answer = host.call("SALTRATIO", [down(3, undefined, 3), down(1.5, 1.5, undefined)], blank);
    expect(answer).toEqual([[2], [""], [""]]);
  });

  it("one input EC stretches along a column of runoff, and along a row", () => {
    expect(host.call("SALTRATIO", [down(3, 4.5), one(1.5)])).toEqual([[2], [3]]);
    expect(host.call("SALTRATIO", [[[3, 4.5]], one(1.5)])).toEqual([[2, 3]]);
  });

  it("reads a number typed as text, takes n/a as not measured, and refuses words with the reason", () => {
    const answer = host.call("SALTRATIO", [down(" 3 ", "n/a", "high"), one(1.5)]).flat();
    expect(answer.slice(0, 2)).toEqual([2, ""]);
    expect(answer[2]).toMatchObject({ error: "#VALUE!" });
    expect(reasonOf(answer[2])).toContain('"high" is not a number');
  });

  it("reads what the log reader reads: 1,8 and 1.8 mS and 1800 uS/cm and ~1.8 are 1.8, nd is not measured", () => {
    const answer = host.call("SALTRATIO", [down("1,8", "1.8 mS", "1800 uS/cm", "~1.8", "nd"), one(1.8)]).flat();
    expect(answer).toEqual([1, 1, 1, 1, ""]);
  });

  it("refuses 1,800, which could be 18 hundred, >5, two numbers, and a unit that is not one of EC", () => {
    const answer = host.call("SALTRATIO", [down("1,800", ">5", "1.8/2.0", "22 °C", "900 ppm"), one(1.8)]).flat();
    for (const cell of answer) expect(reasonOf(cell)).toContain("is not a number");
  });

  it("passes #N/A in an input cell on as #N/A and any other error as #VALUE! with its name", () => {
    const answer = host.call("SALTRATIO", [down({ error: "#N/A" }, { error: "#DIV/0!" }), one(1.5)]).flat();
    expect(answer[0]).toMatchObject({ error: "#N/A" });
    expect(answer[1]).toMatchObject({ error: "#VALUE!" });
    expect(reasonOf(answer[1])).toContain("#DIV/0!");
  });

  it("refuses 2 cells beside 3 and says both shapes", () => {
    const [answer] = host.call("SALTRATIO", [down(3, 4), down(1, 1, 1)]).flat();
    expect(answer).toMatchObject({ error: "#VALUE!" });
    expect(reasonOf(answer)).toMatch(/3 x 1.*2 x 1/);
  });

  it("refuses a negative EC as impossible and 1800 mS/cm as another unit", () => {
    const [negative, microsiemens] = host.call("SALTRATIO", [down(-1, 1800), one(1.5)]).flat();
    expect(reasonOf(negative)).toContain("runoff EC -1 mS/cm cannot be");
    expect(reasonOf(microsiemens)).toContain("divide uS/cm by 1000");
  });
});

describe("SALTRATIO beyond any bed", () => {
  it("refuses 1.38 over 0.0048, a ratio of 287.5: one of the two is in another unit", () => {
    expect(reasonOf(host.call("SALTRATIO", [one(1.38), one(0.0048)])[0]?.[0])).toContain("check the units of both");
  });
});

describe("PHSHIFT, LEACHFRACTION, RATIOCEILING", () => {
  it("PHSHIFT: runoff 5.4 against input 5.9 is half a pH unit down", () => {
    expect(host.call("PHSHIFT", [one(5.4), one(5.9)])[0]?.[0]).toBeCloseTo(-0.5, 12);
    expect(host.call("PHSHIFT", [one(15), one(5.9)])[0]?.[0]).toMatchObject({ error: "#VALUE!" });
  });

  it("LEACHFRACTION: 0.4 L of 2 L is 0.2, no runoff is 0, nothing poured is blank, more out than in is refused", () => {
    const answer = host.call("LEACHFRACTION", [down(0.4, 0, 0.1, 3), down(2, 2, 0, 2)]).flat();
    expect(answer.slice(0, 3)).toEqual([0.2, 0, ""]);
    expect(reasonOf(answer[3])).toContain("at most the input volume 2");
  });

  it.each(["null", "empty"] as const)("LEACHFRACTION: a runoff volume not measured is blank, not 0 (delivered as %s)", (blank) => {
    expect(host.call("LEACHFRACTION", [down(undefined), down(2)], blank)).toEqual([[""]]);
  });

  it("RATIOCEILING: leaching 0.4, 0.2 and 0.1 settles at 2.5, 5 and 10; 0 is blank; 1.2 is refused", () => {
    const answer = host.call("RATIOCEILING", [down(0.4, 0.2, 0.1, 0, 1.2)]).flat();
    expect(answer.slice(0, 4)).toEqual([2.5, 5, 10, ""]);
    expect(answer[4]).toMatchObject({ error: "#VALUE!" });
  });
});

describe("BANDLIMIT", () => {
  it.each(["coir, heavy", "coir heavy", "Coir heavy feeder", "coir; heavy"])("%s is coir for a heavy feeder, up to 4.6", (band) => {
    expect(host.call("BANDLIMIT", [one(band), one("ec high")])).toEqual([[4.6]]);
  });

  it("own four cells win over any table, across, down or as a square", () => {
    for (const own of [[[5.6, 6.4, 1.5, 3]], down(5.6, 6.4, 1.5, 3), [[5.6, 6.4], [1.5, 3]]]) {
      expect(host.call("BANDLIMIT", [own, one("EC high")])).toEqual([[3]]);
    }
  });

  it("an unknown medium, feeder or limit is refused with the list of known ones", () => {
    const said = (band: string, limit: string): string => reasonOf(host.call("BANDLIMIT", [one(band), one(limit)])[0]?.[0]);
    expect(said("moon dust", "ec high")).toContain("coir, peat, bark, mineral wool, inert, soil");
    expect(said("coir, greedy", "ec high")).toContain("light, medium, heavy");
    expect(said("coir", "ec middle")).toContain("ph low, ph high, ph aim, ec low, ec high");
  });

  it("own limits in the wrong order, or in uS/cm, are refused; three of four asks for the fourth", () => {
    const said = (own: readonly CellValue[]): string => reasonOf(host.call("BANDLIMIT", [[own], one("ec high")])[0]?.[0]);
    expect(said([6.4, 5.6, 1.5, 3])).toContain("out of order");
    expect(said([5.6, 6.4, 150, 190])).toContain("another unit");
    expect(said([5.6, 6.4, undefined, 3])).toContain("missing");
  });

  it.each(blanks)("a blank band is a blank answer (blank delivered as %s)", (blank) => {
    expect(host.call("BANDLIMIT", [one(undefined), one("ec high")], blank)).toEqual([[""]]);
  });
});

describe("ROWFLAG", () => {
  const coir = one("coir");
  it.each([
    ["all four inside", [5.9, 1.6, 6.1, 2.2], "in band"],
    ["pH and EC on their limits are in band", [5.9, 2.4, 6.5, 3.5], "in band"],
    ["one step past the limits is out", [5.9, 2.4, 6.51, 3.51], "runoff pH high; runoff EC high"],
    ["a ratio of 3.6 / 2.4 = 1.5 is not above 1.5", [5.9, 2.4, 6.1, 3.6], "runoff EC high"],
    ["a ratio of 1.51 is above 1.5", [5.9, 2.4, 6.1, 3.63], "runoff EC high; salt ratio high"],
    ["a ratio of 5 with the runoff in band is no trouble, as in the verdict", [5.9, 0.6, 6.1, 3], "in band"],
    ["the feed's pH and EC are flagged too", [7.2, 3.8, 6.1, 3], "input pH high; input EC high"],
    ["a feed of pH 5.2", [5.2, 1.6, 6.1, 2.2], "input pH low"],
    ["runoff 0.3 beside a feed of 2.4: the two cannot both be right", [5.9, 2.4, 6.1, 0.3], "check reading; runoff EC low"],
    ["low pH, high EC and a high ratio are all said", [5.9, 1.6, 5.2, 4.1], "runoff pH low; runoff EC high; salt ratio high"],
    ["washed out", [5.9, 1.6, 6.1, 1.1], "runoff EC low"],
    ["a ghost reading is doubted, not judged", [5.9, 1.6, 6.1, 0.04], "check reading"],
    ["uS/cm in the mS/cm column is doubted, not judged", [5.9, 1.6, 6.1, 2400], "check reading"],
    ["a pH that cannot be is doubted, the rest judged", [5.9, 1.6, 15, 4.1], "check reading; runoff EC high; salt ratio high"],
    ["an input below what a meter can show is doubted: 0.0048 is ppm gone through a conversion", [5.9, 0.0048, 6.1, 2.2], "check reading"],
    ["no ratio is judged against plain water", [6, 0.3, 6.1, 3.2], "in band"],
  ] as const)("%s", (_, row, expected) => {
    expect(flag(row, coir)).toBe(expected);
  });

  it.each(blanks)("judges what was read and is blank where no runoff was read (blank delivered as %s)", (blank) => {
    const rows = [down(5.9, undefined, 5.9), down(1.6, undefined, 1.6), down(undefined, 6.9, undefined), down(4.1, undefined, undefined)];
    expect(host.call("ROWFLAG", [...rows, coir], blank)).toEqual([["runoff EC high; salt ratio high"], ["runoff pH high"], [""]]);
  });

  it("the grower's own band and ratio limit win", () => {
    expect(flag([5.9, 1.6, 6.1, 4.1], [[5, 7, 1, 5]], 3)).toBe("in band");
    expect(flag([5.9, 1.6, 6.1, 3], coir, 1.5)).toBe("salt ratio high");
  });
});
