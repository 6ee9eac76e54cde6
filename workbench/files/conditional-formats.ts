import type { ConditionalRule, Sheet, ValidationOperator } from "hucre";
import type { BookConditionalFormat } from "../book";
import { asTyped } from "../engine/formula-text";
import { cellLook } from "./cell-look";

/** The host's words for the file's, in rules on values and in limits alike. */
export const operators: Readonly<Record<ValidationOperator, string>> = {
  between: "Between",
  notBetween: "NotBetween",
  equal: "EqualTo",
  notEqual: "NotEqualTo",
  greaterThan: "GreaterThan",
  lessThan: "LessThan",
  greaterThanOrEqual: "GreaterThanOrEqualTo",
  lessThanOrEqual: "LessThanOrEqualTo",
};

/** The rules of a file that the host object knows, the first that counts first; scales, bars and icons are left out. */
export function conditionalFormats({ conditionalRules = [] }: Sheet): BookConditionalFormat[] {
  return [...conditionalRules].sort((one, other) => one.priority - other.priority).flatMap((each) => {
    const rule = ruleOf(each);
    if (rule === undefined) return [];
    return [{ ...rule, ranges: each.range.split(" "), look: cellLook(each.style ?? {}), stopIfTrue: each.stopIfTrue === true }];
  });
}

function ruleOf({ type, operator = "between", formula = "", text }: ConditionalRule): Pick<BookConditionalFormat, "type" | "rule"> | undefined {
  const [formula1 = "", formula2] = [formula].flat().map((each) => `=${asTyped(each)}`);
  if (type === "expression") return { type: "Custom", rule: { formula: formula1 } };
  if (type === "containsText") return { type: "ContainsText", rule: { operator: "Contains", text: text ?? "" } };
  if (type !== "cellIs") return undefined;
  return { type: "CellValue", rule: { operator: operators[operator], formula1, ...(formula2 === undefined ? {} : { formula2 }) } };
}
