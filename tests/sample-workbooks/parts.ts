import { DOMParser, type Element } from "@xmldom/xmldom";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** The parts of a workbook file as text, by path. */
export type Parts = Readonly<Record<string, string>>;

export function partsOf(bytes: Uint8Array): Parts {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([path, content]) => [path, strFromU8(content)]));
}

export const zipped = (parts: Parts): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([path, content]) => [path, strToU8(content)])));

/** Elements of a part by name, in document order; none when the part is absent. */
export function elements(parts: Parts, path: string, name: string): Element[] {
  const text = parts[path];
  if (text === undefined) return [];
  return [...new DOMParser().parseFromString(text, "text/xml").getElementsByTagName(name)];
}

export const childText = (parent: Element, name: string): string | undefined => parent.getElementsByTagName(name)[0]?.textContent ?? undefined;

/** One cell as stored. */
export interface StoredCell {
  readonly sheet: string;
  readonly at: string;
  readonly type: string | null;
  readonly cm: string | null;
  /** The formula's text, its kind and the range it fills. */
  readonly formula: { readonly text: string; readonly kind: string | null; readonly ref: string | null } | undefined;
  /** The text of <v>; undefined when there is none. */
  readonly value: string | undefined;
}

export function storedCells(parts: Parts, path: string): StoredCell[] {
  return elements(parts, path, "c").map((cell) => {
    const formula = cell.getElementsByTagName("f")[0];
    return {
      sheet: path,
      at: cell.getAttribute("r") ?? "",
      type: cell.getAttribute("t"),
      cm: cell.getAttribute("cm"),
      formula: formula && { text: formula.textContent ?? "", kind: formula.getAttribute("t"), ref: formula.getAttribute("ref") },
      value: childText(cell, "v"),
    };
  });
}

export const sheetPaths = (parts: Parts): string[] => Object.keys(parts).filter((path) => /^xl\/worksheets\/sheet\d+\.xml$/.test(path));
export const tablePaths = (parts: Parts): string[] => Object.keys(parts).filter((path) => /^xl\/tables\/table\d+\.xml$/.test(path));

/** The text a cell shows: a shared string looked up, any other value as stored. */
export function shownText(parts: Parts, cell: StoredCell): string | undefined {
  if (cell.type !== "s") return cell.value;
  return elements(parts, "xl/sharedStrings.xml", "si")[Number(cell.value)]?.textContent ?? undefined;
}
