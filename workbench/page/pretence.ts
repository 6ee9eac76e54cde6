import type { SheetStore } from "../host/excel/sheet-store";
import { noFailure, type HostSwitches } from "../host/excel/switches";

export const functionsMissing = "the functions are not loaded";

/** Troubles of a real host that a person can look at here, by what the page calls them. */
const switchesFor: Readonly<Record<string, Partial<HostSwitches>>> = {
  "all is well": {},
  "a cell is being edited": { cellEditing: true },
  "the sheets are protected": {},
  "an older Excel (1.9)": { missingApi: "ExcelApi 1.10" },
  [functionsMissing]: {},
  "a slow Excel (2 s)": { syncDelay: 2000 },
  "answers arrive late (3 s)": { answersLate: 3000 },
  "little room for answers": { cellsPerSync: 100 },
};

export const pretences: readonly string[] = Object.keys(switchesFor);

/** Puts the host into one of these troubles, and out of every other. */
export function pretend(store: SheetStore, pretence: string): void {
  Object.assign(store.records.switches, noFailure, switchesFor[pretence]);
  for (const { id } of store.sheets()) store.records.sheet(id).protected = pretence === "the sheets are protected";
}
