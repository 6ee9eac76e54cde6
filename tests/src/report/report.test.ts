import { describe, expect, it } from "vitest";
import { type Band, bandFor, ec25, litres, type LogQuestion, ownBand, ph, reportOf } from "../../../src/index";

const grid = {
  cells: [
    ["Date", "Pot", "EC in mS/cm", "EC drain mS/cm", "pH drain"],
    ...[45_383, 45_386, 45_389].flatMap((day, at) => [[day, "A", 2, 2.6, 6], [day, "B", 2, 4 + at, 6]]),
  ],
};

// Two pots in coir fed at 2.0: one drains 2.6 and is well, the other climbs from 4 to 6, above 3.5. Common practice, no source.
describe("reportOf", () => {
  it("shows the pot that drains 6 mS/cm first, not the healthy one that stands last", () => {
    const { pots, vessel, judgement, rows, title } = reportOf({ grid, band: bandFor("coir"), sheetName: "Log" });
    expect(pots.map((pot) => [pot.vessel, pot.judgement.verdict])).toEqual([["B", "salt buildup"], ["A", "in band"]]);
    expect([vessel, judgement?.verdict, title]).toEqual(["B", "salt buildup", "Recovery timeline: Log, B"]);
    expect(rows).toEqual([4, 6]);
  });

  it("shows the pot asked for, and judges each by its own band", () => {
    const bands: Record<string, Band | undefined> = { A: bandFor("coir"), B: undefined };
    const { pots, vessel, judgement } = reportOf({ grid, band: (pot) => bands[pot ?? ""], vessel: "B" });
    expect(pots.map((pot) => pot.vessel)).toEqual(["A"]);
    expect([vessel, judgement]).toEqual(["B", undefined]);
  });

  it("judges nothing while the ppm scale is not answered, and says what it waits for", () => {
    const inPpm = { cells: [["Date", "Runoff ppm"], [45_383, 1100], [45_386, 2600]] };
    const { judgement, pots, waitsFor } = reportOf({ grid: inPpm, band: bandFor("coir") });
    expect([judgement, pots]).toEqual([undefined, []]);
    expect(waitsFor.join()).toContain("ppm scale");
    expect(reportOf({ grid: inPpm, answers: { ppmScale: 500 }, band: bandFor("coir") }).judgement?.verdict).toBe("confirm with a second reading");
  });

  it("without a band reads and draws the pot read last", () => {
    const { pots, vessel, timeline } = reportOf({ grid });
    expect([pots, vessel, timeline.lanes.length]).toEqual([[], "B", 3]);
  });

  it("judges by today's limits alone, and draws the pot shown with those that stood before", () => {
    const wide = ownBand(ph(5.5), ph(6.5), ec25(1), ec25(8));
    const earlierOf = (pot: string | undefined) => (pot === "B" ? [{ band: bandFor("coir"), until: 45_388 }] : []);
    const { pots, timeline } = reportOf({ grid, band: wide, earlierOf, vessel: "B" });
    expect(pots).toEqual(reportOf({ grid, band: wide, vessel: "B" }).pots);
    expect(timeline.lanes[0]?.bands.map(({ limits }) => limits)).toEqual([[1.2, 3.5], [1, 8]]);
    expect(timeline.readings.map(({ flags }) => flags?.includes("runoff EC high"))).toEqual([true, true, false]);
  });
});

describe("reportOf: what keeps a log from being judged", () => {
  const { reading } = reportOf({ grid });
  const asked = (kind: LogQuestion["kind"], choices: readonly string[] = []) => {
    const question = { kind, text: `Asked: ${kind}?`, choices, columns: [2] };
    const { waitsFor, pots } = reportOf({ grid, reading: { ...reading, questions: [question] }, band: bandFor("coir") });
    expect(pots.length === 0).toBe(waitsFor.length > 0);
    return waitsFor;
  };

  it.each(["ppm scale", "EC unit", "date order", "which row is the header", "layout"] as const)("the %s, without which a reading has no value or no time", (kind) => {
    expect(asked(kind)).toEqual([`Asked: ${kind}?`]);
  });

  it.each(["volume unit", "temperature unit"] as const)("not the %s", (kind) => {
    expect(asked(kind)).toEqual([]);
  });

  it("an unknown column where it may be the runoff's EC or pH, and no other", () => {
    expect(asked("what is this column", ["input EC", "runoff EC"])).toEqual(["Asked: what is this column?"]);
    expect(asked("what is this column", ["input pH", "runoff pH"])).toEqual(["Asked: what is this column?"]);
    expect(asked("what is this column", ["input EC", "humidity"])).toEqual([]);
  });
});

describe("reportOf: which pot", () => {
  const days = [45_383, 45_386, 45_389];
  const lonely = { cells: [["Date", "EC in mS/cm", "EC drain mS/cm", "pH drain"], ...days.map((day) => [day, 2, 2.6, 6])] };
  const titleOf = (request: Parameters<typeof reportOf>[0]): string => reportOf(request).title;

  it("a log of one pot has no name to show; a sheet without one neither", () => {
    expect(reportOf({ grid: lonely }).vessel).toBeUndefined();
    expect([titleOf({ grid: lonely }), titleOf({ grid: lonely, sheetName: "" }), titleOf({ grid: lonely, sheetName: "Log" })]).toEqual(
      ["Recovery timeline", "Recovery timeline", "Recovery timeline: Log"]);
    expect(titleOf({ grid })).toBe("Recovery timeline: B");
  });

  it("a pot that the log does not name is not shown: the worst one is, or without a band the one read last", () => {
    expect(reportOf({ grid, band: bandFor("coir"), vessel: "C" })).toMatchObject({ vessel: "B", judgement: { verdict: "salt buildup" } });
    const [header = [], ...rows] = grid.cells;
    expect(reportOf({ grid: { cells: [header, ...rows.reverse()] }, band: bandFor("coir") }).vessel).toBe("B");
    expect(reportOf({ grid, vessel: "C" }).vessel).toBe("B");
    expect(reportOf({ grid, vessel: "A" }).vessel).toBe("A");
  });

  it("the one read last is the one of the last row, or the first named where that row names none", () => {
    const rows = grid.cells.slice(0, -1);
    expect(reportOf({ grid: { cells: rows } }).vessel).toBe("A");
    const unnamed = { cells: [...grid.cells, [45_390, "", 2, 2.6, 6]] };
    expect(reportOf({ grid: unnamed, band: bandFor("coir") }).pots.map(({ vessel }) => vessel)).toEqual(["B", "A"]);
    expect(reportOf({ grid: unnamed }).vessel).toBe("A");
  });

  it("each pot has its last day, the rows its judgement rests on, and its own volume", () => {
    const { pots } = reportOf({ grid, band: bandFor("coir"), containerOf: (vessel) => (vessel === "B" ? litres(10) : undefined) });
    expect(pots.map(({ vessel, lastDay }) => [vessel, lastDay])).toEqual([["B", 45_389], ["A", 45_389]]);
    expect(pots[0]?.rows).toEqual([4, 6]);
    expect(pots[0]?.judgement).not.toEqual(reportOf({ grid, band: bandFor("coir") }).pots[0]?.judgement);
    expect(pots[1]?.judgement).toEqual(reportOf({ grid, band: bandFor("coir") }).pots[1]?.judgement);
  });
});
