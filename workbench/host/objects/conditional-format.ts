import type { Area } from "../excel/area";
import { touches } from "../excel/area-maths";
import type { ConditionalFormatRecord } from "../excel/book-records";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { field, type HostDocument, type HostObject, type Kinds, object, settable } from "./kind";

type Type = ConditionalFormatRecord["type"];
const types: readonly string[] = ["CellValue", "ContainsText", "Custom"] satisfies Type[];

/** The rules of the same sheet, the first of which counts first. */
const ofSheet = ({ area }: ConditionalFormatRecord, { records }: HostDocument): ConditionalFormatRecord[] =>
  records.conditionalFormats.filter((each) => each.area.sheetId === area.sheetId);

/** Moves a rule to another place among those of its sheet. */
function moveTo(record: ConditionalFormatRecord, place: unknown, document: HostDocument): void {
  const { conditionalFormats: all } = document.records;
  const next = ofSheet(record, document).filter((each) => each !== record)[Number(place)];
  document.records.remove(all, (each) => each === record);
  all.splice(next === undefined ? all.length : all.indexOf(next), 0, record);
}

const part = (kind: "ConditionalRule" | "CustomConditionalFormat", type: Type) => (record: ConditionalFormatRecord): HostObject => {
  if (record.type !== type) throw new HostError("ItemNotFound", `this format is no ${type}`);
  return object(kind, record);
};

/** A new rule comes before those that are there, as in the host. */
function add(area: Area, document: HostDocument, type: unknown): HostObject {
  if (!types.includes(String(type))) throw new HostError("InvalidArgument", `no conditional format of type ${String(type)}`);
  assertWritable(document, area.sheetId);
  const { records } = document;
  const made: ConditionalFormatRecord = { id: records.newId("conditional-format"), type: type as Type, area, stopIfTrue: false };
  records.conditionalFormats.unshift(made);
  return object("ConditionalFormat", made);
}

function remove({ sheetId }: Area, document: HostDocument, isGone: (record: ConditionalFormatRecord) => boolean): void {
  assertWritable(document, sheetId);
  document.records.remove(document.records.conditionalFormats, isGone);
}

export const conditionalFormatKinds = {
  ConditionalFormat: {
    properties: {
      id: field("id"),
      type: field("type"),
      priority: { get: (record, document) => ofSheet(record, document).indexOf(record), set: moveTo },
      stopIfTrue: settable("stopIfTrue"),
    },
    parts: {
      cellValue: part("ConditionalRule", "CellValue"),
      textComparison: part("ConditionalRule", "ContainsText"),
      custom: part("CustomConditionalFormat", "Custom"),
    },
    finds: { getRange: ({ area }) => object("Range", area) },
    acts: { delete: (record, document) => { remove(record.area, document, (each) => each === record); } },
  },
  /** The conditional formats that touch a range. */
  ConditionalFormatCollection: {
    items: (area, { records }) =>
      records.conditionalFormats.filter((each) => touches(each.area, area)).map((each) => object("ConditionalFormat", each)),
    acts: {
      add,
      clearAll: (area, document) => { remove(area, document, (each) => touches(each.area, area)); },
    },
  },
} satisfies Partial<Kinds>;
