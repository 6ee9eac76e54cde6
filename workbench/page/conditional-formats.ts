import { BorderStyleTypes, type IStyleBase } from "@univerjs/core";
import {
  AddConditionalRuleMutation,
  CFRuleType,
  CFSubRuleType,
  CFTextOperator,
  DeleteConditionalRuleMutation,
  type IConditionFormattingRule,
} from "@univerjs/preset-sheets-conditional-formatting";
import { cellsOf } from "../host/excel/area";
import type { ConditionalFormatRecord } from "../host/excel/book-records";
import { styleOf } from "./cell-looks";
import { rangeIn } from "./ranges";
import type { SheetChange } from "./sheet-change";

const textOperators: Readonly<Record<string, CFTextOperator>> = {
  Contains: CFTextOperator.containsText,
  NotContains: CFTextOperator.notContainsText,
  BeginsWith: CFTextOperator.beginsWith,
  EndsWith: CFTextOperator.endsWith,
};
const signs: Readonly<Record<string, string>> = {
  EqualTo: "=",
  NotEqualTo: "<>",
  GreaterThan: ">",
  LessThan: "<",
  GreaterThanOrEqualTo: ">=",
  LessThanOrEqualTo: "<=",
};
const lineStyles: Readonly<Record<string, BorderStyleTypes>> = { Dash: BorderStyleTypes.DASHED, Dot: BorderStyleTypes.DOTTED, Double: BorderStyleTypes.DOUBLE };
const ink = "#000000";

/** Shows the rules of a sheet in place of those shown before; the first of them counts first. */
export function showConditionalFormats({ run }: SheetChange, shown: readonly string[], records: readonly ConditionalFormatRecord[]): string[] {
  for (const cfId of shown) run(DeleteConditionalRuleMutation.id, { cfId });
  const rules = records.flatMap((record) => ruleFor(record) ?? []);
  // Each rule that the grid is given comes before those it has.
  for (const rule of [...rules].reverse()) run(AddConditionalRuleMutation.id, { rule });
  return rules.map(({ cfId }) => cfId);
}

function ruleFor(record: ConditionalFormatRecord): IConditionFormattingRule | undefined {
  const condition = conditionOf(record);
  if (condition === undefined) return undefined;
  const rule = { ...condition, type: CFRuleType.highlightCell, style: styleFor(record) } as IConditionFormattingRule["rule"];
  return { cfId: record.id, ranges: [rangeIn(record.area)], stopIfTrue: record.stopIfTrue, rule };
}

/** A limit or a text as it is written into a rule; what is no plain value is left blank. */
export function plain(value: unknown): string {
  return typeof value === "string" || typeof value === "number" || typeof value === "boolean" ? String(value) : "";
}

function conditionOf({ type, rule, area }: ConditionalFormatRecord): object | undefined {
  if (rule === undefined) return undefined;
  const { formula, formula1, formula2, operator, text } = rule;
  if (type === "ContainsText") return { subType: CFSubRuleType.text, operator: textOperators[String(operator)], value: plain(text) };
  if (type === "Custom") return byFormula(String(formula));
  const cell = cellsOf({ ...area, rowCount: 1, columnCount: 1 });
  const [low, high] = [limit(formula1), limit(formula2)];
  if (operator === "Between") return byFormula(`=AND(${cell}>=${low},${cell}<=${high})`);
  if (operator === "NotBetween") return byFormula(`=OR(${cell}<${low},${cell}>${high})`);
  const sign = signs[String(operator)];
  return sign === undefined ? undefined : byFormula(`=${cell}${sign}${low}`);
}

function byFormula(formula: string): object {
  return { subType: CFSubRuleType.formula, value: formula.startsWith("=") ? formula : `=${formula}` };
}

/** The host takes `=0.5`, `0.5` and `="in band"`. */
function limit(given: unknown): string {
  return `(${String(given).replace(/^=/, "")})`;
}

function styleFor({ fill, color, bold, italic, borders = {} }: ConditionalFormatRecord): IStyleBase {
  const drawn = Object.entries(borders).filter(([, line]) => line !== "None");
  const style = styleOf({ fill, color, bold, italic, borders: Object.fromEntries(drawn.map(([edge]) => [edge, color ?? ink])) });
  const line = lineStyles[drawn[0]?.[1] ?? ""];
  const { t, b, l, r } = style.bd ?? {};
  if (line !== undefined) for (const side of [t, b, l, r]) if (side) side.s = line;
  return style;
}
