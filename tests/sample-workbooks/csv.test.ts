import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import { csvOf } from "../../sample-workbooks/csv";
import { sampleWorkbooks } from "../../sample-workbooks/index";
import { gridOf, typed } from "../../sample-workbooks/workbooks/grid";
import { committed } from "./committed";

describe("salt-buildup.csv", () => {
  const rows = parse(new TextDecoder().decode(committed("salt-buildup.csv")));

  it("has the ten typed columns and none of the computed ones", () => {
    expect(rows[0]).toEqual(["Date", "Pot", "Feed EC", "Runoff EC", "Feed pH", "Runoff pH", "Feed L", "Runoff L", "Solution C", "Notes"]);
  });

  it("has each row of the workbook's log, the first on 5 January 2026 with 1.96 in and 1.78 out", () => {
    const log = sampleWorkbooks["salt-buildup"]?.sheets[0];
    expect(rows[1]?.slice(0, 4)).toEqual(["2026-01-05", "Pepper 2", "1.96", "1.78"]);
    expect(rows).toHaveLength(Number(/\d+$/.exec(log?.tables?.[0]?.ref ?? "")?.[0]));
  });
});

describe("csvOf", () => {
  it("quotes what holds a comma, a quote or a line break, so that a reader gets it back", () => {
    const texts = ["plain", "tips, brown", 'the "good" pen', "two\nlines", " spaces "];
    const written = csvOf({ name: "Log", widths: texts.map(() => 10), cells: gridOf([texts.map((text) => typed(text)), texts.map((text) => typed(text))]) });
    expect(parse(written)).toEqual([texts, texts]);
  });
});
