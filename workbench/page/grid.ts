import { LocaleType, LogLevel, Univer } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { UniverSheetsCorePreset } from "@univerjs/preset-sheets-core";
import english from "@univerjs/preset-sheets-core/locales/en-US";
import "@univerjs/preset-sheets-core/lib/index.css";
import type { UniverFunction } from "../engine/univer-functions";

export interface Grid {
  readonly api: FUniver;
  readonly univer: Univer;
}

/** The spreadsheet component, with the add-in's functions among its own. */
export function startGrid(container: HTMLElement, functions: readonly UniverFunction[], darkMode: boolean): Grid {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: english }, logLevel: LogLevel.ERROR, darkMode });
  const { plugins } = UniverSheetsCorePreset({
    container,
    toolbar: false,
    statusBarStatistic: false,
    formula: {
      description: functions.map(({ description }) => description),
      function: functions.map(({ functionClass, name }) => [functionClass, name]),
    },
  });
  for (const plugin of plugins) {
    if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
    else univer.registerPlugin(plugin);
  }
  return { univer, api: FUniver.newAPI(univer) };
}
