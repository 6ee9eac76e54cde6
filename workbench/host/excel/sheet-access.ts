import { type Area, parseArea, splitSheetName } from "./area";
import { HostError } from "./host-error";
import type { RequestContext } from "./request-context";
import type { SheetInfo } from "./sheet-store";

/** The sheet with this id. @throws {HostError} `ItemNotFound` once it is deleted */
export function sheetOf(context: RequestContext, id: string): SheetInfo {
  const sheet = context.store.sheets().find((each) => each.id === id);
  if (sheet === undefined) throw new HostError("ItemNotFound", "the sheet is gone");
  return sheet;
}

/** A sheet by name (case does not matter) or id. */
export function sheetCalled(context: RequestContext, nameOrId: string): string | undefined {
  const wanted = nameOrId.toLowerCase();
  return context.store.sheets().find((each) => each.id === nameOrId || each.name.toLowerCase() === wanted)?.id;
}

/** Fails on a sheet the person has protected. @throws {HostError} `AccessDenied` */
export function assertWritable(context: RequestContext, sheetId: string): void {
  sheetOf(context, sheetId);
  if (context.records.sheet(sheetId).protected) throw new HostError("AccessDenied");
}

/** The area that an address, a defined name or a table's name stands for. @throws {HostError} `InvalidArgument` */
export function areaCalled(context: RequestContext, address: string, sheetId: string): Area {
  const { sheetName, cells } = splitSheetName(address);
  const onSheet = sheetName === undefined ? sheetId : sheetCalled(context, sheetName);
  const area = onSheet === undefined ? undefined : parseArea(cells, onSheet);
  if (area !== undefined) return area;
  const { names, tables } = context.records;
  const named = names.find(({ name }) => name.toLowerCase() === address.toLowerCase());
  if (named !== undefined) return areaCalled(context, named.formula.replace(/^=/, "").replaceAll("$", ""), sheetId);
  const table = tables.find(({ name }) => name.toLowerCase() === address.toLowerCase());
  if (table !== undefined) return table.area;
  throw new HostError("InvalidArgument", `no cells called ${address}`);
}
