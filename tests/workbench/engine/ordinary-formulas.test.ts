import { describe, expect, test } from "vitest";
import { computeBook } from "../../../workbench/engine/compute";
import { readXlsx } from "../../../workbench/files/read-xlsx";
import { FunctionsHost, type CellValue } from "../../../workbench/host/functions-host";
import { rawWorkbook } from "../files/raw-workbook";
import { computedByLibreOffice, hasLibreOffice } from "./libre-office";

/** Ten days of a basil pot: day, runoff EC, input EC, a note. */
const readings: readonly (readonly [day: number, runoff: number | "", input: number, note: string])[] = [
  [46082, 1.9, 1.6, "ok"],
  [46083, 2.1, 1.6, "ok"],
  [46084, 2.35, 1.6, ""],
  [46085, "", 1.6, "probe out"],
  [46086, 2.8, 1.7, "high"],
  [46087, 3.05, 1.7, "high"],
  [46088, 3.4, 0.4, "flush"],
  [46089, 2.2, 0.4, "flush"],
  [46090, 1.7, 1, "ok"],
  [46091, 1.6, 1.2, "ok"],
];

/**
 * What growers write around the add-in's functions; the second engine computes each of them on its own. It stores its own
 * error numbers as #VALUE!, so the root of a negative number is compared by whether it is an error.
 */
const formulas: readonly string[] = [
  "0.1+0.2", "1/3", "2^0.5", "-2^2", "7/2*3-1", "10%", "1E-7*3", "(1.9+2.1)/2", "B2/C2", "B2*1000/2",
  "SUM(B2:B11)", "AVERAGE(B2:B11)", "MEDIAN(B2:B11)", "MIN(B2:B11)", "MAX(B2:B11)", "COUNT(B2:B11)", "COUNTA(D2:D11)", "COUNTBLANK(B2:B11)",
  "_xlfn.STDEV.S(B2:B11)", "_xlfn.STDEV.P(B2:B11)", "_xlfn.VAR.S(B2:B11)", "LARGE(B2:B11,2)", "SMALL(B2:B11,3)", "_xlfn.PERCENTILE.INC(B2:B11,0.9)",
  "_xlfn.QUARTILE.INC(B2:B11,1)", "_xlfn.RANK.EQ(B2,B2:B11)", "GEOMEAN(C2:C11)", "HARMEAN(C2:C11)", "AVEDEV(C2:C11)",
  "SLOPE(C2:C11,A2:A11)", "INTERCEPT(C2:C11,A2:A11)", "RSQ(C2:C11,A2:A11)", "CORREL(C2:C11,A2:A11)", "FORECAST(46095,C2:C11,A2:A11)",
  "SUMPRODUCT(A2:A11-46081,C2:C11)", 'SUMIF(D2:D11,"flush",C2:C11)', 'COUNTIF(D2:D11,"ok")', 'COUNTIF(B2:B11,">2")', 'AVERAGEIF(D2:D11,"high",B2:B11)',
  'SUMIFS(C2:C11,D2:D11,"ok",B2:B11,">1.8")', 'COUNTIFS(D2:D11,"ok",C2:C11,"<1.5")', 'AVERAGEIFS(B2:B11,C2:C11,">1",D2:D11,"ok")',
  "VLOOKUP(46086,A2:D11,2,FALSE)", "VLOOKUP(46086.5,A2:D11,3,TRUE)", "INDEX(B2:B11,MATCH(46088,A2:A11,0))", "MATCH(3.05,B2:B11,0)", "CHOOSE(2,1,5,9)", "LOOKUP(46090,A2:A11,C2:C11)",
  'IF(B2/C2>1.5,"build-up","steady")', 'IF(B5="","",B5/C5)', "IF(AND(B6>2,C6<2),1,0)", "IF(OR(B6>9,C6>9),1,0)", "NOT(B2>C2)", "_xlfn.XOR(TRUE,FALSE)", "IFERROR(B2/0,-1)", "IFERROR(B2/C2,-1)",
  "ISBLANK(B5)", "ISNUMBER(B2)", "ISTEXT(D2)", "ISERROR(1/0)", "1/0", "NA()", 'VALUE("x")', 'IFERROR(SQRT(-1),"none")', "B2+D2", "VLOOKUP(1,A2:B11,2,FALSE)",
  "ROUND(2.345,2)", "ROUND(-2.5,0)", "ROUNDUP(2.01,1)", "ROUNDDOWN(2.99,1)", "MROUND(7.3,0.5)", "CEILING(2.1,0.5)", "FLOOR(2.9,0.5)", "INT(-2.5)", "TRUNC(-2.5)", "MOD(-3,2)", "ABS(-1.5)", "SIGN(-2)",
  "EXP(1.5)", "LN(2.5)", "LOG10(500)", "LOG(8,2)", "POWER(1.02,25)", "SQRT(2)", "PI()", "SIN(1)", "PRODUCT(C2:C5)", "QUOTIENT(7,2)", "GCD(12,18)",
  "DATE(2026,3,31)", "YEAR(A2)", "MONTH(A2)", "DAY(A2)", "WEEKDAY(A2)", "WEEKNUM(A2)", "EDATE(A2,1)", "EOMONTH(A2,0)", "NETWORKDAYS(A2,A11)", "_xlfn.DAYS(A11,A2)", "TIME(14,30,0)", "HOUR(0.75)", 'DATEVALUE("2026-03-01")', "A11-A2",
  'LEFT("coir pot",4)', 'RIGHT("coir pot",3)', 'MID("coir pot",2,3)', 'LEN("coir")', 'FIND("p","coir pot")', 'SEARCH("POT","coir pot")', 'SUBSTITUTE("1,8",",",".")', 'VALUE(SUBSTITUTE("1,8",",","."))+1',
  'TRIM("  a  b ")', 'UPPER("ph")', 'LOWER("EC")', 'PROPER("sweet basil")', 'CONCATENATE("EC ",B2," mS")', 'B2&" mS"', 'TEXT(1.2345,"0.00")', 'TEXT(46082,"yyyy-mm-dd")', 'REPT("*",3)', 'EXACT("a","A")', '"a"="A"', 'T(D2)', 'N(TRUE)',
  "ROWS(A2:A11)", "COLUMNS(A2:D2)", "ROW(A7)", "COLUMN(C1)", "SUM(OFFSET(B2,0,0,3,1))", 'SUM(INDIRECT("B2:B4"))', "SUBTOTAL(9,C2:C11)", "SUM(B:B)", "SUM(B2:B4,C2:C4)", "_xlfn.IFS(B2>9,1,TRUE,2)", '_xlfn.CONCAT(D2:D4)', '_xlfn.TEXTJOIN("-",TRUE,D2:D4)',
];

