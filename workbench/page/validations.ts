import { DataValidationErrorStyle, DataValidationRenderMode, DataValidationOperator, DataValidationType, type ISheetDataValidationRule } from "@univerjs/core";
import { AddDataValidationMutation, RemoveDataValidationMutation } from "@univerjs/preset-sheets-data-validation";
import type { ValidationRecord } from "../host/excel/book-records";
import { comparisonWords, limitWords } from "../host/excel/words";
import { plain } from "./conditional-formats";
import { rangeIn } from "./ranges";
import type { SheetChange } from "./sheet-change";

const alerts: Readonly<Record<string, DataValidationErrorStyle>> = {
  stop: DataValidationErrorStyle.STOP,
  warning: DataValidationErrorStyle.WARNING,
  information: DataValidationErrorStyle.INFO,
};

/** Shows what may be typed on a sheet in place of what was shown before; a kind the grid does not know is left out. */
export function showValidations({ run, sheetId }: SheetChange, shown: readonly string[], records: readonly ValidationRecord[]): string[] {
  if (shown.length > 0) run(RemoveDataValidationMutation.id, { ruleId: shown });
  const rules = records.flatMap((record, place) => ruleFor(record, `${sheetId}-${place}`) ?? []);
  for (const rule of rules) run(AddDataValidationMutation.id, { rule });
  return rules.map(({ uid }) => uid);
}

/** The grid's own constant for a word of the host. */
function gridWord<Word extends string>(known: Readonly<Record<string, Word>>, words: Readonly<Record<string, string>>, word: unknown): Word | undefined {
  return Object.values(known).find((each) => each === words[String(word)]);
}

function ruleFor({ area, rule, errorAlert }: ValidationRecord, uid: string): ISheetDataValidationRule | undefined {
  const [kind = "", detail] = Object.entries(rule)[0] ?? [];
  const type = gridWord(DataValidationType, limitWords, kind);
  if (type === undefined || typeof detail !== "object" || detail === null) return undefined;
  const { source, formula, formula1 = source ?? formula, formula2, operator, inCellDropDown } = detail as Readonly<Record<string, unknown>>;
  const kindOfAlert = alerts[plain(errorAlert["style"]).toLowerCase()];
  const comparison = gridWord(DataValidationOperator, comparisonWords, operator);
  return {
    uid,
    type,
    ranges: [rangeIn(area)],
    allowBlank: true,
    formula1: plain(formula1),
    ...(formula2 === undefined ? {} : { formula2: plain(formula2) }),
    ...(comparison === undefined ? {} : { operator: comparison }),
    renderMode: DataValidationRenderMode.ARROW,
    showDropDown: inCellDropDown !== false,
    showErrorMessage: errorAlert["showAlert"] !== false,
    error: plain(errorAlert["message"]),
    errorStyle: kindOfAlert ?? DataValidationErrorStyle.STOP,
  };
}
