import type { Element } from "@xmldom/xmldom";
import { cellRef, parseRange } from "hucre";
import { FileProblem } from "./file-problem";
import { child, parseXml } from "./xml";

/** Where an element's text stands in the part: its start, the end of its opening tag, of its content, and of all of it. */
interface Span {
  readonly start: number;
  readonly openEnd: number;
  readonly contentEnd: number;
  readonly end: number;
  readonly isEmptyTag: boolean;
}
export interface SourceCell extends Span {
  readonly element: Element;
  readonly address: string;
  readonly column: number;
}
export interface SourceRow extends Span {
  /** Counted from 0. */
  readonly row: number;
  readonly cells: readonly SourceCell[];
}
export interface SourceSheet extends Span {
  /** The prefix of the part's own tags, mostly none. */
  readonly prefix: string;
  readonly rows: readonly SourceRow[];
}

/** Finds every row and cell of a sheet's part in its text, so that a few can be written anew and all else stays as it is. */
export function sourceSheet(xml: string): SourceSheet {
  const root = parseXml(xml).documentElement;
  const data = root === null ? undefined : child(root, "sheetData");
  if (data === undefined) throw new FileProblem("it is damaged: a sheet has no cells");
  const prefix = data.tagName.slice(0, -"sheetData".length);
  const own = spanFrom(xml, data.tagName, xml.search(new RegExp(`<${data.tagName}(?=[\\s/>])`, "u")));
  const starts = [...xml.slice(0, own.end).matchAll(new RegExp(`<${prefix}(?:row|c)(?=[\\s/>])`, "gu"))]
    .map(({ index }) => index)
    .filter((index) => index > own.start);
  const rows: SourceRow[] = [];
  for (const element of data.children) rows.push(sourceRow(xml, element, starts, rows.at(-1)?.row ?? -1));
  if (starts.length > 0) throw notAsExpected();
  return { ...own, prefix, rows };
}

function sourceRow(xml: string, element: Element, starts: number[], before: number): SourceRow {
  const span = spanFrom(xml, element.tagName, starts.shift());
  const row = Number(element.getAttribute("r") ?? before + 2) - 1;
  const cells: SourceCell[] = [];
  for (const each of element.children) {
    const own = spanFrom(xml, each.tagName, starts.shift());
    const address = each.getAttribute("r") ?? cellRef(row, (cells.at(-1)?.column ?? -1) + 1);
    cells.push({ ...own, element: each, address, column: parseRange(address).startCol });
  }
  return { ...span, row, cells };
}

/** The tags of a sheet's cells hold neither ">" in an attribute nor another cell: where that is not so, nothing is written. */
function spanFrom(xml: string, tag: string, start: number | undefined): Span {
  if (start === undefined || !xml.startsWith(`<${tag}`, start)) throw notAsExpected();
  const openEnd = xml.indexOf(">", start) + 1;
  if (xml[openEnd - 2] === "/") return { start, openEnd, contentEnd: openEnd, end: openEnd, isEmptyTag: true };
  const contentEnd = xml.indexOf(`</${tag}>`, openEnd);
  if (contentEnd < 0) throw notAsExpected();
  return { start, openEnd, contentEnd, end: contentEnd + tag.length + 3, isEmptyTag: false };
}

function notAsExpected(): FileProblem {
  return new FileProblem("its cells are written in a way that cannot be changed safely");
}
