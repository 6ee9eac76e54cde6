/// <reference types="office-js" />
import { afterEach, vi } from "vitest";
import { forPot, noChoices } from "../../../taskpane/choices";
import { type RootZone, rootZoneOf } from "../../../taskpane/root-zone";
import { readSelection } from "../../../taskpane/sheet/read-selection";
import { selectedPlace } from "../../../taskpane/sheet/selected-place";
import { SheetProblem } from "../../../taskpane/workbook";
import { areaAt } from "../../../workbench/host/excel/area";
import type { MemoryOptions, MemoryStore } from "../../../workbench/host/excel/memory-store";
import { strictHost } from "../../workbench/host/strict-host";

/** A bench log of three waterings, as a person types it; serial days from 1 March 2026. */
export const benchLog = [
  ["Date", "Feed EC (mS/cm)", "Feed pH", "Runoff EC (uS/cm)", "Runoff pH", "Fed (L)", "Drained (L)"],
  [46_082, 1.5, 5.9, 3000, 5.4, 2, 0.4],
  [46_084, 1.6, 5.8, 3200, 5.5, 2, 0.5],
  [46_086, 1.6, 5.8, 2400, 6, 2, 0.5],
];

type Bench = ReturnType<typeof strictHost>;

/** The pane's own actions on a workbook in memory. */
export function bench(cells: readonly (readonly (string | number | boolean)[])[] = benchLog, options?: MemoryOptions): Bench {
  const host = strictHost(cells, options);
  vi.stubGlobal("Excel", host.Excel);
  vi.stubGlobal("Office", host.Office);
  return host;
}

afterEach(() => { vi.unstubAllGlobals(); });

/** What the pane reads with one cell of the log selected. */
export async function zoneAt({ store, sheetId }: Bench, row = 1, column = 1): Promise<RootZone> {
  store.select([areaAt(sheetId, row, column)]);
  return zoneOfSelected();
}

/** What the pane reads of the cells that are selected. */
export const zoneOfSelected = async (): Promise<RootZone> =>
  rootZoneOf(await readSelection(await selectedPlace()), { ...noChoices, ...forPot(noChoices, undefined, { medium: "coir" }) });

/** Every filled cell of a sheet by address "row,column": its formula, or its value. */
export function filledCells(store: MemoryStore, sheetId: string): Record<string, unknown> {
  const area = store.filledArea(sheetId, true);
  if (area === undefined) return {};
  const cells = store.formulas(area).flatMap((line, i) => line.map((cell, j) => [`${area.row + i},${area.column + j}`, cell] as const));
  return Object.fromEntries(cells.filter(([, cell]) => cell !== ""));
}

/** The words of a refusal; fails when there is none. */
export async function refusal(action: () => Promise<unknown>): Promise<string> {
  try {
    await action();
  } catch (problem) {
    if (problem instanceof SheetProblem) return problem.message;
    throw problem;
  }
  throw new Error("it was not refused");
}
