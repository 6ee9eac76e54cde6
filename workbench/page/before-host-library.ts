import { prepareAssociation } from "../host/client/function-calls";
import type {} from "./workbench-link";

/** Runs in the pane's frame before the host's own library: the library looks for this bridge when it loads. */
const link = window.parent.runoffLedgerWorkbench;
if (link === undefined) throw new Error("The pane stands outside the workbench: open the workbench's own page.");
prepareAssociation(window);
Object.assign(window, { _richApiNativeBridge: link.openBridge() });
