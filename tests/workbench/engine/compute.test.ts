import { describe, expect, test } from "vitest";
import type { Book } from "../../../workbench/book";
import { computeBook, type ComputeOptions } from "../../../workbench/engine/compute";
import { computeFormulas } from "./compute-formulas";
import { FunctionsHost, type CellValue, type FunctionsMetadata } from "../../../workbench/host/functions-host";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { bookOf } from "../book-of";

const { host, metadata } = loadBundle();

async function values(book: Book, options: ComputeOptions = {}): Promise<Record<string, CellValue>> {
  const [sheet] = await computeBook(book, host, metadata, options);
  return Object.fromEntries(sheet?.values ?? []);
}

/** A function that says what it was handed. */
function showing(): [FunctionsHost, FunctionsMetadata] {
  const probe = new FunctionsHost();
  probe.runtime.associate("SHOW", (one: unknown, two: unknown, three: unknown) => [[JSON.stringify([one, two, three])]]);
  const parameters = [
    { name: "one", description: "" },
    { name: "two", description: "", optional: true },
    { name: "three", description: "", optional: true },
  ];
  return [probe, { functions: [{ id: "SHOW", name: "SHOW", description: "", parameters }] }];
}

describe("computeBook: the add-in's functions", () => {
  test("SALTRATIO of runoff 3 over input 1.5 is 2, and text in a reading is refused with its reason", async () => {
    const computed = await values(bookOf({ Log: { A1: 3, B1: 1.5, C1: "=RUNOFF.SALTRATIO(A1,B1)", C2: "=RUNOFF.SALTRATIO(A1,-1)" } }));
    expect(computed["C1"]).toBe(2);
    expect(computed["C2"]).toEqual({ error: "#VALUE!", reason: expect.stringContaining("-1 mS/cm") as string });
  });

  test("one formula over three rows fills three cells: 3/1.5 = 2, 2.5/2 = 1.25, and a row without readings stays empty", async () => {
    const book = bookOf({ Log: { A1: 3, B1: 1.5, A2: 2.5, B2: 2, C1: "=RUNOFF.SALTRATIO(A1:A3,B1:B3)" } });
    const [sheet] = await computeBook(book, host, metadata);
    expect(Object.fromEntries(sheet?.values ?? [])).toEqual({ C1: 2, C2: 1.25, C3: "" });
    expect([...(sheet?.spills ?? [])]).toEqual([["C1", "C1:C3"]]);
  });

  test("a filled cell in the way is kept, and the formula says that its cells are not free", async () => {
    const computed = await values(bookOf({ Log: { A1: 3, B1: 1.5, A2: 2.5, B2: 2, C2: "note", C1: "=RUNOFF.SALTRATIO(A1:A2,B1:B2)" } }));
    expect(computed).toEqual({ C1: { error: "#SPILL!", reason: "its answer fills C1:C2, but C2 is not empty" } });
  });

  test("an answer of many cells has no place in a table, nor over one, nor over another formula", async () => {
    const tables = { Log: [{ name: "Log", ref: "A1:B3", columns: ["EC", "Many"] }] };
    const cells = { A1: "EC", B1: "Many", A2: 1, A3: 2, B2: "=A2:A3*2", D1: "=A2:A3*2", D2: "=1+1", A4: "=TRANSPOSE(A2:A3)", E5: "=D5:D6" };
    const computed = await values(bookOf({ Log: cells }, { tables }));
    expect(computed["B2"]).toEqual({ error: "#SPILL!", reason: "it answers more than one cell, which a table cannot take: enter it outside the table" });
    expect(computed["D1"]).toEqual({ error: "#SPILL!", reason: "its answer fills D1:D2, but D2 is not empty" });
    expect([computed["D2"], computed["A4"], computed["B4"]]).toEqual([2, 1, 2]);
  });

  test("of two answers that would fill the same cell, at least one is refused and none is lost in silence", async () => {
    const computed = await values(bookOf({ Log: { A1: 1, A2: 2, A3: 3, C1: "=A1:A3", B3: "=TRANSPOSE(A1:A2)" } }));
    expect([computed["B3"], computed["C1"]]).toContainEqual(expect.objectContaining({ error: "#SPILL!" }));
  });

  test.each([
    ["zero", "[[[0]],[[1],[0]],null]"],
    ["null", "[[[null]],[[1],[null]],null]"],
    ["empty", '[[[""]],[[1],[""]],null]'],
  ] as const)("a blank cell is delivered as %s, an argument left out as null", async (blank, expected) => {
    const [sheet] = await computeBook(bookOf({ Log: { A1: 1, B1: "=RUNOFF.SHOW(A9,A1:A2)" } }), ...showing(), { blank });
    expect(sheet?.values.get("B1")).toBe(expected);
  });

  test("text that looks like a number stays text, an error cell arrives as an error value, a skipped argument as null", async () => {
    const cells = { A1: "12", A2: { error: "#N/A" }, B1: "=RUNOFF.SHOW(A1,,TRUE)", B2: "=RUNOFF.SHOW(A2)", B3: '=RUNOFF.SHOW({1;"a"})' };
    const [sheet] = await computeBook(bookOf({ Log: cells }), ...showing());
    expect(sheet?.values.get("B1")).toBe('[[["12"]],null,[[true]]]');
    expect(sheet?.values.get("B2")).toBe('[[[{"type":"Error","basicType":"Error","basicValue":"#N/A"}]],null,null]');
    expect(sheet?.values.get("B3")).toBe('[[[1],["a"]],null,null]');
  });

  test("too few arguments are refused with the number that the function takes", async () => {
    const [sheet] = await computeBook(bookOf({ Log: { B1: "=RUNOFF.SHOW()" } }), ...showing());
    expect(sheet?.values.get("B1")).toEqual({ error: "#VALUE!", reason: "SHOW takes 1 to 3 arguments, not 0" });
  });
});

