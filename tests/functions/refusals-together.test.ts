import { describe, expect, it } from "vitest";
import { type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

// Arguments that are sound one by one, and cannot stand together.

const { host } = loadBundle();
const reasonOf = (cell: CellValue): string => (typeof cell === "object" ? (cell.reason ?? "") : `no error but ${String(cell)}`);

describe("a target below the water's own EC of 0.4 is refused, and the water is named", () => {
  it.each<[string, CellValue[]]>([
    ["FLUSHVOLUME", [10, 6, 0.3, 0.4, "coir"]],
    ["FLUSHPLAN", [10, 6, 0.3, 0.4, "coir"]],
    ["DILUTION", [10, 3, 0.3, 0.4]],
    ["SWAPOUT", [10, 3, 0.3, 0.4]],
    ["STOCKDOSE", [20, 0.3, 0.4, 0.3]],
    ["RECOVERYFEED", [0.3, 0.4, 2]],
  ])("%s(%j)", (id, args) => {
    expect(reasonOf(host.call(id, args.map((arg) => [[arg]]))[0]?.[0])).toMatch(/water's own 0\.40? mS\/cm/);
  });

  it("FLUSHLEFT", () => {
    const series = [[[0], [2], [2]], [[8.4], [4.4], [2.4]]];
    expect(reasonOf(host.call("FLUSHLEFT", [...series, [[0.3]], [[0.4]]])[0]?.[0])).toContain("water's own 0.40 mS/cm");
  });
});

describe("dates out of order, or one date twice", () => {
  const call = (id: string, dates: number[], values: number[]): CellValue => {
    const limits = id === "DRIFT" ? [] : [[[2]], [[3.5]]];
    return host.call(id, [dates.map((date) => [date]), values.map((value) => [value]), ...limits])[0]?.[0];
  };

  it.each(["DRIFT", "DRIFTLEFT", "RECOVERYTREND"])("%s: five rows upside down answer as they do in order", (id) => {
    const inOrder = call(id, [46_023, 46_024, 46_025, 46_026, 46_027], [2, 2.2, 2.4, 2.6, 2.8]);
    expect(["number", "string"]).toContain(typeof inOrder);
    expect(call(id, [46_027, 46_026, 46_025, 46_024, 46_023], [2.8, 2.6, 2.4, 2.2, 2])).toBe(inOrder);
  });

  it("DRIFT: two readings of one day beside a third: 2 and 2.4 on day 1, 3 on day 3 rise by the median of 0.5 and 0.3, 0.4", () => {
    expect(call("DRIFT", [46_023, 46_023, 46_025], [2, 2.4, 3])).toBeCloseTo(0.4, 12);
  });

  it("DRIFT and DRIFTLEFT: one date only has no change a day: #N/A", () => {
    for (const id of ["DRIFT", "DRIFTLEFT"]) expect(call(id, [46_023, 46_023], [2, 3])).toMatchObject({ error: "#N/A" });
  });
});
