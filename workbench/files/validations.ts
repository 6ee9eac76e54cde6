import type { DataValidation, Sheet } from "hucre";
import type { BookValidation } from "../book";
import { asTyped } from "../engine/formula-text";
import { comparisonWords, hostWord, limitWords } from "../host/excel/words";

/** What a file allows to be typed. */
export function validations({ dataValidations = [] }: Sheet): BookValidation[] {
  return dataValidations.map((each) => ({
    ranges: each.range.split(" "),
    rule: ruleOf(each),
    prompt: each.showInputMessage === true ? { title: each.inputTitle ?? "", message: each.inputMessage ?? "", showPrompt: true } : {},
    errorAlert: {
      title: each.errorTitle ?? "",
      message: each.errorMessage ?? "",
      showAlert: each.showErrorMessage === true,
      style: each.errorStyle ?? "stop",
    },
  }));
}

function ruleOf({ type, operator = "between", formula1 = "", formula2, values }: DataValidation): Readonly<Record<string, unknown>> {
  if (type === "list") return { list: { inCellDropDown: true, source: values?.join(",") ?? `=${asTyped(formula1)}` } };
  if (type === "custom") return { custom: { formula: `=${asTyped(formula1)}` } };
  const limits = { formula1: limit(formula1), ...(formula2 === undefined ? {} : { formula2: limit(formula2) }) };
  return { [hostWord(limitWords, type) ?? type]: { ...limits, operator: hostWord(comparisonWords, operator) } };
}

/** A number as a number, a formula with its equals sign. */
function limit(text: string): number | string {
  return text.trim() !== "" && Number.isFinite(Number(text)) ? Number(text) : `=${asTyped(text)}`;
}
