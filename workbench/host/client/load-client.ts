/// <reference types="office-js" />
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createContext, Script } from "node:vm";
import { MemoryStore } from "../excel/memory-store";
import type { SheetStore } from "../excel/sheet-store";
import { DocumentBridge } from "./bridge";
import { type FunctionCalls, prepareAssociation } from "./function-calls";
import { greet, type HostTheme } from "./office";

/** Where the host's own client library stands: loaded as it is, and never copied. */
export const clientLibrary = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.debug.js");

let compiled: Script | undefined;

/** As much of a browser as the library asks for when it loads. */
function barePage(): object {
  const page: Record<string, unknown> = {
    console, setTimeout, clearTimeout,
    addEventListener: () => undefined,
    navigator: { userAgent: "" },
    location: { href: "https://localhost/" },
    history: {},
    document: { getElementsByTagName: () => [], createElement: () => ({}), addEventListener: () => undefined },
  };
  return Object.assign(page, { window: page, self: page });
}

/** A page with the library on it, greeted. */
function pageOver(bridge: DocumentBridge, store: SheetStore, theme?: () => HostTheme): object {
  compiled ??= new Script(readFileSync(clientLibrary, "utf8"), { filename: clientLibrary });
  const page = createContext(Object.assign(barePage(), { _richApiNativeBridge: bridge }));
  prepareAssociation(page);
  compiled.runInContext(page);
  greet(page, store, theme);
  return page;
}

export interface HostClient {
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly OfficeExtension: typeof OfficeExtension;
}

/** The host's own client library, unmodified, over a workbook; each call loads it afresh. */
export function clientOver(store: SheetStore, theme?: () => HostTheme): HostClient {
  return pageOver(new DocumentBridge(store), store, theme) as unknown as HostClient;
}

/** The built functions, unchanged, on the custom-functions runtime that the same library holds. */
export function functionsThroughRuntime(script: string): FunctionCalls {
  const store = new MemoryStore();
  const bridge = new DocumentBridge(store);
  new Script(readFileSync(script, "utf8"), { filename: script }).runInContext(pageOver(bridge, store));
  return bridge.functions;
}
