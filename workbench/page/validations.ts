import { DataValidationErrorStyle, DataValidationOperator, DataValidationRenderMode, DataValidationType, type ISheetDataValidationRule } from "@univerjs/core";
import { AddDataValidationMutation, RemoveDataValidationMutation } from "@univerjs/preset-sheets-data-validation";
import type { ValidationRecord } from "../host/excel/book-records";
import { plain } from "./conditional-formats";
import { rangeIn, type SheetChange } from "./sheet-change";

const types: Readonly<Record<string, DataValidationType>> = {
  list: DataValidationType.LIST,
  wholeNumber: DataValidationType.WHOLE,
  decimal: DataValidationType.DECIMAL,
  date: DataValidationType.DATE,
  textLength: DataValidationType.TEXT_LENGTH,
  custom: DataValidationType.CUSTOM,
};
const operators: Readonly<Record<string, DataValidationOperator>> = {
  Between: DataValidationOperator.BETWEEN,
  NotBetween: DataValidationOperator.NOT_BETWEEN,
  EqualTo: DataValidationOperator.EQUAL,
  NotEqualTo: DataValidationOperator.NOT_EQUAL,
  GreaterThan: DataValidationOperator.GREATER_THAN,
  LessThan: DataValidationOperator.LESS_THAN,
  GreaterThanOrEqualTo: DataValidationOperator.GREATER_THAN_OR_EQUAL,
  LessThanOrEqualTo: DataValidationOperator.LESS_THAN_OR_EQUAL,
};
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

function ruleFor({ area, rule, errorAlert }: ValidationRecord, uid: string): ISheetDataValidationRule | undefined {
  const [kind = "", detail] = Object.entries(rule)[0] ?? [];
  const type = types[kind];
  if (type === undefined || typeof detail !== "object" || detail === null) return undefined;
  const { source, formula, formula1 = source ?? formula, formula2, operator, inCellDropDown } = detail as Readonly<Record<string, unknown>>;
  const kindOfAlert = alerts[plain(errorAlert["style"]).toLowerCase()];
  const comparison = operators[String(operator)];
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
