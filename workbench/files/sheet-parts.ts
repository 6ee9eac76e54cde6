import type { Tag } from "sax";
import { checkPart } from "./check-part";
import { FileProblem } from "./file-problem";
import type { Package } from "./open-package";
import { attributesOf, richTexts } from "./xml";

/** The part that holds each sheet of cells, by the sheet's name; a sheet that is only a chart has no cells. */
export function sheetParts(parts: Package): Map<string, string> {
  const workbook = workbookPart(parts);
  const targets = partsRelated(parts, workbook, "worksheet");
  return new Map(
    attributesOf(partOf(parts, workbook), "sheet").flatMap((sheet) => {
      const target = targets.get(relatedId(sheet));
      return target === undefined ? [] : [[sheet["name"] ?? "", target] as const];
    }),
  );
}

/** The id under which an element names another part. */
export const relatedId = (attributes: Tag["attributes"]): string =>
  Object.entries(attributes).find(([name]) => name.endsWith(":id"))?.[1] ?? "";

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
  const [part] = partsRelated(parts, workbookPart(parts), "sharedStrings").values();
  return part === undefined ? [] : richTexts(partOf(parts, part), "si");
}

function workbookPart(parts: Package): string {
  const [workbook] = partsRelated(parts, "", "officeDocument").values();
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
  return attributesOf(partOf(parts, relationshipsOf(part)), "Relationship").map(({ Id: id = "", Type: type = "", Target = "" }) => {
    return { id, type, target: placeOf(Target, part) };
  });
}

/** The path of the part that another points to. */
function placeOf(target: string, from: string): string {
  try {
    return decodeURI(new URL(target, `package:///${from}`).pathname.slice(1));
  } catch {
    throw new FileProblem(`it is damaged: ${from === "" ? "it" : from} points to ${target.slice(0, 60)}, which is no place in it`);
  }
}

export function partOf(parts: Package, part: string): Uint8Array {
  const bytes = parts[part];
  if (bytes === undefined) throw missing(part);
  return bytes;
}

function missing(part: string): FileProblem {
  return new FileProblem(`it is damaged: ${part} is missing`);
}
