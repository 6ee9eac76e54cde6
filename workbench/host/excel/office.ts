import type { SheetStore } from "./sheet-store";
import { hasSet } from "./switches";

/** The colours of the host around the pane. */
export interface HostTheme {
  readonly isDarkTheme: boolean;
  readonly bodyBackgroundColor: string;
  readonly bodyForegroundColor: string;
  readonly controlBackgroundColor: string;
  readonly controlForegroundColor: string;
}

export const themes: { readonly light: HostTheme; readonly dark: HostTheme } = {
  light: {
    isDarkTheme: false,
    bodyBackgroundColor: "#FFFFFF",
    bodyForegroundColor: "#201F1E",
    controlBackgroundColor: "#F3F2F1",
    controlForegroundColor: "#201F1E",
  },
  dark: {
    isDarkTheme: true,
    bodyBackgroundColor: "#1F1F1F",
    bodyForegroundColor: "#F3F2F1",
    controlBackgroundColor: "#2D2C2B",
    controlForegroundColor: "#F3F2F1",
  },
};

type Action = (event: { completed(): void }) => void;

interface OfficeInfo {
  readonly host: "Excel";
  readonly platform: "OfficeOnline";
}

/** The global `Office`, as far as a pane in Excel uses it. */
export function officeOver(store: SheetStore, theme: () => HostTheme = () => themes.light): Readonly<Record<string, unknown>> & {
  readonly actions: { associate(id: string, action: Action): void; readonly associated: ReadonlyMap<string, Action> };
  onReady(callback?: (info: OfficeInfo) => unknown): Promise<OfficeInfo>;
} {
  const info = { host: "Excel", platform: "OfficeOnline" } as const;
  const associated = new Map<string, Action>();
  const { switches } = store.records;
  return {
    onReady: async (callback) => {
      await callback?.(info);
      return info;
    },
    context: {
      ...info,
      displayLanguage: "en-US",
      contentLanguage: "en-US",
      diagnostics: { host: "Excel", platform: "OfficeOnline", version: "16.0" },
      requirements: { isSetSupported: (name: string, version?: string | number) => hasSet(switches, name, version === undefined ? undefined : String(version)) },
      get officeTheme() { return theme(); },
      partitionKey: undefined,
    },
    actions: { associate: (id, action) => { associated.set(id, action); }, associated },
    addin: {
      showAsTaskpane: () => Promise.resolve(),
      hide: () => Promise.resolve(),
      setStartupBehavior: () => Promise.resolve(),
      onVisibilityModeChanged: () => Promise.resolve(() => Promise.resolve()),
    },
    HostType: { Excel: "Excel", Word: "Word", PowerPoint: "PowerPoint", Outlook: "Outlook" },
    PlatformType: { PC: "PC", Mac: "Mac", OfficeOnline: "OfficeOnline", iOS: "iOS", Android: "Android", Universal: "Universal" },
    VisibilityMode: { hidden: "Hidden", taskpane: "Taskpane" },
    StartupBehavior: { none: "None", load: "Load" },
  };
}
