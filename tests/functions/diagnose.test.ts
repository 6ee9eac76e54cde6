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

describe("DIAGNOSE", () => {
  it("EC 4.6 then 4.9 in coir is salt buildup; explain names rows 1 and 2, the numbers, what to do and when to measure", () => {
    const [answer, why] = host.call("DIAGNOSE", [...salty, one("coir"), undefined, one(true)])[0] ?? [];
    expect(answer).toBe("salt buildup");
    for (const part of ["runoff EC 4.6 mS/cm, then 4.9 mS/cm: above 3.5 twice", "runoff pH 6, then 6.1: in the band 5.5 to 6.5", "rests on rows 1 and 2", "Next: Flush once", ". Measure again: after each portion of the flush, then 24 to 48 h after it."]) {
      expect(why).toContain(part);
    }
  });

  it("a leaching fraction of 0.2 turns the advice from a flush to more runoff, and the answer stays", () => {
    const [answer, why] = host.call("DIAGNOSE", [...salty, one("coir"), one(0.2), one(true)])[0] ?? [];
    expect(answer).toBe("salt buildup");
    expect(why).toContain("Next: Let more run off");
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

  it("readings that cannot be are judged: -1, 15 and 4900 are check the meter", () => {
    for (const bad of [-1, 4900]) expect(say([down(5.9), down(2), down(6), down(bad), one("coir")])).toBe("check the meter");
    expect(say([down(5.9), down(2), down(15), down(3), one("coir")])).toBe("check the meter");
  });

  it("refuses text, unequal columns, an unknown medium with the list, a leaching fraction of 2, and passes an error cell on", () => {
    const said = (args: Matrix[]): string => reasonOf(say(args));
    expect(said([down("high", 5.9), down(2, 2), down(6, 6), down(3, 3), one("coir")])).toContain('"high" is not a number');
    expect(said([down(5.9, 5.9, 5.9), down(2, 2), down(6, 6), down(3, 3), one("coir")])).toContain("columns of 3, 2, 2, 2 readings");
    expect(said([...salty, one("moon dust")])).toContain("coir, peat, bark, mineral wool, inert, soil");
    expect(said([...salty, one("coir"), one(2)])).toContain("leaching fraction 2 cannot be");
    expect(say([down({ error: "#N/A" }, 5.9), down(2, 2), down(6, 6), down(3, 3), one("coir")])).toMatchObject({ error: "#N/A" });
  });
});