describe("computeBook: formulas around them", () => {
  test("a third keeps all its digits, and text, truth, dates and blanks have their own kind", async () => {
    const cells = { A1: "=1/3", A2: '="a"&"b"', A3: "=1<2", A4: "=DATE(2026,3,1)", A5: "=Z9", A6: '=""', A7: "=1/0" };
    expect(await values(bookOf({ Log: cells }))).toEqual({
      A1: 1 / 3,
      A2: "ab",
      A3: true,
      A4: 46082,
      A5: 0,
      A6: "",
      A7: { error: "#DIV/0!", reason: "it divides by zero or by a blank cell" },
    });
  });

  test("B1# is the whole spill of B1, also across sheets and through a second spill", async () => {
    const book = bookOf({
      "Bench 1": { A1: 1, A2: 2, A3: 3, B1: "=A1:A3*10", C1: "=B1#+1", D1: "=SUM(C1#)" },
      Sums: { A1: "=SUM('Bench 1'!C1#)", A2: "=SUM('Bench 1'!A1#)" },
    });
    const [bench, sums] = await computeBook(book, host, metadata);
    expect(bench?.values.get("C3")).toBe(31);
    expect(bench?.values.get("D1")).toBe(11 + 21 + 31);
    expect(sums?.values.get("A1")).toBe(11 + 21 + 31);
    expect(sums?.values.get("A2")).toMatchObject({ error: "#REF!" });
  });

  test("a cell that reads itself is refused, with every cell that reads it; its neighbours are not", async () => {
    const computed = await values(bookOf({ Log: { A1: "=B1+1", B1: "=A1*2", C1: "=A1", D1: "=2+2" } }));
    const circular = { error: "#VALUE!", reason: "it reads its own answer, directly or through other cells" };
    expect(computed).toEqual({ A1: circular, B1: circular, C1: circular, D1: 4 });
  });

  test("names are known, one sheet's name before the whole book's", async () => {
    const names = [
      { name: "LimitRatio", refersTo: "Log!$A$1" },
      { name: "Factor", refersTo: "3" },
      { name: "Factor", refersTo: "5", onlyOn: "Other" },
    ];
    const book = bookOf({ Log: { A1: 1.5, B1: "=LimitRatio*2", C1: "=factor", D1: "=Other!Factor" }, Other: { A1: "=Factor" } }, { names });
    const [log, other] = await computeBook(book, host, metadata);
    expect([log?.values.get("B1"), log?.values.get("C1"), log?.values.get("D1"), other?.values.get("A1")]).toEqual([3, 3, 5, 5]);
  });

  test("a formula that a file holds to one cell is refused when it answers three, and does not leak into its neighbours", async () => {
    const computed = await values(bookOf({ Log: { A1: 1, A2: 2, A3: 3, B1: { formula: "A1:A3*2", fixedTo: "B1" }, C1: "=SUM(B2:B3)" } }));
    expect(computed["B1"]).toEqual({ error: "#VALUE!", reason: "it answers B1:B3, but the file holds it to B1: enter the formula anew" });
    expect(computed["C1"]).toBe(0);
  });

  test("a function that the engine does not have is #NAME?, and one that fails inside the engine does not end the others", async () => {
    const computed = await values(bookOf({ Log: { A1: "=NOSUCHTHING(1)", A2: "=1+", A3: "=1+1" } }));
    expect(computed["A1"]).toEqual({ error: "#NAME?", reason: "it names a function or a cell name that is not known here" });
    expect(computed["A2"]).toMatchObject({ error: "#VALUE!" });
    expect(computed["A3"]).toBe(2);
  });
});

describe("computeFormulas", () => {
  test("each formula is answered as the cells it fills: one, a row, a block", async () => {
    const answers = await computeFormulas(["RUNOFF.SALTRATIO(3,1.5)", "{1,2,3}", "{1,2;3,4}+1", "RUNOFF.SALTRATIO({3;4},2)"], host, metadata);
    expect(answers).toEqual([[[2]], [[1, 2, 3]], [[2, 3], [4, 5]], [[1.5], [2]]]);
  });
});
