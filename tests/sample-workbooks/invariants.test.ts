import { describe, expect, it } from "vitest";
import { committed, committedWorkbooks } from "./committed";
import { invariants } from "./invariants";
import { partsOf, type Parts } from "./parts";

const named = (name: string) => {
  const invariant = invariants[name];
  if (invariant === undefined) throw new Error(`no invariant "${name}"`);
  return invariant;
};

describe.each(committedWorkbooks)("%s", (file) => {
  const parts = partsOf(committed(file));
  it.each(Object.keys(invariants))("%s", (name) => {
    expect(named(name)(parts)).toEqual([]);
  });
});

const log = "xl/worksheets/sheet1.xml";
const table = "xl/tables/table1.xml";
const book = "xl/workbook.xml";

/** For each invariant the smallest damage that it must notice: the part, what stands there, what replaces it. */
const damages: readonly (readonly [invariant: string, part: string, from: RegExp, to: string, file?: string])[] = [
  ["no formula holds one of our functions under its typed name", log, /_xldudf_RUNOFF_SALTRATIO/, "RUNOFF.SALTRATIO"],
  ["no formula holds one of our functions under its typed name", table, /_xldudf_RUNOFF_PHSHIFT/, "RUNOFF.PHSHIFT"],
  ["every formula has a cached value", log, /<\/f><v>[^<]*<\/v>/, "</f>"],
  ["every numeric cached value is a finite number", log, /<\/f><v>[\d.]+<\/v>/, "</f><v>NaN</v>"],
  ["a cell with one of our functions is a dynamic array, and only such a cell or a spill", log, / cm="1"/, ""],
  ["a cell with one of our functions is a dynamic array, and only such a cell or a spill", log, /<f t="array" ref="K2">/, "<f>"],
  ["metadata.xml holds what cm points at, and the workbook relates to it", "xl/metadata.xml", /fDynamic="1"/, 'fDynamic="0"'],
  ["metadata.xml holds what cm points at, and the workbook relates to it", "xl/_rels/workbook.xml.rels", /sheetMetadata/, "theme"],
  ["the calculation id is 191029 or later and nothing forces a recalculation", book, /calcId="191029"/, 'calcId="171027"'],
  ["the calculation id is 191029 or later and nothing forces a recalculation", book, /<calcPr /, '<calcPr fullCalcOnLoad="1" '],
  ["cells and rows stand in reading order, each once", log, /<c r="A3"/, '<c r="A2"'],
  ["every cell that a formula spills into is there and holds no formula", log, /ref="N2"/, 'ref="N2:P2"'],
  ["a table is as wide as its columns, and its header cells say the columns' names", table, /name="Feed EC"/, 'name="Feed EC "'],
  ["a table is as wide as its columns, and its header cells say the columns' names", table, /<table ([^>]*)ref="A1:N/, '<table $1ref="A1:O'],
  ["a calculated column's cells hold the column's formula", log, /(<f t="array" ref="L3">[^<]*)<\/f>/, "$1+0</f>"],
  ["every structured reference names a table and a column that exist", log, /BenchLog\[\[#This Row\],\[Feed L\]\]/, "BenchLog[[#This Row],[Feed litres]]"],
  ["every style and format a cell or rule points at is in styles.xml", log, /dxfId="0"/, 'dxfId="7"'],
  ["every style and format a cell or rule points at is in styles.xml", log, / s="\d+"/, ' s="99"'],
  ["every note has a hidden box on its own cell, which the sheet points at", "xl/comments1.xml", /ref="B28"/, 'ref="B27"', "flush-sheet.xlsx"],
  ["every note has a hidden box on its own cell, which the sheet points at", "xl/drawings/vmlDrawing1.vml", /<x:Row>27/, "<x:Row>26", "flush-sheet.xlsx"],
  ["every note has a hidden box on its own cell, which the sheet points at", log, /<legacyDrawing [^>]*>/, "", "flush-sheet.xlsx"],
  ["a list to choose from and a hint keep to the 255 characters that the host takes", log, /prompt="/, `prompt="${"a".repeat(255)}`, "flush-sheet.xlsx"],
  ["a list to choose from and a hint keep to the 255 characters that the host takes", log, /coir,peat/, `coir,${"a".repeat(255)},peat`, "flush-sheet.xlsx"],
  ["no conditional format, validation or defined name calls one of our functions", log, /<formula>/, "<formula>_xldudf_RUNOFF_PPM(1,500)+"],
  ["no conditional format, validation or defined name calls one of our functions", book, /(<definedName name="Band">)[^<]*/, "$1RUNOFF.PPM(1,500)"],
];

describe("each invariant notices its damage", () => {

  it("has a damage for every invariant", () => {
    expect([...new Set(damages.map(([name]) => name))].sort()).toEqual(Object.keys(invariants).sort());
  });

  it.each(damages.map(([name, part, from, to, file = "salt-buildup.xlsx"]) => [name, part, from, to, file] as const))("%s: damaged in %s at %s", (name, part, from, to, file) => {
    const sound = partsOf(committed(file));
    const before = sound[part] ?? "";
    const damaged: Parts = { ...sound, [part]: before.replace(from, to) };
    expect(damaged[part]).not.toBe(before);
    expect(named(name)(sound)).toEqual([]);
    expect(named(name)(damaged)).not.toEqual([]);
  });
});
