import { DOMParser, type Document, type Element } from "@xmldom/xmldom";
import { FileProblem, messageOf } from "./file-problem";

export function parseXml(xml: string): Document {
  const onError = (level: string, message: string): void => {
    if (level !== "warning") throw new Error(message);
  };
  try {
    return new DOMParser({ onError }).parseFromString(xml.replace(/^\ufeff/u, ""), "text/xml");
  } catch (problem) {
    throw new FileProblem(`it is damaged: ${messageOf(problem)}`);
  }
}

export function childText(cell: Element, name: string): string | undefined {
  return child(cell, name)?.textContent ?? undefined;
}

export function child(parent: Element, name: string): Element | undefined {
  return [...parent.children].find(({ localName }) => localName === name);
}

/** A text in one piece or in runs, without the reading aids that may stand beside it. */
export function richText(item: Element): string {
  const own = [...item.children].flatMap((each) => (each.localName === "r" ? [...each.children] : [each]));
  return own.filter(({ localName }) => localName === "t").map(({ textContent }) => textContent ?? "").join("");
}
