import { DOMParser } from "@xmldom/xmldom";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { bandFor, type EarlierBand, ec25, type LogRow, ownBand, ph, timeline } from "../../../src/index";
import { nearest } from "../../../taskpane/drawing/nearest";
import { widthOf } from "../../../taskpane/drawing/markup";
import { type ThemeName, themes } from "../../../taskpane/drawing/themes";
import { dayInWords } from "../../../taskpane/drawing/time-axis";
import { type Drawing, drawTimeline } from "../../../taskpane/drawing/timeline-drawing";

const empty: LogRow = {
  row: 0, day: undefined, vessel: undefined, inputEc: undefined, inputPh: undefined, runoffEc: undefined, runoffPh: undefined,
  inputLitres: undefined, runoffLitres: undefined, solutionCelsius: undefined, airCelsius: undefined, humidityPercent: undefined,
  notes: undefined, events: [],
};
/** 46300 is 5 October 2026 in the sheet's 1900 system. */
const firstDay = 46300;
const rows = (count: number, step = 1): LogRow[] =>
  Array.from({ length: count }, (_, place) => ({
    ...empty,
    row: place + 1,
    day: firstDay + place * step,
    inputEc: ec25(1.6),
    runoffEc: ec25(2 + (place % 7) / 10),
    inputPh: ph(5.8),
    runoffPh: ph(6),
  }));
const draw = (log: readonly LogRow[], width = 320, theme: ThemeName = "light"): Drawing =>
  drawTimeline(timeline(log, { band: bandFor("coir") }), { width, theme, title: "Bench 2" });
const textsIn = (svg: string): string[] =>
  [...new DOMParser().parseFromString(svg, "image/svg+xml").getElementsByTagName("text")].map(({ textContent }) => textContent ?? "");

describe("drawTimeline: degenerate logs", () => {
  it.each([
    ["no rows", []],
    ["one row", rows(1)],
    ["one day, five readings", rows(5, 0)],
    ["equal values", rows(30).map((row) => ({ ...row, runoffEc: ec25(2) }))],
    ["dates reversed", rows(30).reverse()],
    ["ten years, one reading a day", rows(3650)],
    ["10,000 rows", rows(10_000)],
    ["no dates at all", rows(12).map((row) => ({ ...row, day: undefined }))],
  ] as const)("%s: well-formed, no NaN or Infinity, nothing left of or right of the picture", (_, log) => {
    const { svg, width, height } = draw(log);
    const root = new DOMParser().parseFromString(svg, "image/svg+xml").documentElement;
    expect(root?.getAttribute("viewBox")).toBe(`0 0 ${width} ${Math.round(height)}`);
    expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
    const across = [...svg.matchAll(/ x[12]?="([-\d.]+)"/g)].map(([, x]) => Number(x));
    expect(across.every((x) => x >= 0 && x <= width)).toBe(true);
  });

  it("reversed rows draw the same bytes as ordered ones, and a second drawing the same as the first", () => {
    expect(draw([...rows(60)].reverse()).svg).toBe(draw(rows(60)).svg);
    expect(draw(rows(60)).svg).toBe(draw(rows(60)).svg);
  });

  it("10,000 rows are thinned to a picture of less than 200 kB", () => {
    expect(draw(rows(10_000), 450).svg.length).toBeLessThan(200_000);
  });
});

