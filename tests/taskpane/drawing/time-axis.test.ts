import { DOMParser } from "@xmldom/xmldom";
import { describe, expect, it } from "vitest";
import { bandFor, ec25, type LogRow, solutionCelsius, timeline } from "../../../src/index";
import { widthOf } from "../../../taskpane/drawing/markup";
import { drawTimeline } from "../../../taskpane/drawing/timeline-drawing";

const row: LogRow = {
  row: 0, day: undefined, vessel: undefined, inputEc: undefined, inputPh: undefined, runoffEc: undefined, runoffPh: undefined,
  inputLitres: undefined, runoffLitres: undefined, solutionCelsius: undefined, airCelsius: undefined, humidityPercent: undefined,
  notes: undefined, events: [],
};

/** A reading a day over so many days from 1 March 2026. */
const log = (days: number): LogRow[] => Array.from({ length: days }, (_, i) => ({ ...row, row: i, day: 46_082 + i, runoffEc: ec25(2 + (i % 5) / 10) }));

/** Where the dates of the axis begin and end, in pixels. */
function dates(days: number, width: number): (readonly [from: number, to: number])[] {
  const { svg, plot } = drawTimeline(timeline(log(days), { band: bandFor("coir") }), { width, theme: "light", title: "T1" });
  const texts = [...new DOMParser().parseFromString(svg, "image/svg+xml").getElementsByTagName("text")];
  return texts.filter((each) => Number(each.getAttribute("y")) > plot.bottom + 10).map((each) => {
    const [x, wide] = [Number(each.getAttribute("x")), widthOf(each.textContent ?? "", 11)];
    const anchor = each.getAttribute("text-anchor");
    const from = anchor === "end" ? x - wide : anchor === "middle" ? x - wide / 2 : x;
    return [from, from + wide] as const;
  });
}

describe("the dates under the timeline", () => {
  it("name each day once, however wide: six days at 640 px are not named by their noons as well", () => {
    const { svg } = drawTimeline(timeline(log(6)), { width: 640, theme: "light", title: "T1" });
    const texts = [...new DOMParser().parseFromString(svg, "image/svg+xml").getElementsByTagName("text")].map(({ textContent }) => textContent ?? "");
    expect(texts.filter((text) => / Mar$/.test(text))).toEqual(["1 Mar", "2 Mar", "3 Mar", "4 Mar", "5 Mar", "6 Mar"]);
  });

  it.each([320, 640])("of a log of days name days, however few they are; hours where a reading has one (%i px)", (width) => {
    const named = (rows: readonly LogRow[]): string[] => {
      const { svg } = drawTimeline(timeline(rows), { width, theme: "light", title: "T1" });
      return [...new DOMParser().parseFromString(svg, "image/svg+xml").getElementsByTagName("text")]
        .map(({ textContent }) => textContent ?? "").filter((text) => / Mar( \d\d:\d\d)?$/.test(text));
    };
    expect(named(log(3))).toEqual(["1 Mar", "2 Mar", "3 Mar"]);
    expect(named(log(1))).toEqual(["1 Mar"]);
    const atEight = log(3).map((each, i) => ({ ...each, day: 46_082 + i / 2 + 1 / 3 }));
    expect(named(atEight).length).toBeGreaterThan(0);
    expect(named(atEight).filter((text) => !/:\d\d$/.test(text))).toEqual([]);
  });

  it("stand under the root zone, under the plant and under the air: three times", () => {
    const rows = log(5).map((each) => ({ ...each, plant: { posture: 1 }, solutionCelsius: solutionCelsius(20) }));
    const { svg } = drawTimeline(timeline(rows), { width: 320, theme: "light", title: "T1" });
    const texts = [...new DOMParser().parseFromString(svg, "image/svg+xml").getElementsByTagName("text")].map(({ textContent }) => textContent);
    expect(texts.filter((text) => text === "3 Mar")).toHaveLength(3);
    expect(texts.indexOf("plant trouble, of 3")).toBeGreaterThan(-1);
  });

  it.each([2, 5, 12, 14, 31, 60, 75, 200, 400, 1000, 4000])("%i days at 296, 320, 350 and 640 px: two dates at least, none meets another, none leaves the picture", (days) => {
    for (const width of [296, 320, 350, 640]) {
      const places = dates(days, width);
      expect(places.length).toBeGreaterThanOrEqual(2);
      places.forEach(([from, to], i) => {
        expect(from).toBeGreaterThanOrEqual(0);
        expect(to).toBeLessThanOrEqual(width);
        if (i > 0) expect(from).toBeGreaterThan(places[i - 1]?.[1] ?? 0);
      });
    }
  });
});
