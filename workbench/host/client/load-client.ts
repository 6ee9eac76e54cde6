/// <reference types="office-js" />
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createContext, Script } from "node:vm";
import type { SheetStore } from "../excel/sheet-store";
import { DocumentBridge } from "./bridge";
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

export interface HostClient {
  readonly Excel: typeof Excel;
  readonly Office: typeof Office;
  readonly OfficeExtension: typeof OfficeExtension;
}

/** The host's own client library, unmodified, over a workbook; each call loads it afresh. */
export function clientOver(store: SheetStore, theme?: () => HostTheme): HostClient {
  compiled ??= new Script(readFileSync(clientLibrary, "utf8"), { filename: clientLibrary });
  const page = createContext(Object.assign(barePage(), { _richApiNativeBridge: new DocumentBridge(store) }));
  compiled.runInContext(page);
  greet(page, store, theme);
  return page as unknown as HostClient;
}
