import { execFile, execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { promisify } from "node:util";

/** Tells LibreOffice to compute every formula of a workbook anew, whatever the file says. */
const alwaysRecalculate = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
</oor:items>`;

export function hasLibreOffice(): boolean {
  try {
    execFileSync("soffice", ["--version"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** How LibreOffice opens a workbook without a screen, under a profile in that folder, and saves it in `out` with the values it computed. */
export function libreOfficeCommand(folder: string, input: string): readonly [program: string, args: string[]] {
  const profile = path.join(folder, "profile");
  mkdirSync(path.join(profile, "user"), { recursive: true });
  writeFileSync(path.join(profile, "user", "registrymodifications.xcu"), alwaysRecalculate);
  const setting = `-env:UserInstallation=${pathToFileURL(profile).href}`;
  return ["soffice", [setting, "--headless", "--convert-to", "xlsx:Calc MS Excel 2007 XML", "--outdir", path.join(folder, "out"), input]];
}

export async function computedByLibreOffice(bytes: Uint8Array): Promise<Uint8Array> {
  const folder = mkdtempSync(path.join(tmpdir(), "libre-office-"));
  try {
    const input = path.join(folder, "in.xlsx");
    writeFileSync(input, bytes);
    await promisify(execFile)(...libreOfficeCommand(folder, input));
    return readFileSync(path.join(folder, "out", "in.xlsx"));
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
