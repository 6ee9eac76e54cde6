import { strToU8 } from "fflate";
import { describe, expect, test } from "vitest";
import { computeBook } from "../../../workbench/engine/compute";
import { readCsv } from "../../../workbench/files/read-csv";
import { readXlsx } from "../../../workbench/files/read-xlsx";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { head, main, rawWorkbook, relationships } from "./raw-workbook";

const sheetOf = (rows: string): Uint8Array => rawWorkbook({ sheets: [{ name: "Log", rows }] });
const cell = (inner: string): Uint8Array => sheetOf(`<row r="1"><c r="A1">${inner}</c></row>`);
const entities = '<!DOCTYPE w [<!ENTITY a "salt"><!ENTITY b "&a;&a;&a;&a;">]>';

const halved = (bytes: Uint8Array): Uint8Array => bytes.slice(0, bytes.length / 2);
const pointer = (kind: string, target: string): string => relationships([[kind, target]]);
const pointingTo = (target: string): Uint8Array =>
  rawWorkbook({ sheets: [{ name: "Log", rows: "" }], parts: { "xl/_rels/workbook.xml.rels": pointer("worksheet", target) } });
const startingAt = (target: string): Uint8Array =>
  rawWorkbook({ sheets: [{ name: "Log", rows: "" }], parts: { "_rels/.rels": pointer("officeDocument", target) } });

describe("a file that sets a trap is refused in one line", () => {
  test.each<[string, Uint8Array, string]>([
    ["an array formula over every cell of a sheet", cell('<f t="array" ref="A1:XFD1048576">1+1</f>'), "fill more than 1048576 cells"],
    ["many that add up to as much", sheetOf(Array.from({ length: 9 }, (_, n) => `<row r="${n + 1}"><c r="A${n + 1}"><f t="array" ref="B1:B200000">1</f></c></row>`).join("")), "fill more than"],
    ["tags nested 300,000 deep", sheetOf("<x>".repeat(300_000) + "</x>".repeat(300_000)), "more than 200 deep"],
    ["entities that grow", rawWorkbook({ sheets: [{ name: "Log", rows: "" }], parts: { "xl/worksheets/sheet1.xml": `${head}${entities}<worksheet xmlns="${main}"><sheetData/></worksheet>` } }), "declares entities"],
    ["a cell at the far corner of the sheet beside one at the near", sheetOf('<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'), "far more cells than any log"],
    ["a formula of 10,001 letters", cell(`<f>1${"+1".repeat(5000)}</f>`), "more than 8192 letters"],
    ["a pointer that is no address", pointingTo("http://["), "is no place in it"],
    ["a pointer with half a letter", pointingTo("worksheets/%E0%A4%A.xml"), "is no place in it"],
    ["a pointer to nothing", pointingTo("worksheets/none.xml"), "xl/worksheets/none.xml is missing"],
    ["a pointer out of the package", pointingTo("../../../../etc/passwd"), "etc/passwd is missing"],
    ["a workbook that starts in the list of its own parts", startingAt("_rels/.rels"), "_rels/_rels/.rels.rels is missing"],
    ["1,001 sheets", rawWorkbook({ sheets: Array.from({ length: 1001 }, (_, n) => ({ name: `S${n}`, rows: "" })) }), "more than 1000"],
    ["a part that is 299 MB of blanks", rawWorkbook({ sheets: [], parts: { "xl/blanks.xml": new Uint8Array(299 * 1024 * 1024).fill(0x20) } }), "packed more than 200"],
    ["a cell right of the last column", sheetOf('<row r="1"><c r="ZZZZZZ1"><v>1</v></c></row>'), "outside the supported sheet bounds"],
    ["a row that is no number", sheetOf('<row r="x"><c r="Ax"><v>1</v></c></row>'), "outside the supported sheet bounds"],
    ["half of its bytes", halved(cell("<v>1</v>")), "its zip container cannot be read"],
    ["a sheet without a name", rawWorkbook({ sheets: [{ name: "", rows: "" }] }), "has no name"],
  ])("%s", async (_, bytes, says) => {
    await expect(readXlsx(bytes)).rejects.toThrow(says);
  });

  test.each([
    ["a row of 16,385 columns", Array.from({ length: 16_385 }, (_, n) => n).join(","), "row 1 has 16385 columns, more than the 16384 of a sheet"],
    ["a million commas", ",".repeat(1_000_001), "has more than 1000000 letters"],
    ["1,048,577 rows", "1\n".repeat(1_048_577), "it has more than the 1048576 rows of a sheet"],
    ["300 rows of 16,000 columns", `${"1,".repeat(15_999)}1\n`.repeat(300), "far more cells than any log"],
    ["ten million blank lines", `1${"\n".repeat(10_000_000)}`, "it has more than the 1048576 rows of a sheet"],
  ])("CSV: %s", (_, text, says) => {
    expect(() => readCsv(strToU8(text), "log")).toThrow(says);
  });

  test("a cell of 40,000 letters is read as the text it is, in a workbook and in CSV", async () => {
    const long = "x".repeat(40_000);
    const book = await readXlsx(sheetOf(`<row r="1"><c r="A1" t="inlineStr"><is><t>${long}</t></is></c></row>`));
    expect(book.sheets[0]?.cells.get("A1")?.value).toBe(long);
    expect(readCsv(strToU8(`EC,${long}\n`), "log").sheets[0]?.cells.get("B1")?.value).toBe(long);
  });
});

test("formulas that share themselves, in a ring and with no first one, are refused or left as they are", async () => {
  const ring = '<row r="1"><c r="A1"><f t="shared" ref="A1:A2" si="0">A2</f></c></row><row r="2"><c r="A2"><f t="shared" ref="A1:A2" si="0">A1</f></c></row>';
  const orphan = '<row r="3"><c r="B3"><f t="shared" si="7"/><v>5</v></c></row>';
  const { host, metadata } = loadBundle();
  const [sheet] = await computeBook(await readXlsx(sheetOf(ring + orphan)), host, metadata);
  const itself = { error: "#VALUE!", reason: expect.stringContaining("reads its own answer") as string };
  expect(Object.fromEntries(sheet?.values ?? [])).toEqual({ A1: itself, A2: itself });
});
