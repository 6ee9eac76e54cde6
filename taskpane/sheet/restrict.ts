import { type Accepts } from "../templates/sheet-template";

/** What a box accepts; the person may keep another figure after a word of warning. */
export function restrict({ dataValidation }: Excel.Range, accepts: Accepts): void {
  const rule = ruleOf(accepts);
  if (rule !== undefined) dataValidation.rule = rule;
  dataValidation.prompt = { showPrompt: true, title: "", message: accepts.hint };
  dataValidation.errorAlert = { showAlert: true, style: "Warning", title: "Is that right?", message: accepts.hint };
}

function ruleOf(accepts: Accepts): Excel.DataValidationRule | undefined {
  if ("between" in accepts)
    return { decimal: { formula1: accepts.between[0], formula2: accepts.between[1], operator: "Between" } };
  if ("date" in accepts) return { date: { formula1: "2000-01-01", operator: "GreaterThan" } };
  return accepts.words.length === 0 ? undefined : { list: { inCellDropDown: true, source: accepts.words.join(",") } };
}
