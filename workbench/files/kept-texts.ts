import type { Package } from "./open-package";
import { partOf, partsRelated, relatedId } from "./sheet-parts";
import { attributesOf } from "./xml";

/** The texts that add-ins keep with a sheet, by name: each in a part of its own, as UTF-16. */
export function keptTexts(parts: Package, sheet: string): Map<string, string> {
  const targets = partsRelated(parts, sheet, "customProperty");
  if (targets.size === 0) return new Map();
  return new Map(attributesOf(partOf(parts, sheet), "customPr").flatMap((kept): [string, string][] => {
    const bytes = parts[targets.get(relatedId(kept)) ?? ""];
    const name = kept["name"] ?? "";
    return bytes === undefined || name === "" ? [] : [[name, new TextDecoder("utf-16le").decode(bytes)]];
  }));
}
