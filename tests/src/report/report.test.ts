import { describe, expect, it } from "vitest";
import { type Band, bandFor, ec25, ownBand, ph, reportOf } from "../../../src/index";

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
