import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import { bandFor, ec25, type LogRow, ownBand, ph, timeline, type TimelineLane } from "../../../src/index";
import { drawSmallPot, sharedScale } from "../../../taskpane/drawing/small-pot";

const empty: LogRow = {
  row: 0, day: undefined, vessel: undefined, inputEc: undefined, inputPh: undefined, runoffEc: undefined, runoffPh: undefined,
  inputLitres: undefined, runoffLitres: undefined, solutionCelsius: undefined, airCelsius: undefined, humidityPercent: undefined,
  notes: undefined, events: [],
};

/** The EC lane of a pot whose runoff reads as given, day by day. */
function laneOf(...runoff: readonly number[]): TimelineLane {
  const rows = runoff.map((value, row) => ({ ...empty, row, day: 46_082 + row, runoffEc: ec25(value) }));
  const [lane] = timeline(rows, { band: bandFor("coir") }).lanes;
  if (lane === undefined) throw new Error("no lane");
  return lane;
}

describe("pots side by side", () => {
  const [salty, well] = [laneOf(6, 6.5, 7), laneOf(2, 2.1)];
  const scale = sharedScale([salty, well]);
  const lineOf = (lane: TimelineLane): { readonly edges: string[]; readonly texts: (string | null)[] } => {
    const root = new DOMParser().parseFromString(drawSmallPot(lane, scale, { width: 140, theme: "light", title: "<b>" }), "image/svg+xml");
    return {
      edges: [...root.getElementsByTagName("line")].map((line) => line.getAttribute("y1") ?? ""),
      texts: [...root.getElementsByTagName("text"), ...root.getElementsByTagName("title")].map(({ textContent }) => textContent),
    };
  };

  it("share one scale: from day 46082 to 46084, from coir's low limit of 1.2 to the highest reading of 7", () => {
    expect(scale).toEqual({ days: [46_082, 46_084], values: [1.2, 7] });
    expect(lineOf(salty).edges).toEqual(lineOf(well).edges);
  });

  it("limits that changed step in the small picture too: two stretches, four edges and the wider scale", () => {
    const rows = [2, 3, 4].map((value, row) => ({ ...empty, row, day: 46_082 + row, runoffEc: ec25(value) }));
    const own = ownBand(ph(5.5), ph(6.5), ec25(1), ec25(8));
    const [lane] = timeline(rows, { band: own, earlier: [{ band: bandFor("coir"), until: 46_083 }] }).lanes;
    expect(sharedScale(lane === undefined ? [] : [lane]).values).toEqual([1, 8]);
    expect(lane === undefined ? [] : lineOf(lane).edges).toHaveLength(4);
  });

  it("each shows its last figure, and a name never becomes markup", () => {
    expect([lineOf(salty).texts, lineOf(well).texts]).toEqual([["7.00", "<b>"], ["2.10", "<b>"]]);
  });
});
