import { describe, expect, test, vi } from "vitest";
import { computedColumns } from "../../../taskpane/formulas/computed-columns";
import { addColumns } from "../../../taskpane/sheet/add-columns";
import { watchSheets, watchShown } from "../../../taskpane/sheet/follow";
import { areaAt } from "../../../workbench/host/excel/area";
import type { Fault, Sync } from "../../../workbench/host/excel/switches";
import { bench, benchLog, filledCells, refusal, zoneAt, zoneOfSelected } from "./bench-log";

const options = { band: '"coir, medium"', uncompensated: false };
const ratio = computedColumns.filter(({ header }) => header === "Salt ratio");

/** Fails the first sync that writes, once, after it was carried out in part. */
function onceAtFirstWrite(fault: Fault): (sync: Sync) => Fault | undefined {
  let isDone = false;
  return ({ writes }) => {
    if (isDone || writes === 0) return undefined;
    isDone = true;
    return fault;
  };
}

describe("what the host does that a pane has to live with", () => {
  test("a change that cannot join one step of the undo list is made all the same, in several", async () => {
    const host = bench();
    const zone = await zoneAt(host);
    host.switches.onSync = onceAtFirstWrite({ at: "before", code: "UndoNotSupported" });
    await addColumns(zone, ratio, options);
    const cells = filledCells(host.store, host.sheetId);
    expect(cells["0,7"]).toBe("Salt ratio");
    expect(cells["3,7"]).toContain("RUNOFF.SALTRATIO(");
  });

  test("the same refusal twice is told, and the sheet is as before", async () => {
    const host = bench();
    const zone = await zoneAt(host);
    const before = filledCells(host.store, host.sheetId);
    host.switches.onSync = ({ writes }) => (writes > 0 ? { at: "before", code: "UndoNotSupported" } : undefined);
    expect(await refusal(() => addColumns(zone, ratio, options))).toContain("Nothing was changed");
    host.switches.onSync = undefined;
    expect(filledCells(host.store, host.sheetId)).toEqual(before);
  });

  test("a hidden first column is read with the others, and told apart", async () => {
    const host = bench();
    host.store.setHidden(areaAt(host.sheetId, 0, 0), "column", true);
    const { selection, reading } = await zoneAt(host);
    expect(selection.hiddenColumns).toEqual([0]);
    expect(reading.rows.map(({ day }) => day)).toEqual([46_082, 46_084, 46_086]);
  });

  test("a merged title, which the host hands over as many selected cells, stands for the log below it", async () => {
    const host = bench([["Bench 2, spring", "", "", "", "", "", ""], ["", "", "", "", "", "", ""], ...benchLog]);
    const { selection, reading } = await zoneAt(host, 0, 0);
    host.store.select([areaAt(host.sheetId, 0, 0, 1, 7)]);
    const merged = await zoneOfSelected();
    expect([selection.wholeLog, merged.selection.wholeLog]).toEqual([true, true]);
    expect([reading.rows.length, merged.reading.rows.length]).toEqual([3, 3]);
  });

  test("events can be asked for again after the host refused them once, and then arrive", async () => {
    const host = bench();
    let isRefused = false;
    host.switches.onSync = () => {
      if (isRefused) return undefined;
      isRefused = true;
      return { at: "before", code: "GeneralException" };
    };
    const changed = vi.fn();
    expect(await refusal(() => watchSheets(changed, () => undefined))).toContain("GeneralException");
    await watchSheets(changed, () => undefined);
    host.store.write(areaAt(host.sheetId, 4, 0), [[46_088]]);
    await vi.waitFor(() => { expect(changed).toHaveBeenCalledWith(host.sheetId); }, { timeout: 30_000 });
  });

  test("formulas that answer late are told of when they have answered", async () => {
    const host = bench(benchLog, { compute: () => [[2]] });
    host.switches.answersLate = 20;
    const calculated = vi.fn();
    await watchSheets(() => undefined, calculated);
    await addColumns(await zoneAt(host), ratio, options);
    expect((await zoneAt(host)).selection.waiting).toBeGreaterThan(0);
    await vi.waitFor(() => { expect(calculated).toHaveBeenCalledWith(host.sheetId); }, { timeout: 30_000 });
    expect((await zoneAt(host)).selection.waiting).toBe(0);
  });

  test("a pane that is closed and shown again is told of both, where its script runs on; elsewhere nothing is asked of the host", async () => {
    const { Office } = bench();
    type Told = (message: { visibilityMode: string }) => void;
    let tell: Told | undefined;
    const addin = { onVisibilityModeChanged: (handler: Told) => { tell = handler; return Promise.resolve(() => Promise.resolve()); } };
    const shown: boolean[] = [];
    const withRuntime = (isThere: boolean): object => ({ ...Office, addin, VisibilityMode: { hidden: "Hidden", taskpane: "Taskpane" },
      context: { requirements: { isSetSupported: (name: string) => isThere && name === "SharedRuntime" } } });
    vi.stubGlobal("Office", withRuntime(false));
    await watchShown((isShown) => { shown.push(isShown); });
    expect(tell).toBeUndefined();
    vi.stubGlobal("Office", withRuntime(true));
    await watchShown((isShown) => { shown.push(isShown); });
    for (const visibilityMode of ["Hidden", "Taskpane"]) tell?.({ visibilityMode });
    expect(shown).toEqual([false, true]);
  });
});
