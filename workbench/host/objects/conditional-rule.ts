import type { ConditionalFormatRecord } from "../excel/book-records";
import { fixed, type HostDocument, type Kinds, object, type Property } from "./kind";

type Field = "fill" | "color" | "bold" | "italic";

/** One field of the look that a rule gives, with what it is where the rule leaves it. */
const look = (field: Field, none: unknown): Property<ConditionalFormatRecord> => ({
  get: (record) => record[field] ?? none,
  set: (record, value, { records }) => {
    Object.assign(record, { [field]: value });
    records.onChange();
  },
});

function setRule(record: ConditionalFormatRecord, rule: unknown, { records }: HostDocument): void {
  record.rule = rule as Readonly<Record<string, unknown>>;
  records.onChange();
}

const edges = ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"];

type RuleKinds =
  | "ConditionalRule" | "CustomConditionalFormat" | "ConditionalFormatRule" | "ConditionalRangeFormat" | "ConditionalRangeFill"
  | "ConditionalRangeFont" | "ConditionalRangeBorderCollection" | "ConditionalRangeBorder";

export const ruleKinds: Pick<Kinds, RuleKinds> = {
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
  ConditionalRangeFill: { properties: { color: look("fill", "") } },
  ConditionalRangeFont: { properties: { color: look("color", ""), bold: look("bold", false), italic: look("italic", false) } },
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
};
