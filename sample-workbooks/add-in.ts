import { readFileSync } from "node:fs";
import { DOMParser } from "@xmldom/xmldom";
import { type AddIn } from "./xlsx/web-extension-parts";

/** The identity that a manifest gives its add-in. */
export function addInOf(manifest: string): AddIn {
  const read = new DOMParser().parseFromString(readFileSync(manifest, "utf8"), "text/xml");
  const text = (name: string): string => {
    const found = read.getElementsByTagName(name)[0]?.textContent;
    if (found === undefined || found === null) throw new Error(`${manifest} has no ${name}`);
    return found.trim();
  };
  return { id: text("Id"), version: text("Version") };
}
