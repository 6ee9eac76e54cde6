import type { Area } from "../excel/area";
import { intersection } from "../excel/area-maths";
import { type ConditionalFormatRecord, removeRecord } from "../excel/book-records";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { type HostDocument, type HostObject, type Kind, type Kinds, object, objectIfAny } from "./kind";

type Type = ConditionalFormatRecord["type"];
const types: readonly string[] = ["CellValue", "ContainsText", "Custom"] satisfies Type[];

const touching = (area: Area, { records }: HostDocument): ConditionalFormatRecord[] =>
  records.conditionalFormats.filter((each) => intersection(each.area, area) !== undefined);

/** The rules of the same sheet, the first of which counts first. */
const ofSheet = ({ area }: ConditionalFormatRecord, { records }: HostDocument): ConditionalFormatRecord[] =>
  records.conditionalFormats.filter((each) => each.area.sheetId === area.sheetId);

/** Moves a rule to another place among those of its sheet. */
function moveTo(record: ConditionalFormatRecord, place: unknown, document: HostDocument): void {
  const { conditionalFormats: all } = document.records;
  const others = ofSheet(record, document).filter((each) => each !== record);
  const next = others[Number(place)];
  removeRecord(all, record);
  all.splice(next === undefined ? all.length : all.indexOf(next), 0, record);
  document.records.onChange();
}

type Part = NonNullable<Kind<ConditionalFormatRecord>["parts"]>[string];

const part = (kind: "ConditionalRule" | "CustomConditionalFormat", type: Type, mayBeAbsent: boolean): Part => (record) => {
  if (record.type !== type && !mayBeAbsent) throw new HostError("ItemNotFound", `this format is no ${type}`);
  return objectIfAny(kind, record.type === type ? record : undefined);
};

const format: Kind<ConditionalFormatRecord> = {
  id: ({ id }) => id,
  properties: {
    id: { get: ({ id }) => id },
    type: { get: ({ type }) => type },
    priority: { get: (record, document) => ofSheet(record, document).indexOf(record), set: moveTo },
    stopIfTrue: {
      get: ({ stopIfTrue }) => stopIfTrue,
      set: (record, value, { records }) => {
        record.stopIfTrue = value === true;
        records.onChange();
      },
    },
  },
  parts: {
    cellValue: part("ConditionalRule", "CellValue", false),
    cellValueOrNullObject: part("ConditionalRule", "CellValue", true),
    textComparison: part("ConditionalRule", "ContainsText", false),
    textComparisonOrNullObject: part("ConditionalRule", "ContainsText", true),
    custom: part("CustomConditionalFormat", "Custom", false),
    customOrNullObject: part("CustomConditionalFormat", "Custom", true),
  },
  finds: { getRange: ({ area }) => object("Range", area) },
  acts: {
    delete: (record, document) => {
      assertWritable(document, record.area.sheetId);
      removeRecord(document.records.conditionalFormats, record);
      document.records.onChange();
    },
  },
};

/** A new rule comes before those that are there, as in the host. */
function add(area: Area, document: HostDocument, type: unknown): HostObject {
  if (!types.includes(String(type))) throw new HostError("InvalidArgument", `no conditional format of type ${String(type)}`);
  assertWritable(document, area.sheetId);
  const { records } = document;
  const made: ConditionalFormatRecord = {
    id: records.newId("conditional-format"), type: type as Type, area, rule: undefined, fill: undefined, color: undefined, stopIfTrue: false,
  };
  records.conditionalFormats.unshift(made);
  return object("ConditionalFormat", made);
}

/** The conditional formats that touch a range. */
const collection: Kind<Area> = {
  items: (area, document) => touching(area, document).map((each) => object("ConditionalFormat", each)),
  acts: {
    add,
    clearAll: (area, document) => {
      assertWritable(document, area.sheetId);
      for (const record of touching(area, document)) removeRecord(document.records.conditionalFormats, record);
      document.records.onChange();
    },
  },
};

export const conditionalFormatKinds: Pick<Kinds, "ConditionalFormat" | "ConditionalFormatCollection"> = {
  ConditionalFormat: format,
  ConditionalFormatCollection: collection,
};
