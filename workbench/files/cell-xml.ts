import type { Tag } from "sax";
import type { CellValue } from "../host/functions-host";
import { type Element, partOf, richText, type SourceCell } from "./sheet-cells";

/** The errors that the file format knows; the newer ones are stored as #VALUE!, as the host itself does. */
const storableErrors = new Set(["#NULL!", "#DIV/0!", "#VALUE!", "#REF!", "#NAME?", "#NUM!", "#N/A"]);

interface Stored {
  /** The cell's `t` attribute; none for a number. */
  readonly type: "str" | "b" | "e" | undefined;
  readonly text: string;
}

function stored(value: CellValue): Stored {
  if (typeof value === "number") return { type: undefined, text: String(value) };
  if (typeof value === "boolean") return { type: "b", text: value ? "1" : "0" };
  if (typeof value === "object") return { type: "e", text: storableErrors.has(value.error) ? value.error : "#VALUE!" };
  return { type: "str", text: value ?? "" };
}

/** Whether a cell of the file already holds the value; the fifteen digits that the host shows decide for numbers. */
export function alreadyHolds(cell: SourceCell, value: CellValue, sharedTexts: readonly string[]): boolean {
  const { type, text } = stored(value);
  const held = partOf(cell, "v")?.text;
  const heldType = cell.attributes["t"] ?? "n";
  if (typeof value === "number") return heldType === "n" && held !== undefined && held !== "" && isSameNumber(Number(held), value);
  if (type !== "str") return heldType === type && held === text;
  const inline = partOf(cell, "is");
  const texts: Record<string, string | undefined> = { str: held ?? "", s: sharedTexts[Number(held)], inlineStr: inline && richText(inline) };
  return texts[heldType] === escapedText(text);
}

function isSameNumber(one: number, other: number): boolean {
  return one === other || one.toPrecision(15) === other.toPrecision(15);
}

/** A cell that the file did not have. */
export function newCellXml(address: string, prefix: string, value: CellValue): string {
  return `<${prefix}c r="${address}"${typeAttribute(value)}>${valueXml(prefix, value)}</${prefix}c>`;
}

/** A cell anew: its own attributes, formula and extras as they were, with another value, and for a spill another range. */
export function cellXml(xml: string, cell: SourceCell, prefix: string, { value, ref }: { readonly value: CellValue; readonly ref?: string | undefined }): string {
  const formula = partOf(cell, "f");
  const others = cell.children.filter(({ name }) => !["f", "v", "is"].includes(name));
  const inner = [
    formula === undefined ? "" : formulaXml(xml, formula, prefix, ref),
    value === undefined ? "" : valueXml(prefix, value),
    ...others.map(({ start, end }) => xml.slice(start, end)),
  ].join("");
  return tag(`${prefix}c`, `${attributesXml(cell.attributes, ["t", "vm"])}${value === undefined ? "" : typeAttribute(value)}`, inner);
}

function formulaXml(xml: string, { start, openEnd, contentEnd, end, attributes }: Element, prefix: string, ref: string | undefined): string {
  if (ref === undefined) return xml.slice(start, end);
  return tag(`${prefix}f`, `${attributesXml(attributes, ["t", "ref"])} t="array" ref="${ref}"`, xml.slice(openEnd, contentEnd));
}

function valueXml(prefix: string, value: CellValue): string {
  return `<${prefix}v>${escaped(escapedText(stored(value).text))}</${prefix}v>`;
}

function typeAttribute(value: CellValue): string {
  const { type } = stored(value);
  return type === undefined ? "" : ` t="${type}"`;
}

function tag(name: string, attributes: string, inner: string): string {
  return inner === "" ? `<${name}${attributes}/>` : `<${name}${attributes}>${inner}</${name}>`;
}

function attributesXml(attributes: Tag["attributes"], left: readonly string[]): string {
  const kept = Object.entries(attributes).filter(([name]) => !left.includes(name));
  return kept.map(([name, value]) => ` ${name}="${escaped(value)}"`).join("");
}

function escaped(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;").replaceAll('"', "&quot;");
}

/** The format's own escape for what XML cannot hold, and for text that looks like such an escape. */
function escapedText(text: string): string {
  // eslint-disable-next-line no-control-regex -- these very characters are meant
  return text.replaceAll(/_(?=x[\dA-F]{4}_)|[\u0000-\u0008\u000b-\u001f\ufffe\uffff]/giu, (character) => {
    return `_x${character.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`;
  });
}
