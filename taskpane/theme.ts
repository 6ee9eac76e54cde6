import { type ThemeName } from "./drawing/themes";

const darkSystem = matchMedia("(prefers-color-scheme: dark)");
const forcedColours = matchMedia("(forced-colors: active)");

/** As much of the host as a look needs; its context is there only once the host is ready. */
interface LookOfHost {
  readonly Office?: { readonly context?: { readonly officeTheme?: { readonly isDarkTheme?: boolean } } };
}

/** The look of the moment: the system's contrast theme first, then the host's theme, then the system's. */
export function currentTheme(): ThemeName {
  if (forcedColours.matches) return "contrast";
  const { Office: office } = globalThis as LookOfHost;
  return (office?.context?.officeTheme?.isDarkTheme ?? darkSystem.matches) ? "dark" : "light";
}

export function applyTheme(): void {
  document.documentElement.dataset["theme"] = currentTheme();
}

/** Applies the look to the page, and again whenever it changes. */
export function watchTheme(onChange: () => void): void {
  const changed = (): void => {
    applyTheme();
    onChange();
  };
  darkSystem.addEventListener("change", changed);
  forcedColours.addEventListener("change", changed);
  changed();
}
