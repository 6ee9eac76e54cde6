import type { HostTheme } from "../host/excel/office";
import type { SheetStore } from "../host/excel/sheet-store";

/** What the page hands to the pane's frame: the grid as a store, and the theme around the pane. */
export interface WorkbenchLink {
  readonly store: SheetStore;
  readonly theme: () => HostTheme;
}

declare global {
  interface Window {
    runoffLedgerWorkbench?: WorkbenchLink;
  }
}
