import { addressOf } from "../excel/area";
import { areaCalled, sheetOf } from "../excel/sheet-access";
import { assertTableName } from "../excel/table-names";
import { areaGiven } from "./areas-given";
import { field, fixed, type HostDocument, type HostObject, type Kinds, object, settable } from "./kind";

/** As a formula names it: `=Log!$B$2:$B$40`. */
function formulaFor(document: HostDocument, reference: unknown): string {
  if (typeof reference === "string") return reference.startsWith("=") ? reference : `=${reference}`;
  const area = areaGiven(document, reference, document.store.activeSheetId());
  return `=${addressOf(area, sheetOf(document, area.sheetId).name).replace(/([A-Z]+)(\d+)(?=$|:)/g, "$$$1$$$2")}`;
}

function add(_: true, document: HostDocument, name: unknown, reference: unknown, comment: unknown): HostObject {
  assertTableName(document, String(name));
  const { records } = document;
  return object("NamedItem", records.add(records.names, {
    id: records.newId("name"), name: String(name), formula: formulaFor(document, reference), comment: typeof comment === "string" ? comment : "",
  }));
}

/** Defined names. */
export const namedKinds = {
  NamedItemCollection: {
    items: (_, { records }) => records.names.map((each) => object("NamedItem", each)),
    acts: { add },
  },
  NamedItem: {
    id: ({ name }) => name,
    properties: {
      name: field("name"),
      formula: settable("formula"),
      comment: settable("comment"),
      visible: fixed(true),
    },
    finds: { getRange: ({ name }, document) => object("Range", areaCalled(document, name, document.store.activeSheetId())) },
    acts: { delete: (record, { records }) => { records.remove(records.names, (each) => each === record); } },
  },
} satisfies Partial<Kinds>;
