import { describe, expect, test } from "vitest";
import { computeBook } from "../../../workbench/engine/compute";
import { plainCall } from "../../../workbench/engine/plain-call";
import { loadBundle } from "../../../workbench/host/load-bundle";
import { bookOf } from "../book-of";

const { host, metadata } = loadBundle();

/** Readings of a bench with a blank, a zero, a text, an error and more runoff EC than any meter shows. */
const readings = {
  A1: 3, B1: 1.5, A2: 2.5, B2: 2, A3: undefined, B3: 1.8, A4: 0, B4: 1.2, A5: "wet", B5: 1.4, A6: { error: "#N/A" }, B6: 1.4, A7: 250, B7: 1.4,
};

describe("a call of ours on typed cells is answered without the formula engine", () => {
  test.each([
    "RUNOFF.SALTRATIO(A1,B1)", "RUNOFF.SALTRATIO(A1:A7,B1:B7)", "RUNOFF.SALTRATIO($A$2, 2)", "runoff.saltratio(A3:A4,B3:B4)", "RUNOFF.SALTRATIO(A5,B5)",
    "RUNOFF.SALTRATIO(A6,B6)", "RUNOFF.SALTRATIO(A7,B7)", "RUNOFF.SALTRATIO(A1)", "RUNOFF.SALTRATIO(A1:A2,B1:B3)", 'RUNOFF.BANDLIMIT("coir, heavy","ec high")',
    "RUNOFF.SALTRATIO('Bench 1'!A2,B2)", 'RUNOFF.ROWFLAG(5.9,B1,,A1,"coir")', "RUNOFF.SALTRATIO(A9,B9)", "RUNOFF.SALTRATIO()",
  ])("=%s: the same as the engine finds, which a sum around nothing forces it to do", async (formula) => {
    // IFERROR(1/0,...) is nothing that a plain call may hold, so the second book goes through the engine.
    const [direct, engine] = await Promise.all([formula, `IFERROR(1/0,${formula})`].map(async (each) => {
      expect(plainCall(each, "Bench 1") !== undefined).toBe(each === formula);
      const [sheet] = await computeBook(bookOf({ "Bench 1": { ...readings, D1: `=${each}` } }), host, metadata);
      return [...(sheet?.values ?? [])].map(([address, value]) => [address, typeof value === "object" ? value.error : value]);
    }));
    expect(direct).toEqual(engine);
  });

  test.each(["RUNOFF.PPM(A1)+1", "RUNOFF.SALTRATIO(A1*2,B1)", "RUNOFF.SALTRATIO(A:A,B:B)", "RUNOFF.SALTRATIO({3;2},B1:B2)", "RUNOFF.PPM(Limit)", "SUM(A1:A2)"])(
    "=%s is none",
    (formula) => {
      expect(plainCall(formula, "Log")).toBeUndefined();
    },
  );

  test("what reads another answer, or a cell that one fills, waits for it: 3/1.5 = 2, 2/1 = 2; 1.25/1 = 1.25 beside the spill", async () => {
    const cells = { ...readings, C1: "=RUNOFF.SALTRATIO(A1:A2,B1:B2)", E1: 1, D1: "=RUNOFF.SALTRATIO(C1,E1)", F1: "=RUNOFF.SALTRATIO(C2,E1)" };
    const [sheet] = await computeBook(bookOf({ Log: cells }), host, metadata);
    expect(Object.fromEntries(sheet?.values ?? [])).toEqual({ C1: 2, C2: 1.25, D1: 2, F1: 1.25 });
  });

  test("a plain formula reads a spilled answer of ours: 2 + 1.25 = 3.25; one that may spill over a blank is waited for", async () => {
    const cells = { ...readings, C1: "=RUNOFF.SALTRATIO(A1:A2,B1:B2)", E1: "=SUM(C1:C2)", G1: "=TRANSPOSE(TRANSPOSE(A1:A2))", H1: "=RUNOFF.SALTRATIO(G2,B2)" };
    const [sheet] = await computeBook(bookOf({ Log: cells }), host, metadata);
    expect(Object.fromEntries(sheet?.values ?? [])).toMatchObject({ C2: 1.25, E1: 3.25, G2: 2.5, H1: 1.25 });
  });

  test.each([["1+1", 2], ["RUNOFF.SALTRATIO(8,2)", 4]])("=%s in the way of a spill keeps its own answer, %d, and the spill is refused", async (formula, answer) => {
    const [sheet] = await computeBook(bookOf({ Log: { ...readings, C1: "=RUNOFF.SALTRATIO(A1:A2,B1:B2)", C2: `=${formula}` } }), host, metadata);
    expect(Object.fromEntries(sheet?.values ?? [])).toEqual({ C1: expect.objectContaining({ error: "#SPILL!" }) as unknown, C2: answer });
  });
});
