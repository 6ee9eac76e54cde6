import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { functionsState, reenter } from "../../../taskpane/sheet/functions-alive";
import { keepValuesOnly } from "../../../taskpane/sheet/values-only";
import { areaAt } from "../../../workbench/host/excel/area";
import type { MemoryOptions } from "../../../workbench/host/excel/memory-store";
import { bench, filledCells, refusal } from "./bench-log";
import { times } from "../../laws/times";

/** A host that has lost what stands in a foreign form, spills one function and answers 2 to the others. */
const answers: MemoryOptions = {
  compute: (formula) => {
    if (/_xldudf_|!RUNOFF|LOST/.test(formula)) return [["#NAME?"]];
    return formula.includes("FLUSHPLAN") ? [["portion", "litres"], [1, 3.5]] : [[2]];
  },
};

type Bench = ReturnType<typeof bench>;

function sheetWith(cells: Readonly<Record<string, string>>): Bench {
  const host = bench([["Note", 3]], answers);
  for (const [at, formula] of Object.entries(cells)) {
    const [row = 0, column = 0] = at.split(",").map(Number);
    host.store.write(areaAt(host.sheetId, row, column), [[{ formula }]]);
  }
  return host;
}

describe("functionsState", () => {
  test("counts what answers and what is stuck, and writes nothing", async () => {
    const host = sheetWith({ "1,0": "=RUNOFF.PPM(B1,500)", "1,1": "=_xldudf_RUNOFF_PPM(B1,500)", "1,2": "=SUM(B1)" });
    const before = filledCells(host.store, host.sheetId);
    expect(await functionsState()).toEqual({ words: "1 of 2 formulas answer; one formula stuck: enter again.", broken: 1, alive: 1 });
    host.switches.missingApi = "CustomFunctionsRuntime 1.1";
    expect((await functionsState()).words).toMatch(/does not run worksheet functions/);
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });
});

describe("reenter", () => {
  test("mends two stuck formulas on two sheets and leaves every other cell", async () => {
    const host = sheetWith({ "1,0": "=_xldudf_RUNOFF_PPM(B1,500)", "1,1": "=RUNOFF.PPM(B1,500)", "1,2": "=B1*2" });
    const other = host.store.addSheet("Flush");
    host.store.write(areaAt(other, 0, 0), [[{ formula: "=[1]!RUNOFF.PPM(Log!B1,500)" }]]);
    const done = await reenter();
    expect(done.words).toBe("Entered 2 formulas again on Log, Flush.");
    expect(host.store.formulas(areaAt(host.sheetId, 1, 0, 1, 3))).toEqual([["=RUNOFF.PPM(B1,500)", "=RUNOFF.PPM(B1,500)", "=B1*2"]]);
    expect(host.store.values(areaAt(other, 0, 0))).toEqual([[2]]);
    expect(await done.takeBack()).toBe("Taken back: A2 of Log, A1 of Flush as before.");
    expect(host.store.formulas(areaAt(other, 0, 0))).toEqual([["=[1]!RUNOFF.PPM(Log!B1,500)"]]);
  });

  test("names the protected sheet and writes on no other", async () => {
    const host = sheetWith({ "1,0": "=_xldudf_RUNOFF_PPM(B1,500)" });
    const other = host.store.addSheet("Flush");
    host.store.write(areaAt(other, 0, 0), [[{ formula: "=_xldudf_RUNOFF_PPM(1,500)" }]]);
    host.records.sheet(other).protected = true;
    expect(await refusal(reenter)).toBe("Flush: protected. Unprotect (Review, Unprotect Sheet), then try again. Nothing was written.");
    expect(host.store.formulas(areaAt(host.sheetId, 1, 0))).toEqual([["=_xldudf_RUNOFF_PPM(B1,500)"]]);
  });

  test("says when nothing is stuck", async () => {
    sheetWith({ "1,0": "=RUNOFF.PPM(B1,500)" });
    expect((await reenter()).words).toBe("No formula is stuck.");
  });
});

describe("keepValuesOnly", () => {
  test("turns a column and a table that spills into their values; other formulas stay", async () => {
    const host = sheetWith({ "1,0": "=RUNOFF.PPM(B1,500)", "2,0": "=RUNOFF.PPM(B1,500)", "1,3": "=RUNOFF.FLUSHPLAN(10,6,3,0.4,\"coir\")", "4,0": "=B1*2" });
    const before = filledCells(host.store, host.sheetId);
    const done = await keepValuesOnly();
    expect(done.words).toBe("Turned 3 formulas into values, on Log.");
    expect(host.store.formulas(areaAt(host.sheetId, 1, 0, 4, 1))).toEqual([[2], [2], [""], ["=B1*2"]]);
    expect(host.store.formulas(areaAt(host.sheetId, 1, 3, 2, 2))).toEqual([["portion", "litres"], [1, 3.5]]);
    await done.takeBack();
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });

  test("refuses while a formula has no answer, and changes nothing", async () => {
    const host = sheetWith({ "1,0": "=RUNOFF.PPM(B1,500)", "2,0": "=RUNOFF.LOST(B1)" });
    expect(await refusal(keepValuesOnly)).toBe("Without an answer: one formula, first Log!A3, which shows #NAME?. Enter again first; nothing was changed.");
    expect(host.store.formulas(areaAt(host.sheetId, 1, 0))).toEqual([["=RUNOFF.PPM(B1,500)"]]);
  });

  test("is not taken back over a value changed since", async () => {
    const host = sheetWith({ "1,0": "=RUNOFF.PPM(B1,500)" });
    const done = await keepValuesOnly();
    host.store.type(areaAt(host.sheetId, 1, 0), 7);
    expect(await refusal(done.takeBack)).toMatch(/changed since/);
    expect(host.store.values(areaAt(host.sheetId, 1, 0))).toEqual([[7]]);
  });

  test("for any sheet, every cell that is no formula of ours is the same after both actions", async () => {
    const cell = fc.constantFrom("", "note", 3, true, "=B1*2", "=RUNOFF.PPM(B1,500)", "=_xldudf_RUNOFF_PPM(B1,500)", "=[1]!RUNOFF.PPM(1,2)");
    await fc.assert(fc.asyncProperty(fc.array(fc.array(cell, { minLength: 4, maxLength: 4 }), { minLength: 1, maxLength: 6 }), async (rows) => {
      const host = bench([["Note", 3, "", ""]], answers);
      host.store.write(areaAt(host.sheetId, 2, 0, rows.length, 4), rows.map((row) => row.map((each) => (typeof each === "string" && each.startsWith("=") ? { formula: each } : each))));
      const before = Object.entries(filledCells(host.store, host.sheetId)).filter(([, content]) => !String(content).includes("RUNOFF"));
      await reenter();
      if (rows.flat().some((each) => String(each).includes("RUNOFF"))) await keepValuesOnly();
      expect(filledCells(host.store, host.sheetId)).toMatchObject(Object.fromEntries(before));
    }), times(30));
  });
});
