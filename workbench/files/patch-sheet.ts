import { strToU8 } from "fflate";
import { cellRef, parseRange } from "hucre";
import type { ComputedSheet } from "../book";
import type { CellValue } from "../host/functions-host";
import { alreadyHolds, cellXml, newCellXml } from "./cell-xml";
import { partOf, readRows, type SourceCell, type SourceRow } from "./sheet-cells";

interface Change {
  readonly value: CellValue;
  /** The range of a formula that spills. */
  readonly ref?: string | undefined;
}

interface Patched {
  readonly part: Uint8Array;
  /** How many cells are other than they were. */
  readonly changed: number;
}

/** Columns of a sheet: a cell's place is one number, row by row. */
const columns = 16_384;
const placeOf = (address: string): number => {
  const { startRow, startCol } = parseRange(address);
  return startRow * columns + startCol;
};
const rowOf = (place: number): number => Math.floor(place / columns);

/** Writes computed values into a sheet's part: the cells whose value or range changed are written anew, all other text stays. */
export function patchedSheet(xml: string, computed: ComputedSheet, sharedTexts: readonly string[]): Patched {
  const patch = new SheetPatch(xml, computed, sharedTexts);
  const { contentEnd, prefix } = readRows(xml, (row) => { patch.row(row); });
  patch.newRows(Infinity, contentEnd, prefix);
  return patch.finished();
}

/** As many are joined at a time: a text in pieces takes ten times its letters. */
const mostPieces = 1000;

/** Goes once down a sheet, from one row that the file has to the next. */
class SheetPatch {
  private readonly written: Uint8Array[] = [];
  private pieces: string[] = [];
  private copied = 0;
  private changed = 0;
  /** Every computed cell, in the sheet's order, and the first of them that lies ahead. */
  private readonly places: Float64Array;
  private ahead = 0;
  private readonly spilledBefore = new Set<number>();

  constructor(
    private readonly xml: string,
    private readonly computed: ComputedSheet,
    private readonly sharedTexts: readonly string[],
  ) {
    this.places = Float64Array.from([...computed.values.keys()], placeOf).sort();
  }

  row({ row, cells, start, openEnd, contentEnd, isEmptyTag, prefix }: SourceRow): void {
    this.newRows(row, start, prefix);
    for (const cell of cells) this.cell(cell, row * columns + cell.column, prefix);
    const fresh = this.newCells((row + 1) * columns, prefix);
    if (fresh !== "" && isEmptyTag) this.replace(openEnd - "/>".length, openEnd, `>${fresh}</${prefix}row>`);
    else this.replace(contentEnd, contentEnd, fresh);
  }

  /** The rows that the file does not have, up to one that it has. */
  newRows(before: number, at: number, prefix: string): void {
    for (let place = this.next(before * columns); place !== undefined; place = this.next(before * columns)) {
      const row = rowOf(place) + 1;
      this.replace(at, at, `<${prefix}row r="${row}">${this.newCells(row * columns, prefix)}</${prefix}row>`);
    }
  }

  finished(): Patched {
    this.pieces.push(this.xml.slice(this.copied));
    this.write();
    return { part: Buffer.concat(this.written), changed: this.changed };
  }

  private cell(cell: SourceCell, place: number, prefix: string): void {
    this.replace(cell.start, cell.start, this.newCells(place, prefix));
    if (this.places[this.ahead] === place) this.ahead += 1;
    for (const each of oldSpill(cell, place)) this.spilledBefore.add(each);
    const change = this.changeOf(cell, place);
    if (change === undefined) return;
    this.changed += 1;
    const isBare = change.value === undefined && Object.keys(cell.attributes).every((name) => name === "r" || name === "t");
    this.replace(cell.start, cell.end, isBare ? "" : cellXml(this.xml, cell, prefix, change));
  }

  /** What becomes of a cell that the file has. */
  private changeOf(cell: SourceCell, place: number): Change | undefined {
    const { address } = cell;
    const { values, spills } = this.computed;
    const isKept = isTyped(cell) && !this.spilledBefore.has(place);
    if (!values.has(address)) return isTyped(cell) && !isKept ? { value: undefined } : undefined;
    if (isKept) throw new Error(`${address} is filled and is not written over`);
    const value = values.get(address);
    const ref = newRef(cell, spills.get(address) ?? address);
    return ref === undefined && alreadyHolds(cell, value, this.sharedTexts) ? undefined : { value, ref };
  }

  /** The cells that the file does not have, up to a place. */
  private newCells(before: number, prefix: string): string {
    let text = "";
    for (let place = this.next(before); place !== undefined; place = this.next(before)) {
      const address = cellRef(rowOf(place), place % columns);
      text += newCellXml(address, prefix, this.computed.values.get(address));
      this.changed += 1;
      this.ahead += 1;
    }
    return text;
  }

  private next(before: number): number | undefined {
    const place = this.places[this.ahead];
    return place !== undefined && place < before ? place : undefined;
  }

  /** Copies what lies between, then something new for what stands from `start` to `end`. */
  private replace(start: number, end: number, text: string): void {
    if (start === end && text === "") return;
    this.pieces.push(this.xml.slice(this.copied, start), text);
    this.copied = end;
    if (this.pieces.length > mostPieces) this.write();
  }

  private write(): void {
    this.written.push(strToU8(this.pieces.join("")));
    this.pieces = [];
  }
}

function isTyped(cell: SourceCell): boolean {
  return partOf(cell, "f") === undefined && (partOf(cell, "v") !== undefined || partOf(cell, "is") !== undefined);
}

/** The places that an array formula filled when the file was written, its own apart. */
function oldSpill(cell: SourceCell, own: number): number[] {
  const { t, ref } = partOf(cell, "f")?.attributes ?? {};
  if (t !== "array" || ref === undefined) return [];
  const { startRow, endRow, startCol, endCol } = parseRange(ref);
  const width = endCol - startCol + 1;
  const all = Array.from({ length: width * (endRow - startRow + 1) }, (_, n) => (startRow + Math.floor(n / width)) * columns + startCol + (n % width));
  return all.filter((place) => place !== own);
}

/** The range that a dynamic formula has to be given, where it is another than the file says. */
function newRef(cell: SourceCell, range: string): string | undefined {
  const formula = partOf(cell, "f");
  if (cell.attributes["cm"] === undefined || formula === undefined) return undefined;
  const [first, last] = [range, formula.attributes["ref"] ?? cell.address].map((each) => JSON.stringify(parseRange(each)));
  return first === last ? undefined : range;
}
