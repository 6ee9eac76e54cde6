import type { Parser, Tag } from "sax";
import { cellRef, parseRange } from "hucre";
import { FileProblem } from "./file-problem";
import { isRead, localName, readXml } from "./xml";

/** Where an element's text stands in the part: its start, the end of its opening tag, of its content, and of all of it. */
export interface Span {
  readonly start: number;
  readonly openEnd: number;
  readonly contentEnd: number;
  readonly end: number;
  readonly isEmptyTag: boolean;
}
/** An element inside a cell: `f`, `v`, `is` and what else may stand there. */
export interface CellPart {
  readonly span: Span;
  readonly name: string;
  readonly attributes: Tag["attributes"];
  readonly text: string;
}
export interface SourceCell {
  readonly span: Span;
  readonly address: string;
  /** Counted from 0. */
  readonly column: number;
  readonly attributes: Tag["attributes"];
  readonly parts: readonly CellPart[];
}
export interface SourceRow {
  readonly span: Span;
  /** The prefix of the part's own tags, mostly none. */
  readonly prefix: string;
  /** Counted from 0. */
  readonly row: number;
  readonly cells: readonly SourceCell[];
}
/** The element around all rows. */
type SourceData = Pick<SourceRow, "span" | "prefix">;

export const partOf = ({ parts }: SourceCell, name: string): CellPart | undefined => parts.find((each) => each.name === name);

interface Opened {
  readonly tag: Tag;
  readonly start: number;
  readonly openEnd: number;
}

/** How deep these stand in a sheet's part. */
const depths = { data: 2, row: 3, cell: 4, part: 5 } as const;
/** What they are called, by their depth. */
const wanted: Readonly<Record<number, string>> = { 2: "sheetData", 3: "row", 4: "c" };

/** Tells every row of a sheet's part in order, with its cells and their places in the text; answers where the rows stand. */
export function readRows(xml: string, told: (row: SourceRow) => void): SourceData {
  const reader = new RowReader(told);
  readXml(xml, {
    open: (tag, at) => { reader.open(tag, at); },
    close: (_, at) => { reader.close(at); },
    text: (piece) => { reader.text(piece); },
  });
  if (reader.data === undefined) throw new FileProblem("it is damaged: a sheet has no cells");
  return reader.data;
}

class RowReader {
  data: SourceData | undefined;
  private readonly opened: Opened[] = [];
  private row = -1;
  private cells: SourceCell[] = [];
  private parts: CellPart[] = [];
  private partText = "";

  constructor(private readonly told: (row: SourceRow) => void) {}

  open(tag: Tag, at: Parser): void {
    this.opened.push({ tag, start: at.startTagPosition - 1, openEnd: at.position });
    if (!this.isInData()) return;
    if (this.opened.length === depths.row) {
      const row = Number(tag.attributes["r"] ?? this.row + 2) - 1;
      if (row <= this.row) throw notAsExpected();
      [this.row, this.cells] = [row, []];
    }
    if (this.opened.length === depths.cell) this.parts = [];
    if (this.opened.length === depths.part) this.partText = "";
  }

  close(at: Parser): void {
    const last = this.opened.at(-1);
    if (last !== undefined && this.isInData()) this.ended(last, at);
    this.opened.pop();
  }

  text(piece: string): void {
    const names = this.opened.slice(depths.part - 1).map(({ tag }) => localName(tag.name));
    if (names[0] === "is" ? isRead(names) : names.length === 1) this.partText += piece;
  }

  private ended({ tag: { name, attributes, isSelfClosing: isEmptyTag }, start, openEnd }: Opened, at: Parser): void {
    const depth = this.opened.length;
    const local = localName(name);
    if (local !== (wanted[depth] ?? local)) throw notAsExpected();
    const span = { start, openEnd, contentEnd: isEmptyTag ? openEnd : at.startTagPosition - 1, end: at.position, isEmptyTag };
    const prefix = name.slice(0, -local.length);
    if (depth === depths.data) this.data = { span, prefix };
    if (depth === depths.row) this.told({ span, prefix, row: this.row, cells: this.cells });
    if (depth === depths.cell) {
      const { address, column } = placeOf(attributes, this.row, this.cells.at(-1)?.column ?? -1);
      this.cells.push({ span, address, column, attributes, parts: this.parts });
    }
    if (depth === depths.part) this.parts.push({ span, name: local, attributes, text: this.partText });
  }

  private isInData(): boolean {
    return localName(this.opened[depths.data - 1]?.tag.name ?? "") === wanted[depths.data];
  }
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
