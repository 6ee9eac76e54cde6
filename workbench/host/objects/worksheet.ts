import { areaAt } from "../excel/area";
import { HostError } from "../excel/host-error";
import { areaCalled, assertSheetName, assertWritable, sheetCalled, sheetOf } from "../excel/sheet-access";
import type { Visibility } from "../excel/sheet-store";
import { wholeGiven } from "./areas-given";
import { fixed, type HostDocument, type HostObject, type Kind, type Kinds, object, objectIfAny } from "./kind";

const whole = "1:1048576";

/** What the library asks before it listens to events, and after; all are told anyway. */
const heard = (...events: readonly string[]): Readonly<Record<string, () => undefined>> =>
  Object.fromEntries(events.flatMap((event) => [`_Register${event}Event`, `_Unregister${event}Event`]).map((name) => [name, () => undefined]));

function rename(id: string, name: unknown, document: HostDocument): void {
  assertSheetName(String(name));
  const taken = sheetCalled(document, String(name));
  if (taken !== undefined && taken !== id) throw new HostError("ItemAlreadyExists", String(name));
  document.store.renameSheet(id, String(name));
}

function remove(id: string, document: HostDocument): void {
  assertWritable(document, id);
  const visible = document.store.sheets().filter(({ visibility }) => visibility === "Visible");
  if (visible.length === 1 && visible[0]?.id === id) throw new HostError("InvalidOperation", "a workbook keeps one visible sheet");
  document.records.forgetSheet(id);
  document.store.deleteSheet(id);
}

const worksheet: Kind<string> = {
  alsoCalled: (id, document) => sheetOf(document, id).name,
  properties: {
    id: { get: (id) => id },
    name: { get: (id, document) => sheetOf(document, id).name, set: rename },
    position: { get: (id, { store }) => store.sheets().findIndex((sheet) => sheet.id === id) },
    visibility: {
      get: (id, document) => sheetOf(document, id).visibility,
      set: (id, visibility, { store }) => { store.setVisibility(id, visibility as Visibility); },
    },
    showGridlines: fixed(true),
    /** The name under which the library sends `showGridlines`. */
    gridlines: fixed(true),
  },
  parts: {
    tables: (sheetId) => object("TableCollection", { sheetId }),
    shapes: (id) => object("ShapeCollection", id),
    charts: (id) => object("ChartCollection", id),
    names: () => object("NamedItemCollection", true),
    protection: (id) => object("WorksheetProtection", id),
    freezePanes: (id) => object("WorksheetFreezePanes", id),
    pageLayout: (id) => object("PageLayout", id),
    customProperties: (id, document) => object("WorksheetCustomPropertyCollection", document.records.sheet(sheetOf(document, id).id).custom),
  },
  finds: {
    getRange: (id, document, address) => object("Range", areaCalled(document, typeof address === "string" ? address : whole, id)),
    getRangeByIndexes: (id, _, ...given) => {
      const [row = 0, column = 0, rows, columns] = given.map((each) => wholeGiven(each));
      return object("Range", areaAt(id, row, column, rows, columns));
    },
    getCell: (id, _, row, column) => object("Range", areaAt(id, wholeGiven(row), wholeGiven(column))),
    getUsedRange: (id, { store }, valuesOnly) => object("Range", store.filledArea(id, valuesOnly === true) ?? areaAt(id, 0, 0)),
    getUsedRangeOrNullObject: (id, { store }, valuesOnly) => objectIfAny("Range", store.filledArea(id, valuesOnly === true)),
    ...heard("DataChanged"),
  },
  acts: { delete: remove },
  shows: { activate: (id, { store }) => { store.activateSheet(id); } },
};

function freeName({ store }: HostDocument): string {
  const taken = new Set(store.sheets().map(({ name }) => name));
  let number = taken.size + 1;
  while (taken.has(`Sheet${number}`)) number += 1;
  return `Sheet${number}`;
}

/** A new sheet at the end; it is not activated. */
function add(_: true, document: HostDocument, name: unknown): HostObject {
  const given = typeof name === "string" ? name : freeName(document);
  assertSheetName(given);
  if (sheetCalled(document, given) !== undefined) throw new HostError("ItemAlreadyExists", given);
  return object("Worksheet", document.store.addSheet(given));
}

export const worksheetKinds = {
  Worksheet: worksheet,
  WorksheetCollection: {
    items: (_, { store }) => store.sheets().map(({ id }) => object("Worksheet", id)),
    finds: {
      getActiveWorksheet: (_, { store }) => object("Worksheet", store.activeSheetId()),
      ...heard("DataChanged", "Calculated", "Activated", "Added", "Deleted"),
    },
    acts: { add },
  },
} satisfies Partial<Kinds>;