describe("drawTimeline: what it shows", () => {
  it("names each lane with its unit and tells its trend in words beside it", () => {
    const texts = textsIn(draw(rows(20)).svg);
    expect(texts).toEqual(expect.arrayContaining(["EC, mS/cm", "pH", "salt ratio"]));
    expect(texts).toContain("no clear trend (15 readings, last 14 days)");
  });

  it("320 px wide, every caption ends within the picture, at 0.56 of its height a letter", () => {
    const falling = rows(20).map((row, place) => ({ ...row, runoffEc: ec25(12.5 - place / 2), runoffPh: ph(5 + place / 10), events: place === 9 ? [{ kind: "flush" as const, words: "" }] : [] }));
    for (const log of [rows(20), falling, rows(2), rows(300), falling.map((row) => ({ ...row, day: undefined }))]) {
      const root = new DOMParser().parseFromString(draw(log).svg, "image/svg+xml");
      const tooLong = [...root.getElementsByTagName("text")].filter((text) => {
        const [at, width] = [Number(text.getAttribute("x")), widthOf(text.textContent ?? "", Number(text.getAttribute("font-size")))];
        const [before, after] = { start: [0, 1], middle: [0.5, 0.5], end: [1, 0] }[text.getAttribute("text-anchor") ?? "start"] ?? [0, 1];
        return at - width * (before ?? 0) < 0 || at + width * (after ?? 1) > 320;
      });
      expect(tooLong.map(({ textContent }) => textContent)).toEqual([]);
    }
  });

  it("input differs from runoff by line and mark: dashes with hollow circles, a full line with filled squares", () => {
    const { svg } = draw(rows(10));
    const input = themes.light.input;
    expect(svg).toMatch(new RegExp(`<path d="[^"]+" fill="none" stroke="${input}" stroke-width="1.5" stroke-dasharray="5 3"/>`));
    expect(svg).toMatch(new RegExp(`<path d="M[^"]*a[^"]*" fill="${themes.light.paper}" stroke="${input}"`));
    expect(svg).toMatch(new RegExp(`<path d="M[^"]*h[^"]*" fill="${themes.light.runoff}" stroke="${themes.light.runoff}"`));
  });

  it("600 readings on 270 pixels are no solid block: a shade from the lowest to the highest, a median line, and words for it", () => {
    const { svg } = draw(rows(600));
    expect(svg.match(/fill-opacity="0.25"/g)).toHaveLength(5);
    expect(textsIn(svg)).toContain("shaded: lowest to highest");
    expect(draw(rows(300)).svg).not.toContain("fill-opacity");
  });

  it("an event has its name above the lanes; two on neighbouring days do not run into one another", () => {
    const log = rows(60).map((row, place) =>
      place === 20 || place === 21 ? { ...row, events: [{ kind: "flush" as const, words: "flushed" }] } : row,
    );
    const root = new DOMParser().parseFromString(draw(log).svg, "image/svg+xml");
    const names = [...root.getElementsByTagName("text")].filter(({ textContent }) => textContent === "flush");
    expect(new Set(names.map((name) => name.getAttribute("y"))).size).toBe(2);
  });

  it("the description gives a reader who cannot see it the span, the trends and the events", () => {
    const { description } = draw(rows(20));
    expect(description).toContain("20 readings from 5 Oct 2026 to 24 Oct 2026");
    expect(description).toContain("EC: no clear trend");
  });

  it("the three looks differ in colours only", () => {
    const bare = (svg: string): string => svg.replaceAll(/(fill|stroke)="[^"]*"/g, "");
    const looks = (["light", "dark", "contrast"] as const).map((theme) => bare(draw(rows(20), 320, theme).svg));
    expect(new Set(looks).size).toBe(1);
  });

  it("dayInWords: day 46300 is 5 Oct 2026, and 46300.5 is noon of it, in every time zone", () => {
    expect([dayInWords(46300), dayInWords(46300.5)]).toEqual(["5 Oct 2026", "5 Oct 2026 12:00"]);
  });
});

