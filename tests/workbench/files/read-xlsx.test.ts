import { expect, test } from "vitest";
import type { BookCell } from "../../../workbench/book";
import { patchXlsx } from "../../../workbench/files/patch-xlsx";
import { readXlsx } from "../../../workbench/files/read-xlsx";
import { head, main, rawWorkbook, type RawWorkbook } from "./raw-workbook";

async function cellsOf(rows: string, more: Partial<RawWorkbook> = {}): Promise<Record<string, BookCell>> {
  const { sheets } = await readXlsx(rawWorkbook({ sheets: [{ name: "Log", rows }], ...more }));
  return Object.fromEntries(sheets[0]?.cells ?? []);
}

test("numbers, text of three kinds, truth, errors and dates are read as what they are", async () => {
  const rows = `<row r="1"><c r="A1"><v>1.305</v></c><c r="B1" t="s"><v>0</v></c><c r="C1" t="inlineStr"><is><t>12</t></is></c><c r="D1" t="b"><v>1</v></c><c r="E1" t="e"><v>#N/A</v></c><c r="F1" s="1"><v>46351.354166666664</v></c><c r="G1" s="2"><v>2.4</v></c><c r="H1" t="str"><f>A1&amp;""</f><v>a_x000D_b</v></c></row>`;
  expect(await cellsOf(rows, { sharedStrings: ["coir"] })).toEqual({
    A1: { value: 1.305 },
    B1: { value: "coir" },
    C1: { value: "12" },
    D1: { value: true },
    E1: { value: { error: "#N/A" } },
    F1: { value: 46351.354166666664, numberFormat: "yyyy\\-mm\\-dd" },
    G1: { value: 2.4, numberFormat: '0.0" mS"' },
    H1: { value: "a\rb", formula: 'A1&""', fixedTo: "H1" },
  });
});

test("a serial number stays the same under 1904 dates, and the book says so", async () => {
  const bytes = rawWorkbook({ sheets: [{ name: "Log", rows: '<row r="1"><c r="A1" s="1"><v>44889</v></c></row>' }], workbookPr: '<workbookPr date1904="1"/>' });
  const { sheets, date1904 } = await readXlsx(bytes);
  expect(date1904).toBe(true);
  expect(sheets[0]?.cells.get("A1")?.value).toBe(44889);
});

test("cells that share a formula have it spelled out: two rows down, A1 is A3, $A$1 stays, text stays", async () => {
  const rows = `<row r="1"><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*$A$1&amp;"A1 ""x"""</f><v>1</v></c></row><row r="2"><c r="B2"><f t="shared" si="0"/><v>2</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/><v>3</v></c></row>`;
  const cells = await cellsOf(rows);
  expect(cells["B1"]?.formula).toBe('A1*$A$1&"A1 ""x"""');
  expect(cells["B3"]).toEqual({ value: 3, formula: 'A3*$A$1&"A1 ""x"""', fixedTo: "B3" });
});

test("a dynamic formula spills freely and its old spill is not typed data; an older array formula is held to its range", async () => {
  const rows = `<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">_xldudf_RUNOFF_SALTRATIO(D1:D2,E1:E2)</f><v>2</v></c><c r="C1"><f t="array" ref="C1:C2">D1:D2*2</f><v>6</v></c></row><row r="2"><c r="A2"><v>1.25</v></c><c r="B2"><v>7</v></c><c r="C2"><v>8</v></c></row>`;
  expect(await cellsOf(rows)).toEqual({
    A1: { value: 2, formula: "RUNOFF.SALTRATIO(D1:D2,E1:E2)" },
    C1: { value: 6, formula: "D1:D2*2", fixedTo: "C1:C2" },
    B2: { value: 7 },
  });
});

test("tables, names, hidden rows: a totals row is known, print areas are not names", async () => {
  const table = `${head}<table xmlns="${main}" id="1" name="Log" displayName="Log" ref="A1:B3" totalsRowCount="1"><tableColumns count="2"><tableColumn id="1" name="EC"/><tableColumn id="2" name="pH_x000a_out"/></tableColumns></table>`;
  const names = '<definedName name="Limit">Sheet!$A$1</definedName><definedName name="Own" localSheetId="0">Sheet!$A$2</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">Sheet!$A$1:$B$3</definedName>';
  const rows = '<row r="1"><c r="A1"><v>1</v></c></row><row r="2" hidden="1"><c r="A2"><v>1</v></c></row>';
  const book = await readXlsx(
    rawWorkbook({ sheets: [{ name: "Sheet", rows, links: [["table", "../tables/table1.xml"]] }], names, parts: { "xl/tables/table1.xml": table } }),
  );
  expect(book.sheets[0]?.tables).toEqual([{ name: "Log", ref: "A1:B3", columns: ["EC", "pH\nout"], hasTotals: true }]);
  expect([...(book.sheets[0]?.hiddenRows ?? [])]).toEqual([1]);
  expect(book.names).toEqual([
    { name: "Limit", refersTo: "Sheet!$A$1" },
    { name: "Own", refersTo: "Sheet!$A$2", onlyOn: "Sheet" },
  ]);
});

test("a sheet that is only a chart is passed over, and the sheets of cells beside it are read and written", async () => {
  const rows = '<row r="1"><c r="A1"><f>1+1</f></c></row>';
  const bytes = rawWorkbook({
    sheets: [{ name: "Log", rows }],
    moreSheets: '<sheet name="Chart" sheetId="9" r:id="rId4"/>',
    workbookLinks: [["chartsheet", "chartsheets/sheet1.xml"]],
    parts: { "xl/chartsheets/sheet1.xml": `${head}<chartsheet xmlns="${main}"/>` },
  });
  const book = await readXlsx(bytes);
  expect(book.sheets.map(({ name }) => name)).toEqual(["Log"]);
  expect(patchXlsx(bytes, [{ name: "Log", values: new Map([["A1", 2]]), spills: new Map() }]).changed).toBe(1);
});
