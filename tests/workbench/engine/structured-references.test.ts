import { expect, test } from "vitest";
import { computeBook } from "../../../workbench/engine/compute";
import { asTyped } from "../../../workbench/engine/formula-text";
import { withoutStructuredReferences, type PlacedTable } from "../../../workbench/engine/structured-references";
import { FunctionsHost } from "../../../workbench/host/functions-host";
import { bookOf } from "../book-of";

const log: PlacedTable = { sheet: "Bench 1", name: "Log", ref: "B3:D7", columns: ["EC in", "EC [mS]", "pH"], hasTotals: true };

function rewritten(formula: string, row = 4, sheet = "Bench 1"): string {
  return withoutStructuredReferences(formula, [log], { sheet, row, column: 4 });
}

test.each([
  ["Log[pH]", "'Bench 1'!$D$4:$D$6"],
  ["log[PH]", "'Bench 1'!$D$4:$D$6"],
  ["Log[[#This Row],[EC in]]", "'Bench 1'!$B$5:$B$5"],
  ["Log[@[EC in]]", "'Bench 1'!$B$5:$B$5"],
  ["[@pH]", "'Bench 1'!$D$5:$D$5"],
  ["Log[EC '[mS']]", "'Bench 1'!$C$4:$C$6"],
  ["Log[[EC in]:[pH]]", "'Bench 1'!$B$4:$D$6"],
  ["Log[[#Headers],[pH]]", "'Bench 1'!$D$3:$D$3"],
  ["Log[[#Headers],[#Data],[pH]]", "'Bench 1'!$D$3:$D$6"],
  ["Log[#Totals]", "'Bench 1'!$B$7:$D$7"],
  ["Log[#All]", "'Bench 1'!$B$3:$D$7"],
  ["Log[]", "'Bench 1'!$B$4:$D$6"],
  ["SUM(Log[pH])*2", "SUM('Bench 1'!$D$4:$D$6)*2"],
  ['"Log[pH]"', '"Log[pH]"'],
  ["[1]Sheet1!A1", "[1]Sheet1!A1"],
  ["Log[no such column]", "#REF!"],
])("in row 5 of a table in B3:D7 with totals, %s is %s", (formula, expected) => {
  expect(rewritten(formula)).toBe(expected);
});

test("this row is #REF! on the header, on the totals, and on another sheet", () => {
  expect([rewritten("Log[@pH]", 2), rewritten("Log[@pH]", 6), rewritten("Log[@pH]", 4, "Other")]).toEqual(["#REF!", "#REF!", "#REF!"]);
});

test("a table's column is computed row by row and summed below: 1 + 2 = 3", async () => {
  const tables = { Log: [{ name: "Log", ref: "A1:B4", columns: ["EC", "Twice"], hasTotals: true }] };
  const cells = { A1: "EC", B1: "Twice", A2: 1, A3: 2, B2: "=Log[[#This Row],[EC]]*2", B3: "=[@EC]*2", A4: "=SUM(Log[EC])", D1: "=SUM(Log[Twice])" };
  const [sheet] = await computeBook(bookOf({ Log: cells }, { tables }), new FunctionsHost(), { functions: [] });
  expect(Object.fromEntries(sheet?.values ?? [])).toEqual({ B2: 2, B3: 4, A4: 3, D1: 6 });
});

test.each([
  ["_xldudf_RUNOFF_SALTRATIO(B2,C2)", "RUNOFF.SALTRATIO(B2,C2)"],
  ["_xlfn.LET(_xlpm.x,2,_xlpm.x*3)", "LET(x,2,x*3)"],
  ["_xlfn._xlws.FILTER(A1:A3,A1:A3>1)", "FILTER(A1:A3,A1:A3>1)"],
  ["SUM(_xlfn.ANCHORARRAY('Bench 1'!B2))", "SUM('Bench 1'!B2#)"],
  ['"_xlfn.text ""kept"""&_xlfn.CONCAT(A1)', '"_xlfn.text ""kept"""&CONCAT(A1)'],
  [`Log['"in'"]&"_xlfn."`, `Log['"in'"]&"_xlfn."`],
])("a file's %s is typed %s", (stored, typed) => {
  expect(asTyped(stored)).toBe(typed);
});
