import { strToU8 } from "fflate";
import { describe, expect, test } from "vitest";
import { readCsv } from "../../../workbench/files/read-csv";
import { readXlsx } from "../../../workbench/files/read-xlsx";
import { head, main, rawWorkbook } from "./raw-workbook";

const sheetOf = (rows: string): Uint8Array => rawWorkbook({ sheets: [{ name: "Log", rows }] });
const cell = (inner: string): Uint8Array => sheetOf(`<row r="1"><c r="A1">${inner}</c></row>`);
const entities = '<!DOCTYPE w [<!ENTITY a "salt"><!ENTITY b "&a;&a;&a;&a;">]>';

describe("a file that sets a trap is refused in one line", () => {
  test.each<[string, Uint8Array, string]>([
    ["an array formula over every cell of a sheet", cell('<f t="array" ref="A1:XFD1048576">1+1</f>'), "fill more than 1048576 cells"],
    ["many that add up to as much", sheetOf(Array.from({ length: 9 }, (_, n) => `<row r="${n + 1}"><c r="A${n + 1}"><f t="array" ref="B1:B200000">1</f></c></row>`).join("")), "fill more than"],
    ["tags nested 300,000 deep", sheetOf("<x>".repeat(300_000) + "</x>".repeat(300_000)), "more than 200 deep"],
    ["entities that grow", rawWorkbook({ sheets: [{ name: "Log", rows: "" }], parts: { "xl/worksheets/sheet1.xml": `${head}${entities}<worksheet xmlns="${main}"><sheetData/></worksheet>` } }), "declares entities"],
    ["a cell at the far corner of the sheet beside one at the near", sheetOf('<row r="1"><c r="A1"><v>1</v></c></row><row r="1048576"><c r="XFD1048576"><v>1</v></c></row>'), "far more cells than any log"],
    ["a formula of 10,001 letters", cell(`<f>1${"+1".repeat(5000)}</f>`), "more than 8192 letters"],
    ["a sheet without a name", rawWorkbook({ sheets: [{ name: "", rows: "" }] }), "has no name"],
  ])("%s", async (_, bytes, says) => {
    await expect(readXlsx(bytes)).rejects.toThrow(says);
  });

  test.each([
    ["a row of 16,385 columns", Array.from({ length: 16_385 }, (_, n) => n).join(","), "row 1 has 16385 columns, more than the 16384 of a sheet"],
    ["a million commas", ",".repeat(1_000_001), "has more than 1000000 letters"],
    ["1,048,577 rows", "1\n".repeat(1_048_577), "it has 1048577 rows, more than the 1048576 of a sheet"],
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
