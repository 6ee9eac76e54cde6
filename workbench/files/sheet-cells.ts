import { cellRef, parseRange } from "hucre";
import type { Tag } from "sax";
import { FileProblem } from "./file-problem";
import { localName, readXml } from "./xml";

/** An element of a sheet's part, and where its text stands there: the ends of its opening tag, of its content, of all of it. */
export interface Element {
  readonly name: string;
  /** The prefix of its tag, mostly none. */
  readonly prefix: string;
  readonly attributes: Tag["attributes"];
  readonly isEmptyTag: boolean;
  readonly start: number;
  readonly openEnd: number;
  contentEnd: number;
  end: number;
  text: string;
  readonly children: Element[];
}
export interface SourceCell extends Element {
  readonly address: string;
  /** Counted from 0. */
  readonly column: number;
}
export interface SourceRow extends Element {
  /** Counted from 0. */
  readonly row: number;
  readonly cells: readonly SourceCell[];
}

export const partOf = ({ children }: Element, name: string): Element | undefined => children.find((each) => each.name === name);

/** What a text in runs says, without the reading aids that may stand beside it. */
export function richText({ name, text, children }: Element): string {
  if (name === "rPh") return "";
  return name === "t" ? text : children.map(richText).join("");
}

/** What stands inside the element around all rows, by how many elements are around it. */
const wanted: Readonly<Record<number, string>> = { 2: "row", 3: "c" };

/** Tells every row of a sheet's part in order, with its cells; answers the element around them, which keeps none of them. */
export function readRows(xml: string, told: (row: SourceRow) => void): Element {
  const around: Element[] = [];
  let data: Element | undefined;
  let before = -1;
  readXml(xml, {
    open: (tag, { startTagPosition, position }) => { around.push(opened(tag, startTagPosition - 1, position)); },
    text: (piece) => {
      const last = around.at(-1);
      if (last !== undefined && around[1]?.name === "sheetData") last.text += piece;
    },
    close: (_, { startTagPosition, position }) => {
      const element = around.pop();
      if (element === undefined) return;
      element.contentEnd = element.isEmptyTag ? element.openEnd : startTagPosition - 1;
      element.end = position;
      if (around.length === 1 && element.name === "sheetData") data = element;
      if (around[1]?.name !== "sheetData") return;
      if (element.name !== (wanted[around.length] ?? element.name)) throw notAsExpected();
      if (around.length > 2) around.at(-1)?.children.push(element);
      else {
        const row = rowAfter(before, element);
        before = row.row;
        told(row);
      }
    },
  });
  if (data === undefined) throw new FileProblem("it is damaged: a sheet has no cells");
  return data;
}

function opened({ name, attributes, isSelfClosing: isEmptyTag }: Tag, start: number, openEnd: number): Element {
  const local = localName(name);
  const prefix = name.slice(0, -local.length);
  return { name: local, prefix, attributes, isEmptyTag, start, openEnd, contentEnd: openEnd, end: openEnd, text: "", children: [] };
}

function rowAfter(before: number, element: Element): SourceRow {
  const row = Number(element.attributes["r"] ?? before + 2) - 1;
  if (row <= before) throw notAsExpected();
  let columnBefore = -1;
  const cells = element.children.map((cell) => {
    const place = placeOf(cell.attributes, row, columnBefore);
    columnBefore = place.column;
    return Object.assign(cell, place);
  });
  return Object.assign(element, { row, cells });
}

/** Where a cell stands: as it says, or right of the one before it. */
function placeOf({ r }: Tag["attributes"], row: number, columnBefore: number): { address: string; column: number } {
  const address = r ?? cellRef(row, columnBefore + 1);
  const { startRow, startCol: column } = parseRange(address);
  if (startRow !== row || column <= columnBefore) throw notAsExpected();
  return { address, column };
}

/** Rows and cells out of order, or with others among them: nothing is written there. */
function notAsExpected(): FileProblem {
  return new FileProblem("its cells are written in a way that cannot be changed safely");
}
