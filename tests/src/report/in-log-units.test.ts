import { describe, expect, it } from "vitest";
import { bandFor, type LogGrid, reportOf } from "../../../src/index";

const said = (grid: LogGrid, medium: "coir" | "water culture" = "coir"): string => {
  const { judgement } = reportOf({ grid, band: bandFor(medium) });
  return [...(judgement?.course ?? []).map(({ says }) => says), ...(judgement?.reasons ?? [])].join("\n");
};

const salty = (header: string, rows: readonly (readonly number[])[]): LogGrid => ({
  cells: [header.split(","), ...rows.map(([feed, runoff], at) => [46_300 + 3 * at, feed ?? null, runoff ?? null])],
});

// Figures a grower would work out by hand: ppm = mS/cm x the scale of the meter; 1 US gallon is 3.785 L; F = 1.8 C + 32 [nist-handbook-44].
describe("advice in the log's own units", () => {
  it("says ppm of the log's scale beside mS/cm", () => {
    const rows = [[900, 2200], [900, 2400], [900, 2600]] as const;
    const text = said(salty("Date,Feed ppm (500),Runoff ppm (500)", rows));
    expect(text).toContain("5.2 mS/cm (2600 ppm)");
    expect(text).toContain("4.8 mS/cm (2400 ppm)");
    expect(text).not.toMatch(/mS\/cm(?! \(\d)/);
  });

  it("says it in the 700 scale where the log is kept in it", () => {
    const rows = [[1260, 3080], [1260, 3360], [1260, 3640]] as const;
    expect(said(salty("Date,Feed ppm (700),Runoff ppm (700)", rows))).toContain("5.2 mS/cm (3640 ppm)");
  });

  it("says uS/cm, and a feed to be mixed too", () => {
    const text = said(salty("Date,Feed EC (uS/cm),Runoff EC (uS/cm)", [[1800, 4400], [1800, 4800], [1800, 5200]]));
    expect(text).toContain("5.2 mS/cm (5200 uS/cm)");
    expect(text).toMatch(/EC 0\.5 to 1 \(500 to 1000 uS\/cm\)/);
  });

  it("leaves a log in mS/cm, litres and C as it is", () => {
    const text = said(salty("Date,Feed EC (mS/cm),Runoff EC (mS/cm)", [[1.8, 4.4], [1.8, 4.8], [1.8, 5.2]]));
    expect(text).toContain("5.2 mS/cm:");
    expect(text).not.toMatch(/\(\d[\d.]* (?:ppm|uS|gal|F)/);
  });

  it("says gallons beside litres", () => {
    const cells = [
      ["Date", "Feed EC (mS/cm)", "Runoff EC (mS/cm)", "Feed (gal)", "Runoff (gal)"],
      ...[4.4, 4.8, 5.2].map((ec, at) => [46_300 + 3 * at, 1.8, ec, 0.5, 0.02]),
    ];
    expect(said({ cells })).toMatch(/about 1\.9 L \(0\.5 gal\)/);
  });

  it("says F beside C", () => {
    const cells = [
      ["Date", "Tank EC (mS/cm)", "Tank pH", "Water temp (F)", "Notes"],
      ...[72, 79, 81].map((temperature, at) => [46_300 + at, 1.6, 5.9, temperature, at === 2 ? "basil droops" : ""]),
    ];
    const text = said({ cells }, "water culture");
    expect(text).toContain("27 C (81 F)");
    expect(text).toContain("18 to 22 C (64 to 72 F)");
  });
});
