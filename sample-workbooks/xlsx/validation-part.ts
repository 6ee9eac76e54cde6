import { type Allowed, type Validation } from "./spec";
import { element, escaped } from "./xml";

/** What a cell accepts, said while it is chosen; the person may keep another value after a word of warning. */
export function validationPart({ range, allowed, hint }: Validation): string {
  const { type, operator, limits } = ruleOf(allowed);
  const attributes = { type, errorStyle: "warning", operator, allowBlank: true, showInputMessage: true, showErrorMessage: true, error: hint, prompt: hint, sqref: range };
  return element("dataValidation", attributes, ...limits.map((limit, i) => element(`formula${i + 1}`, {}, escaped(limit))));
}

function ruleOf(allowed: Allowed | undefined): { type?: string; operator?: string; limits: readonly string[] } {
  if (allowed === undefined) return { limits: [] };
  if ("list" in allowed) return { type: "list", limits: [`"${allowed.list.join(",")}"`] };
  if ("afterDay" in allowed) return { type: "date", operator: "greaterThan", limits: [String(allowed.afterDay)] };
  return { type: "decimal", operator: "between", limits: allowed.between.map(String) };
}
