import { zipSync } from "fflate";
import type { ComputedSheet } from "../book";
import { FileProblem } from "./file-problem";
import { openPackage } from "./open-package";
import { patchedSheet } from "./patch-sheet";
import { sharedTexts, sheetParts } from "./sheet-parts";

/** A fixed date, so that the same input gives the same bytes. */
const written = new Date(2000, 0, 1);

/** A copy of a workbook with the computed values in place; every part without a changed cell stays as it was, byte for byte. */
export function patchXlsx(bytes: Uint8Array, computed: readonly ComputedSheet[]): { bytes: Uint8Array; changed: number } {
  const parts = openPackage(bytes);
  const paths = sheetParts(parts);
  const texts = sharedTexts(parts);
  let changed = 0;
  for (const sheet of computed) {
    const path = paths.get(sheet.name);
    const part = path === undefined ? undefined : parts[path];
    if (path === undefined || part === undefined) throw new FileProblem(`its sheet ${sheet.name} cannot be found`);
    const patched = patchedSheet(new TextDecoder("utf-8", { ignoreBOM: true }).decode(part), sheet, texts);
    if (patched.changed > 0) parts[path] = patched.part;
    changed += patched.changed;
  }
  return { bytes: zipSync(parts, { level: 6, mtime: written }), changed };
}
