/// <reference types="office-js" />
import type { BookRecords } from "../../../workbench/host/excel/book-records";
import type { HostError, HostErrorCode } from "../../../workbench/host/excel/host-error";
import { hostOver } from "../../../workbench/host/excel/host-globals";
import { type MemoryOptions, MemoryStore } from "../../../workbench/host/excel/memory-store";
import type { HostSwitches } from "../../../workbench/host/excel/switches";

/** The types of the host leave out a call that it documents for ExcelApi 1.9. */
type ShapesWithSvg = Excel.ShapeCollection & { addSvg(xml: string): Excel.Shape };

export function addSvg(sheet: Excel.Worksheet, xml: string): Excel.Shape {
  return (sheet.shapes as ShapesWithSvg).addSvg(xml);
}

interface StrictHost {
  readonly store: MemoryStore;
  readonly records: BookRecords;
  readonly switches: HostSwitches;
  readonly sheetId: string;
  readonly run: typeof Excel.run;
  readonly Office: typeof Office;
}

/** A workbook in memory with one sheet, "Log", seen through the host object with the real host's types. */
export function strictHost(cells: readonly (readonly (string | number | boolean)[])[] = [], options?: MemoryOptions): StrictHost {
  const store = new MemoryStore(options, "Log");
  const sheetId = store.activeSheetId();
  const columnCount = Math.max(0, ...cells.map((row) => row.length));
  if (columnCount > 0) store.write({ sheetId, row: 0, column: 0, rowCount: cells.length, columnCount }, cells);
  const host = hostOver(store);
  const run = host.Excel.run as unknown as typeof Excel.run;
  return { store, records: store.records, switches: store.records.switches, sheetId, run, Office: host.Office as unknown as typeof Office };
}

/** The code under which a call fails, or "none". */
export async function codeOf(call: () => Promise<unknown>): Promise<HostErrorCode | "none"> {
  try {
    await call();
    return "none";
  } catch (problem) {
    return (problem as HostError).code;
  }
}
