import type { ConditionalRule, Sheet } from "hucre";
import type { BookConditionalFormat } from "../book";
import { asTyped } from "../engine/formula-text";
import { comparisonWords, hostWord } from "../host/excel/words";
import { cellLook } from "./cell-look";

/** The rules of a file that the host object knows, the first that counts first; scales, bars and icons are left out. */
export function conditionalFormats({ conditionalRules = [] }: Sheet): BookConditionalFormat[] {
  return [...conditionalRules].sort((one, other) => one.priority - other.priority).flatMap((each) => {
    const rule = ruleOf(each);
    if (rule === undefined) return [];
    const { borders = {}, ...look } = cellLook(each.style ?? {});
    const lines = Object.fromEntries(Object.keys(borders).map((edge) => [edge, "Continuous"]));
    return [{ ...rule, ...look, borders: lines, ranges: each.range.split(" "), stopIfTrue: each.stopIfTrue === true }];
  });
}

function ruleOf({ type, operator = "between", formula = "", text }: ConditionalRule): Pick<BookConditionalFormat, "type" | "rule"> | undefined {
  const [formula1 = "", formula2] = [formula].flat().map((each) => `=${asTyped(each)}`);
  if (type === "expression") return { type: "Custom", rule: { formula: formula1 } };
  if (type === "containsText") return { type: "ContainsText", rule: { operator: "Contains", text: text ?? "" } };
  if (type !== "cellIs") return undefined;
  return { type: "CellValue", rule: { operator: hostWord(comparisonWords, operator), formula1, ...(formula2 === undefined ? {} : { formula2 }) } };
}
