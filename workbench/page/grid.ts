import { LocaleType, LogLevel, mergeLocales, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import { UniverSheetsConditionalFormattingPreset } from "@univerjs/preset-sheets-conditional-formatting";
import formatsEnglish from "@univerjs/preset-sheets-conditional-formatting/locales/en-US";
import "@univerjs/preset-sheets-conditional-formatting/lib/index.css";
import { UniverSheetsDataValidationPreset } from "@univerjs/preset-sheets-data-validation";
import validationEnglish from "@univerjs/preset-sheets-data-validation/locales/en-US";
import "@univerjs/preset-sheets-data-validation/lib/index.css";
import { UniverSheetsNotePreset } from "@univerjs/preset-sheets-note";
import noteEnglish from "@univerjs/preset-sheets-note/locales/en-US";
import "@univerjs/preset-sheets-note/lib/index.css";
import type { UniverFunction } from "../engine/univer-functions";

export interface Grid {
  readonly api: FUniver;
  readonly univer: Univer;
}

/** The spreadsheet component, with the add-in's functions among its own. */
export function startGrid(container: HTMLElement, functions: readonly UniverFunction[], darkMode: boolean): Grid {
  const locales = { [LocaleType.EN_US]: mergeLocales(english, formatsEnglish, validationEnglish, noteEnglish) };
  const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.ERROR, darkMode });
  const core = UniverSheetsCorePreset({
    container,
    toolbar: false,
    statusBarStatistic: false,
    formula: {
      description: functions.map(({ description }) => description),
      function: functions.map(({ functionClass, name }) => [functionClass, name]),
    },
  });
  const more = [UniverSheetsConditionalFormattingPreset(), UniverSheetsDataValidationPreset(), UniverSheetsNotePreset()];
  for (const plugin of [core, ...more].flatMap(({ plugins }) => plugins)) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  return { univer, api: FUniver.newAPI(univer) };
}
