import { describe, expect, it } from "vitest";
import { computeBook } from "../../../workbench/engine/compute";
import { computeFormulas } from "./compute-formulas";
import { mostReadCells, namedCells, tooManyCells, widestRange } from "../../../workbench/engine/reach";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { bookOf } from "../book-of";

const { host, metadata } = loadBundle();

describe("a formula that reads the whole sheet", () => {
  it.each([
    ["SUM(B1:XFD1048576)", 16_383 * 1_048_576], ["COUNT($2:$1048576)", 16_384 * 1_048_575], ["SUM(Log!A:C)", 3 * 1_048_576],
    ["A1&\"B1:XFD1048576\"", 0], ["SUM(A1:ZZZ9)", 0], ["SUM(B2:C11)", 20],
  ])("%s spans %i cells at its widest", (formula, cells) => { expect(widestRange(formula)).toBe(cells); });

  it.each([
    ["SUM(A1:B1048576)", 1_048_576], ["SUMPRODUCT(A1:A1048576*B1:B1048576)", 2 * 1_048_576], ["A1:A20000*TRANSPOSE(A1:A20000)", 2 * 20_000 * 20_000],
    ["ROW(A1:A5000)*COLUMN(A1:XFD1)", 2 * 5000 * 16_384], ["SUM(A:XFD)", 0], ["SUMPRODUCT((A2:A50000=1)*(B2:B50000>2)*C2:C50000)", 3 * 49_999],
  ])("%s computes with %i cells that it names", (formula, cells) => { expect(namedCells(formula)).toBe(cells); });

  it("and the one behind a name is not computed either", async () => {
    const book = bookOf({ Log: { A1: "=SUMPRODUCT(All*All)" } }, { names: [{ name: "All", refersTo: "Log!$B$1:$XFD$1048576" }] });
    const [sheet] = await computeBook(book, host, metadata);
    expect(sheet?.values.get("A1")).toMatchObject({ error: "#VALUE!" });
  });

  it.each([
    "SUM(OFFSET(B1,0,0,1048576,26))", 'SUM(INDIRECT("B1:XFD1048576"))', "LET(a,SEQUENCE(3000),SUM(a*TRANSPOSE(a)))", "SUM(ROW(B:B)*COLUMN(C2:XFD2))",
    "SUMPRODUCT(B1:Z1048576*B1:Z1048576)", "SUM(B1:B1048576*TRANSPOSE(B1:B10000))",
  ])("%s is not computed", async (formula) => {
    const [[[answer] = []] = []] = await computeFormulas([formula], host, metadata);
    expect(answer).toMatchObject({ error: "#VALUE!", reason: tooManyCells });
  });

  it("of ours is: one call of a million rows, the last of them 3 / 1.5 = 2", async () => {
    const book = bookOf({ Log: { A1048575: 3, B1048575: 1.5, C1: "=RUNOFF.SALTRATIO(A1:A1048575,B1:B1048575)" } });
    const [sheet] = await computeBook(book, host, metadata);
    expect(sheet?.values.get("C1048575")).toBe(2);
  });

  it("is not computed, and says what to do; a column down the whole sheet is", async () => {
    const [whole, column] = (await computeFormulas(["SUM(B1:XFD1048576)", "SUM(B:B)"], host, metadata)).map((cells) => cells[0]?.[0]);
    expect(whole).toMatchObject({ error: "#VALUE!", reason: expect.stringContaining(`${mostReadCells} cells: name the rows`) as string });
    expect(column).toBe(0);
  });
});
