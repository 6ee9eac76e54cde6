import type {} from "./workbench-link";

/** Runs in the pane's frame after the host's own library: greets it as Excel would. */
window.parent.runoffLedgerWorkbench?.greet(window as object);
