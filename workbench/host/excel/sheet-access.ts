import { type Area, parseArea, splitSheetName } from "./area";
import { HostError } from "./host-error";
import type { BookRecords } from "./book-records";
import type { SheetInfo, SheetStore } from "./sheet-store";

/** A workbook: its sheets and cells, and what belongs to it beside them. */
export interface OpenBook {
  readonly store: SheetStore;
  readonly records: BookRecords;
}

/** The sheet with this id. @throws {HostError} `ItemNotFound` once it is deleted */
export function sheetOf(book: OpenBook, id: string): SheetInfo {
  const sheet = book.store.sheets().find((each) => each.id === id);
  if (sheet === undefined) throw new HostError("ItemNotFound", "the sheet is gone");
  return sheet;
}

/** A sheet by name (case does not matter) or id. */
export function sheetCalled(book: OpenBook, nameOrId: string): string | undefined {
  const wanted = nameOrId.toLowerCase();
  return book.store.sheets().find((each) => each.id === nameOrId || each.name.toLowerCase() === wanted)?.id;
}

/** Fails on a sheet the person has protected. @throws {HostError} `AccessDenied` */
export function assertWritable(book: OpenBook, sheetId: string): void {
  sheetOf(book, sheetId);
  if (book.records.sheet(sheetId).protected) throw new HostError("AccessDenied");
}

/** The area that an address, a defined name or a table's name stands for. @throws {HostError} `InvalidArgument` */
export function areaCalled(book: OpenBook, address: string, sheetId: string): Area {
  const { sheetName, cells } = splitSheetName(address);
  const onSheet = sheetName === undefined ? sheetId : sheetCalled(book, sheetName);
  const area = onSheet === undefined ? undefined : parseArea(cells, onSheet);
  if (area !== undefined) return area;
  const { names, tables } = book.records;
  const named = names.find(({ name }) => name.toLowerCase() === address.toLowerCase());
  if (named !== undefined) return areaCalled(book, named.formula.replace(/^=/, "").replaceAll("$", ""), sheetId);
  const table = tables.find(({ name }) => name.toLowerCase() === address.toLowerCase());
  if (table !== undefined) return table.area;
  throw new HostError("InvalidArgument", `no cells called ${address}`);
}

/** @throws {HostError} `InvalidArgument` on a name the host would not take */
export function assertSheetName(name: string): void {
  if (name.length >= 1 && name.length <= 31 && !/[\\/?*[\]:]/.test(name) && !name.startsWith("'")) return;
  throw new HostError("InvalidArgument", `${name} is no name for a sheet`);
}
