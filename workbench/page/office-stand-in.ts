import { FunctionsHost } from "../host/functions-host";
import { hostOver } from "../host/excel/host-globals";
import type {} from "./workbench-link";

/**
 * What the workbench answers where the pane asks for the host's own script: the strict host object over the grid of the page
 * around it. The built pane is served unchanged.
 */
const link = window.parent.runoffLedgerWorkbench;
if (link === undefined) throw new Error("The pane stands outside the workbench: open the workbench's own page.");
Object.assign(window, hostOver(link.store, link.theme), { CustomFunctions: new FunctionsHost().runtime });
