import type { SheetStore } from "../excel/sheet-store";
import { hasSet } from "../excel/switches";

const light = {
  isDarkTheme: false,
  bodyBackgroundColor: "#FFFFFF",
  bodyForegroundColor: "#201F1E",
  controlBackgroundColor: "#F3F2F1",
  controlForegroundColor: "#201F1E",
};

/** The colours of the host around the pane. */
export type HostTheme = Readonly<typeof light>;

const dark: HostTheme = {
  isDarkTheme: true,
  bodyBackgroundColor: "#1F1F1F",
  bodyForegroundColor: "#F3F2F1",
  controlBackgroundColor: "#2D2C2B",
  controlForegroundColor: "#F3F2F1",
};

export const themes: Readonly<Record<"light" | "dark", HostTheme>> = { light, dark };

/** As much of the page as the host's library is put on. */
export interface HostWindow {
  Office?: object;
  OSF?: object;
  OfficeExtension?: { readonly CommonUtility: { _doApiNotSupportedCheck: boolean } };
}

const info = { host: "Excel", platform: "OfficeOnline" } as const;

/** What the library tells of the host it runs in: here, of the workbench. */
function contextOver({ records: { switches } }: SheetStore, theme: () => HostTheme): object {
  return {
    ...info,
    displayLanguage: "en-US",
    contentLanguage: "en-US",
    diagnostics: { ...info, version: "16.0" },
    requirements: { isSetSupported: (name: string, version?: string | number) => hasSet(switches, name, version?.toString()) },
    get officeTheme() { return theme(); },
    partitionKey: undefined,
    document: {},
  };
}

/** `Office` as it is once the host has greeted the library; called after the library was loaded. */
export function greet(page: HostWindow, store: SheetStore, theme: () => HostTheme = () => themes.light): void {
  const context = contextOver(store, theme);
  const greeted: Readonly<Record<string, unknown>> = {
    onReady: async (callback?: (told: typeof info) => unknown) => {
      await callback?.(info);
      return info;
    },
    actions: { associate: () => undefined },
    HostType: { Excel: "Excel" },
    VisibilityMode: { hidden: "Hidden", taskpane: "Taskpane" },
    addin: {
      showAsTaskpane: () => Promise.resolve(),
      hide: () => Promise.resolve(),
      setStartupBehavior: () => Promise.resolve(),
      onVisibilityModeChanged: () => Promise.resolve(() => Promise.resolve()),
    },
  };
  // An older host refuses what it lacks; here the library does so itself, by its own list of what came with which version.
  if (page.OfficeExtension !== undefined) page.OfficeExtension.CommonUtility._doApiNotSupportedCheck = true;
  Object.assign((page.OSF ??= {}), { _OfficeAppFactory: { getContext: () => context } });
  for (const [name, value] of Object.entries(greeted)) Object.defineProperty((page.Office ??= {}), name, { value, configurable: true });
}
