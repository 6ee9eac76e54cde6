import type { DocumentBridge } from "../host/client/bridge";
import type { HostWindow } from "../host/client/office";
import type { SheetStore } from "../host/excel/sheet-store";

/** What the page hands to the pane's frame: the document behind the host's library, and the greeting of the host. */
export interface WorkbenchLink {
  readonly store: SheetStore;
  /** A fresh bridge, in place of the one that an earlier pane had. */
  readonly openBridge: () => DocumentBridge;
  /** Computes every formula anew. */
  readonly recalculate: () => Promise<void>;
  readonly greet: (pane: HostWindow) => void;
}

declare global {
  interface Window {
    runoffLedgerWorkbench?: WorkbenchLink;
  }
}
