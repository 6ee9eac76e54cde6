import type { ConditionalFormatRecord } from "../excel/book-records";
import { fixed, type HostDocument, type Kinds, object, settable } from "./kind";

function setRule(record: ConditionalFormatRecord, rule: unknown, { records }: HostDocument): void {
  record.rule = rule as Readonly<Record<string, unknown>>;
  records.onChange();
}

const edges = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"];

export const ruleKinds = {
  /** A rule on the cell's value or on the text in it. */
  ConditionalRule: {
    properties: { rule: { get: ({ rule }) => rule, set: setRule } },
    parts: { format: (record) => object("ConditionalRangeFormat", record) },
  },
  /** A rule given as a formula. */
  CustomConditionalFormat: {
    parts: {
      format: (record) => object("ConditionalRangeFormat", record),
      rule: (record) => object("ConditionalFormatRule", record),
    },
  },
  ConditionalFormatRule: {
    properties: {
      formula: {
        get: ({ rule }) => rule?.["formula"] ?? "",
        set: (record, formula, document) => { setRule(record, { formula }, document); },
      },
    },
  },
  ConditionalRangeFormat: {
    parts: {
      fill: (record) => object("ConditionalRangeFill", record),
      font: (record) => object("ConditionalRangeFont", record),
      borders: (record) => object("ConditionalRangeBorderCollection", record),
    },
  },
  ConditionalRangeFill: { properties: { color: settable("fill", "") } },
  ConditionalRangeFont: { properties: { color: settable("color", ""), bold: settable("bold", false), italic: settable("italic", false) } },
  ConditionalRangeBorderCollection: { items: (record) => edges.map((edge) => object("ConditionalRangeBorder", { record, edge })) },
  ConditionalRangeBorder: {
    id: ({ edge }) => edge,
    properties: {
      style: {
        get: ({ record, edge }) => record.borders?.[edge] ?? "None",
        set: ({ record, edge }, style, { records }) => {
          record.borders = { ...record.borders, [edge]: String(style) };
          records.onChange();
        },
      },
      color: fixed(""),
    },
  },
} satisfies Partial<Kinds>;