function workbook(): Uint8Array {
  const cell = (address: string, value: string | number) =>
    value === "" ? "" : typeof value === "number" ? `<c r="${address}"><v>${value}</v></c>` : `<c r="${address}" t="inlineStr"><is><t>${value}</t></is></c>`;
  const escaped = (text: string) => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
  const rows = Array.from({ length: formulas.length + 1 }, (_, n) => {
    const reading = readings[n - 1]?.map((value, c) => cell(`${"ABCD".charAt(c)}${n + 1}`, value)).join("") ?? "";
    const formula = n === 0 ? "" : `<c r="F${n + 1}"><f>${escaped(formulas[n - 1] ?? "")}</f></c>`;
    return `<row r="${n + 1}">${reading}${formula}</row>`;
  });
  return rawWorkbook({ sheets: [{ name: "Log", rows: rows.join("") }] });
}

function comparable(value: CellValue): number | string | boolean {
  if (value === undefined) return "";
  return typeof value === "object" ? value.error : value;
}

function agree(ours: number | string | boolean, theirs: number | string | boolean): boolean {
  if (typeof ours !== "number" || typeof theirs !== "number") return ours === theirs;
  return Math.abs(ours - theirs) <= 1e-9 * Math.max(1, Math.abs(theirs));
}

const found = hasLibreOffice();
if (!found) process.stderr.write("\nLibreOffice (soffice) is not on this machine: ordinary formulas are NOT cross-checked\n\n");

describe("ordinary formulas against LibreOffice, an engine that shares no code with ours", () => {
  test("LibreOffice is there where CI demands it", () => {
    expect(found || process.env["CI"] !== "true").toBe(true);
  });

  test.skipIf(!found)(`${formulas.length} formulas over ten days of readings agree to 1e-9, texts and errors exactly`, async () => {
    const bytes = workbook();
    const ours = (await computeBook(await readXlsx(bytes), new FunctionsHost(), { functions: [] }))[0]?.values;
    const theirs = (await readXlsx(await computedByLibreOffice(bytes))).sheets[0]?.cells;
    const differing = formulas.flatMap((formula, n) => {
      const pair = [comparable(ours?.get(`F${n + 2}`)), comparable(theirs?.get(`F${n + 2}`)?.value)] as const;
      return agree(...pair) ? [] : [{ formula, ours: pair[0], theirs: pair[1] }];
    });
    expect(differing).toEqual([]);
  });
});
