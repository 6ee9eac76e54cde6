import { describe, expect, it } from "vitest";
import { bandFor, reportOf } from "../../src/index";
import { type Findings } from "../../workbench/timeline/findings";
import { logGrids } from "../../workbench/timeline/log-grid";
import { shownOf } from "../../workbench/timeline/shown";
import { bookOf } from "./book-of";

type Cells = Record<string, string | number>;

/** Cells of a log of runoff EC from a day on; more columns behind. */
const log = (day: number, ...ecs: readonly number[]): Cells =>
  Object.fromEntries([["A1", "Date"], ["B1", "Runoff EC"], ...ecs.flatMap((ec, at) => [[`A${at + 2}`, day + at], [`B${at + 2}`, ec]])] as [string, string | number][]);
const findingsOf = (sheets: Record<string, Cells>): Findings[] =>
  logGrids(bookOf(sheets)).map((placed) => ({ file: "book.xlsx", placed, report: reportOf({ grid: placed.grid, band: bandFor("coir") }) }));
const shown = (sheets: Record<string, Cells>, pot?: string): string => shownOf(findingsOf(sheets), pot).placed.sheet;
const readMe = { A1: "How we keep this log", A2: "Measure EC in and EC runoff every morning." };

describe("a book of several logs", () => {
  it("is read from its first log, past a Read me and an empty sheet", () => {
    const sheets = { "Read me": readMe, Empty: {}, Log: log(45_778, 2.4, 2.5) };
    expect(findingsOf(sheets).map(({ placed }) => placed.sheet)).toEqual(["Log"]);
  });

  it("of tabs that are a pot each shows the worst, unless a pot is asked for by its tab", () => {
    // 4.6 and 4.8 mS/cm stand above coir's band, 2.0 and 2.1 within it: data/bands.
    const pots = { "Tomato 1": log(45_778, 2, 2.1), "Pepper 1": log(45_778, 4.6, 4.8) };
    expect([shown(pots), shown(pots, "Tomato 1")]).toEqual(["Pepper 1", "Tomato 1"]);
  });

  it("of tabs whose days follow each other shows the first", () => {
    expect(shown({ "Week 18": log(45_778, 2, 2.1), "Week 19": log(45_785, 4.6, 4.8) })).toBe("Week 18");
  });

  it("without any log gives its first sheet, to be asked about", () => {
    expect(findingsOf({ "Read me": readMe, More: readMe }).map(({ placed }) => placed.sheet)).toEqual(["Read me"]);
  });

  it("counts 1 hidden row and names no column hidden that is not", () => {
    const book = bookOf({ Log: log(45_778, 2.4, 2.5, 2.6) });
    const [placed] = logGrids({ ...book, sheets: book.sheets.map((sheet) => ({ ...sheet, hiddenRows: new Set([2]) })) });
    expect([placed?.grid.cells.length, placed?.grid.hiddenRows, placed?.grid.hiddenColumns]).toEqual([3, 1, []]);
  });
});
