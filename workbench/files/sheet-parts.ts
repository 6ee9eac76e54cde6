import type { Element } from "@xmldom/xmldom";
import { checkPart } from "./check-part";
import { FileProblem } from "./file-problem";
import type { Package } from "./open-package";
import { parseXml, richText } from "./xml";

/** The part that holds each sheet of cells, by the sheet's name; a sheet that is only a chart has no cells. */
export function sheetParts(parts: Package): Map<string, string> {
  const workbook = workbookPart(parts);
  const worksheets = relationships(parts, workbook).filter(({ type }) => type.endsWith("/worksheet"));
  const targets = new Map(worksheets.map(({ id, target }) => [id, target]));
  return new Map(
    elements(parts, workbook, "sheet").flatMap((sheet) => {
      const target = targets.get(relatedId(sheet));
      return target === undefined ? [] : [[sheet.getAttribute("name") ?? "", target] as const];
    }),
  );
}

/** The id under which an element names another part. */
export const relatedId = (element: Element): string =>
  [...element.attributes].find(({ localName, prefix }) => localName === "id" && prefix !== null)?.value ?? "";

/** Reads each part once through before anything else does, those first that tell what the others are. */
export function checkWhole(parts: Package): void {
  const allowance = { arrayCells: 0 };
  const [told, others] = [/\.rels$/iu, /\.xml$/iu].map((kind) => Object.keys(parts).filter((name) => kind.test(name)));
  for (const name of [...(told ?? []), ...(others ?? [])]) checkPart(parts[name] ?? new Uint8Array(), allowance);
  const kinds = ["worksheet", "sharedStrings", "styles"];
  for (const { type, target } of relationships(parts, workbookPart(parts))) {
    if (kinds.some((kind) => type.endsWith(`/${kind}`)) && parts[target] === undefined) throw missing(target);
  }
}

/** The texts that cells refer to by number. */
export function sharedTexts(parts: Package): string[] {
  const part = relationships(parts, workbookPart(parts)).find(({ type }) => type.endsWith("/sharedStrings"))?.target;
  return part === undefined ? [] : elements(parts, part, "si").map(richText);
}

function workbookPart(parts: Package): string {
  const workbook = relationships(parts, "").find(({ type }) => type.endsWith("/officeDocument"))?.target;
  if (workbook === undefined) throw new FileProblem("it is damaged: it names no workbook");
  return workbook;
}

/** What a part points to that is of one kind, by the id it is known under there; none where it points to nothing. */
export function partsRelated(parts: Package, part: string, kind: string): Map<string, string> {
  if (parts[relationshipsOf(part)] === undefined) return new Map();
  const found = relationships(parts, part).filter(({ type }) => type.endsWith(`/${kind}`));
  return new Map(found.map(({ id, target }) => [id, target]));
}

const relationshipsOf = (part: string): string => part.replace(/[^/]*$/u, (own) => `_rels/${own}.rels`);

interface Relationship {
  readonly id: string;
  readonly type: string;
  readonly target: string;
}

/** What a part points to; the package itself is the part without a name. */
function relationships(parts: Package, part: string): Relationship[] {
  return elements(parts, relationshipsOf(part), "Relationship").map((each) => {
    const target = new URL(each.getAttribute("Target") ?? "", `package:///${part}`);
    return { id: each.getAttribute("Id") ?? "", type: each.getAttribute("Type") ?? "", target: decodeURI(target.pathname.slice(1)) };
  });
}

export function elements(parts: Package, part: string, name: string): Element[] {
  const bytes = parts[part];
  if (bytes === undefined) throw missing(part);
  return [...parseXml(new TextDecoder().decode(bytes)).getElementsByTagNameNS("*", name)];
}

function missing(part: string): FileProblem {
  return new FileProblem(`it is damaged: ${part} is missing`);
}
