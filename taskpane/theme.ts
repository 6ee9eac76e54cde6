import { type ThemeName } from "./drawing/themes";

const darkSystem = matchMedia("(prefers-color-scheme: dark)");
const forcedColours = matchMedia("(forced-colors: active)");

/** The look of the moment: the system's contrast theme first, then the host's theme, then the system's. */
export function currentTheme(): ThemeName {
  if (forcedColours.matches) return "contrast";
  const host = (Office.context as Office.Context | undefined)?.officeTheme as (Office.OfficeTheme & { isDarkTheme?: boolean }) | undefined;
  return (host?.isDarkTheme ?? darkSystem.matches) ? "dark" : "light";
}

/** Applies the look to the page, and again whenever it changes. */
export function watchTheme(onChange: () => void): void {
  const apply = (): void => {
    document.documentElement.dataset["theme"] = currentTheme();
    onChange();
  };
  darkSystem.addEventListener("change", apply);
  forcedColours.addEventListener("change", apply);
  apply();
}
