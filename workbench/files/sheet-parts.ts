import type { Element } from "@xmldom/xmldom";
import path from "node:path";
import { FileProblem } from "./file-problem";
import type { Package } from "./open-package";
import { parseXml } from "./sheet-xml";

/** The part that holds each sheet, by the sheet's name. */
export function sheetParts(parts: Package): Map<string, string> {
  const workbook = relationships(parts, "").find(({ type }) => type.endsWith("/officeDocument"))?.target;
  if (workbook === undefined) throw new FileProblem("it is damaged: it names no workbook");
  const targets = new Map(relationships(parts, workbook).map(({ id, target }) => [id, target]));
  const sheets = elements(parts, workbook, "sheet").map((sheet) => {
    const id = [...sheet.attributes].find(({ localName, prefix }) => localName === "id" && prefix !== null)?.value ?? "";
    return [sheet.getAttribute("name") ?? "", targets.get(id) ?? ""] as const;
  });
  return new Map(sheets);
}

interface Relationship {
  readonly id: string;
  readonly type: string;
  readonly target: string;
}

/** What a part points to; the package itself is the part without a name. */
function relationships(parts: Package, part: string): Relationship[] {
  const folder = path.posix.dirname(part);
  const file = path.posix.join(folder, "_rels", `${path.posix.basename(part)}.rels`);
  return elements(parts, file, "Relationship").map((each) => {
    const target = each.getAttribute("Target") ?? "";
    const from = target.startsWith("/") ? target.slice(1) : path.posix.join(folder, target);
    return { id: each.getAttribute("Id") ?? "", type: each.getAttribute("Type") ?? "", target: from };
  });
}

function elements(parts: Package, part: string, name: string): Element[] {
  const bytes = parts[part];
  if (bytes === undefined) throw new FileProblem(`it is damaged: ${part} is missing`);
  return [...parseXml(new TextDecoder().decode(bytes)).getElementsByTagNameNS("*", name)];
}
