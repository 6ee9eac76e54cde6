/// <reference types="office-js" />
import { clientOver, type HostClient } from "../../../workbench/host/client/load-client";
import type { BookRecords } from "../../../workbench/host/excel/book-records";
import { type MemoryOptions, MemoryStore } from "../../../workbench/host/excel/memory-store";
import type { HostSwitches } from "../../../workbench/host/excel/switches";

interface StrictHost extends HostClient {
  readonly store: MemoryStore;
  readonly records: BookRecords;
  readonly switches: HostSwitches;
  readonly sheetId: string;
  readonly run: typeof Excel.run;
}

/** A workbook in memory with one sheet, "Log", seen through the host's own client library. */
export function strictHost(cells: readonly (readonly (string | number | boolean)[])[] = [], options?: MemoryOptions): StrictHost {
  const store = new MemoryStore(options, "Log");
  const sheetId = store.activeSheetId();
  const columnCount = Math.max(0, ...cells.map((row) => row.length));
  if (columnCount > 0) store.write({ sheetId, row: 0, column: 0, rowCount: cells.length, columnCount }, cells);
  const { Excel, Office, OfficeExtension } = clientOver(store);
  const { records } = store;
  return { store, records, switches: records.switches, sheetId, Excel, Office, OfficeExtension, run: Excel.run };
}

/** A PNG of 2 by 1 pixels, which no picture is smaller than in the tests. */
export const smallPng = "iVBORw0KGgoAAAANSUhEUgAAAAIAAAABCAYAAAD0In+KAAAADklEQVR4nGP4z8DwHwQBEPgD/U6VwW8AAAAASUVORK5CYII=";

/** The code under which a call fails, or "none". */
export async function codeOf(call: () => Promise<unknown>): Promise<string> {
  try {
    await call();
    return "none";
  } catch (problem) {
    return (problem as OfficeExtension.Error).code;
  }
}