describe("drawTimeline: limits that changed", () => {
  const later = (until: number): EarlierBand[] => [{ band: bandFor("coir"), until }];
  const own = ownBand(ph(5.5), ph(6.5), ec25(1), ec25(8));
  const drawn = (earlier: readonly EarlierBand[], log: readonly LogRow[] = rows(20), width = 320): Drawing =>
    drawTimeline(timeline(log, { band: own, earlier }), { width, theme: "light", title: "Bench 2" });
  const parts = ({ svg }: Drawing, name: string) => [...new DOMParser().parseFromString(svg, "image/svg+xml").getElementsByTagName(name)];
  const tintsOf = (drawing: Drawing) => parts(drawing, "rect").filter((rect) => rect.getAttribute("fill") === themes.light.band)
    .map((rect) => ["x", "y", "width", "height"].map((name) => Number(rect.getAttribute(name))));

  it("the tint steps at the day of the change: coir's narrow one up to it, the wide one from it to the right end", () => {
    const drawing = drawn(later(firstDay + 10));
    const [before, after] = tintsOf(drawing);
    const step = drawing.x(firstDay + 10);
    expect(before?.[0]).toBe(drawing.plot.left);
    expect((before?.[0] ?? 0) + (before?.[2] ?? 0)).toBeCloseTo(step, 0);
    expect(after?.[0]).toBeCloseTo(step, 0);
    expect((after?.[0] ?? 0) + (after?.[2] ?? 0)).toBeCloseTo(drawing.plot.right, 0);
    // 8 to 1 spans 7, 3.5 to 1.2 spans 2.3.
    expect((after?.[3] ?? 0) / (before?.[3] ?? 1)).toBeCloseTo(7 / 2.3, 1);
    expect(tintsOf(drawing)).toHaveLength(3);
  });

  it("small labels tell today's limits with the day they began, and the earlier ones at their end; the pH, unchanged, has neither", () => {
    const texts = textsIn(drawn(later(firstDay + 10)).svg);
    expect(texts).toContain("- - band 1 to 8 from 15 Oct");
    expect(texts).toContain("1.2 to 3.5");
    expect(texts).toContain("- - band 5.5 to 6.5");
  });

  it("a step near the left end has no room for the earlier figures: they are left out, never over the lines", () => {
    expect(textsIn(drawn(later(firstDay + 1)).svg)).not.toContain("1.2 to 3.5");
  });

  it("limits that begin with the newest reading are seen at the right end, where that reading stands", () => {
    const drawing = drawn(later(firstDay + 19));
    const [before, after] = tintsOf(drawing);
    expect(after?.[2]).toBeGreaterThanOrEqual(5);
    expect((before?.[0] ?? 0) + (before?.[2] ?? 0)).toBeCloseTo(after?.[0] ?? 0, 0);
    expect(tintsOf(drawn(later(firstDay + 20)))).toHaveLength(2);
  });

  it("the earlier figures stand where no reading is: a runoff that runs along the upper edge moves them", () => {
    const at = (ec: number): number => {
      const log = rows(20).map((row) => ({ ...row, runoffEc: ec25(ec) }));
      const [label] = parts(drawn(later(firstDay + 10), log), "text").filter(({ textContent }) => textContent === "1.2 to 3.5");
      return Number(label?.getAttribute("y"));
    };
    expect(at(3.7)).toBeGreaterThan(at(2.2) + 10);
  });

  it("over years the day has its year, and the captions of a lane do not meet at 320 px", () => {
    const log = rows(900);
    const exact = ownBand(ph(5.25), ph(6.75), ec25(1.25), ec25(3.55));
    const model = timeline(log, { band: exact, earlier: later(firstDay + 600) });
    const texts = parts(drawTimeline(model, { width: 320, theme: "light", title: "Bench 2" }), "text");
    const right = texts.filter(({ textContent }) => textContent?.startsWith("- - band") === true);
    expect(right[0]?.textContent).toBe("- - band 1.25 to 3.55 from 27 May 2028");
    for (const caption of right) {
      const beside = texts.filter((text) => text !== caption && text.getAttribute("y") === caption.getAttribute("y"));
      const from = Number(caption.getAttribute("x")) - widthOf(caption.textContent ?? "", 11);
      for (const text of beside) expect(Number(text.getAttribute("x")) + widthOf(text.textContent ?? "", 12), text.textContent ?? "").toBeLessThan(from);
    }
  });

  it("the 24 to 48 h after a flush stand over the tint of the band, not under it", () => {
    const log = rows(20).map((row, place) => ({ ...row, events: place === 9 ? [{ kind: "flush" as const, words: "flushed" }] : [] }));
    const { svg } = drawn([], log);
    expect(svg.indexOf(`fill="${themes.light.watch}" stroke="${themes.light.event}" stroke-width="0.5" stroke-dasharray="3 2"/><path`))
      .toBeGreaterThan(svg.lastIndexOf(`fill="${themes.light.band}"`));
  });

  it("is told in words too, for those who do not see the step", () => {
    expect(drawn(later(firstDay + 10)).description).toContain("EC limits: 1.2 to 3.5 before 15 Oct 2026, 1 to 8 from 15 Oct 2026.");
    expect(drawn([]).description).not.toContain("limits:");
  });
});

describe("nearest", () => {
  it("the pixel of each of 60 readings leads back to that reading, and pixels beyond the ends to the ends", () => {
    const model = timeline(rows(60));
    const drawing = drawTimeline(model, { width: 450, theme: "light", title: "" });
    expect(model.readings.map(({ day }) => nearest(model.readings, drawing, drawing.x(day)))).toEqual(model.readings.map((_, place) => place));
    expect([nearest(model.readings, drawing, -50), nearest(model.readings, drawing, 9999)]).toEqual([0, 59]);
  });
});

/** WCAG 2.2 relative luminance and contrast ratio. */
const luminance = (hex: string): number => {
  const [r = 0, g = 0, b = 0] = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y);
  return (light + 0.05) / (dark + 0.05);
};

describe("themes", () => {
  it("WCAG's own example: black on white is 21:1", () => {
    expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 9);
  });

  it.each(["light", "dark"] as const)("%s: text keeps 4.5:1 and marks 3:1 against the paper and the band (WCAG 2.2, 1.4.3 and 1.4.11)", (name) => {
    const theme = themes[name];
    for (const text of [theme.ink, theme.faintInk, theme.event, theme.bandEdge]) expect(contrast(text, theme.paper)).toBeGreaterThanOrEqual(4.5);
    expect(contrast(theme.bandEdge, theme.band)).toBeGreaterThanOrEqual(4.5);
    for (const mark of [theme.input, theme.runoff]) {
      for (const ground of [theme.paper, theme.band, theme.watch]) expect(contrast(mark, ground)).toBeGreaterThanOrEqual(3);
    }
  });
});

describe("words from the sheet in the picture", () => {
  it("never become markup, whatever the title says", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary" }), (said) => {
        const hostile = `</title><script>alert(1)</script>${said}`;
        const { svg } = drawTimeline(timeline(rows(3)), { width: 320, theme: "light", title: hostile });
        const root = new DOMParser().parseFromString(svg, "image/svg+xml");
        expect(root.getElementsByTagName("script")).toHaveLength(0);
        expect(root.getElementsByTagName("title")[0]?.textContent).toContain("<script>alert(1)</script>");
      }),
    );
  });
});
