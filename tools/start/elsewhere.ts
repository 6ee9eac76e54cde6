/** Excel can be started by a program on these systems only. */
const systems: readonly string[] = ["win32", "darwin"];

/** What to do on a system where Excel cannot be started from here; undefined where it can. */
export function adviceElsewhere(system: string): string | undefined {
  if (systems.includes(system)) return undefined;
  return `Excel cannot be started from here: it runs on Windows and Mac, and this system is ${system}.

Without Excel:
  npm run workbench
  opens the sample log in a grid in which the same functions and the same pane are at work.

With Excel on the web:
  npm run build -- --env base=https://your.host/folder
  put the files of dist/ at that address, then in Excel: Home, Add-ins, More Add-ins, Upload My Add-in, and choose dist/manifest.xml.
`;
}
