import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** How to put the add-in into Excel, for whoever opens the archive first. */
export const installPage = `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>Install Runoff Ledger</title></head>
<body>
<h1>Install Runoff Ledger</h1>
<h2>First: a host</h2>
<p>Excel loads the add-in from a web address that begins with https://. Put the folder <code>dist</code> of this archive on any static
host. The addresses inside are those it was built for: for another one, build again with
<code>npm run build -- --env base=https://your.host/folder</code>, then <code>npm run package</code>. Afterwards
<code>npm run check-host -- https://your.host/folder</code> says whether everything is served as Excel needs it.</p>
<h2>Excel on the web</h2>
<ol><li>Open a workbook, then Home, Add-ins, More Add-ins.</li><li>Choose My Add-ins, Upload My Add-in, and pick <code>dist/manifest.xml</code>.</li></ol>
<h2>Excel on Windows</h2>
<ol><li>Put <code>dist/manifest.xml</code> into a shared folder of your network.</li>
<li>In Excel: File, Options, Trust Center, Trust Center Settings, Trusted Add-in Catalogs. Add the folder's network path, tick Show in Menu,
and start Excel again.</li><li>Home, Add-ins, More Add-ins, Shared Folder: pick Runoff Ledger.</li></ol>
<h2>Excel on Mac</h2>
<ol><li>Copy <code>dist/manifest.xml</code> to
<code>~/Library/Containers/com.microsoft.Excel/Data/Documents/wef</code> (make the folder if it is not there).</li>
<li>Start Excel again; the arrow beside Home, Add-ins, shows Runoff Ledger.</li></ol>
<h2>On many machines at once</h2>
<p>An administrator uploads the same manifest under Integrated apps in the Microsoft 365 admin center.</p>
<p>Licences of all that ships: <code>dist/licences.txt</code>.</p>
</body>
</html>
`;

/** Every file under a folder by its path within it. */
function filesIn(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith("."))
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)).split(path.sep).join("/"))
    .sort();
}

/** What the archive holds, by name: the build with its manifest and licences, our licence, and the page that says how to install. */
export function packageFiles(root: string): Record<string, Uint8Array> {
  const dist = path.join(root, "dist");
  const built = filesIn(dist).map((name) => [`dist/${name}`, new Uint8Array(readFileSync(path.join(dist, name)))] as const);
  return {
    "install.html": new TextEncoder().encode(installPage),
    "LICENSE": new Uint8Array(readFileSync(path.join(root, "LICENSE"))),
    ...Object.fromEntries(built),
  };
}
