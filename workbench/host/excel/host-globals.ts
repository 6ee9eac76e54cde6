import { HostError } from "./host-error";
import { excelOver } from "./excel";
import { hostEnums } from "./host-enums";
import { type HostTheme, officeOver } from "./office";
import type { SheetStore } from "./sheet-store";

/** What the host's own script would put on the page: `Office`, `Excel` and `OfficeExtension`. */
export interface HostGlobals {
  readonly Office: ReturnType<typeof officeOver>;
  readonly Excel: ReturnType<typeof excelOver> & typeof hostEnums;
  readonly OfficeExtension: { readonly Error: typeof HostError; readonly config: { extendedErrorLogging: boolean } };
}

/** The strict stand-in for the host over one grid. */
export function hostOver(store: SheetStore, theme?: () => HostTheme): HostGlobals {
  return {
    Office: officeOver(store, theme),
    Excel: { ...excelOver(store), ...hostEnums },
    OfficeExtension: { Error: HostError, config: { extendedErrorLogging: false } },
  };
}
