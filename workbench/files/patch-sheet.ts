import { cellRef, parseRange } from "hucre";
import type { ComputedSheet } from "../book";
import type { CellValue } from "../host/functions-host";
import { alreadyHolds, cellXml } from "./cell-xml";
import { sourceSheet, type SourceCell, type SourceRow, type SourceSheet } from "./sheet-xml";
import { child } from "./xml";

interface Change {
  readonly value: CellValue;
  /** The range of a formula that spills. */
  readonly ref?: string | undefined;
}
interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Writes computed values into a sheet's part: the cells whose value or range changed are written anew, all other text stays. */
export function patchedSheet(xml: string, computed: ComputedSheet, sharedTexts: readonly string[]): { xml: string; changed: number } {
  const source = sourceSheet(xml);
  const changes = changesOf(source, computed, sharedTexts);
  const edits = editsOf(source, changes).sort((one, other) => one.start - other.start || one.end - other.end);
  let at = 0;
  const pieces = edits.flatMap(({ start, end, text }) => {
    const before = xml.slice(at, start);
    at = end;
    return [before, text];
  });
  return { xml: pieces.join("") + xml.slice(at), changed: changes.size };
}

function changesOf({ rows }: SourceSheet, { values, spills }: ComputedSheet, sharedTexts: readonly string[]): Map<string, Change> {
  const cells = new Map(rows.flatMap((row) => row.cells.map((cell) => [cell.address, cell] as const)));
  const spilledBefore = new Set([...cells.values()].flatMap(oldSpill));
  const changes = new Map<string, Change>();
  for (const [address, value] of values) {
    const cell = cells.get(address);
    if (cell !== undefined && isTyped(cell) && !spilledBefore.has(address)) throw new Error(`${address} is filled and is not written over`);
    const ref = cell === undefined ? undefined : newRef(cell, spills.get(address) ?? address);
    if (cell === undefined || ref !== undefined || !alreadyHolds(cell.element, value, sharedTexts)) changes.set(address, { value, ref });
  }
  for (const address of spilledBefore) {
    const cell = cells.get(address);
    if (!values.has(address) && cell !== undefined && isTyped(cell)) changes.set(address, { value: undefined });
  }
  return changes;
}

function isTyped({ element }: SourceCell): boolean {
  return child(element, "f") === undefined && (child(element, "v") !== undefined || child(element, "is") !== undefined);
}

function isDynamic({ element }: SourceCell): boolean {
  return element.hasAttribute("cm") && child(element, "f") !== undefined;
}

/** The cells that an array formula filled when the file was written, its own apart. */
function oldSpill(cell: SourceCell): string[] {
  const formula = child(cell.element, "f");
  const ref = formula?.getAttribute("t") === "array" ? formula.getAttribute("ref") : null;
  if (ref === null) return [];
  const { startRow, endRow, startCol, endCol } = parseRange(ref);
  const width = endCol - startCol + 1;
  const all = Array.from({ length: width * (endRow - startRow + 1) }, (_, n) => cellRef(startRow + Math.floor(n / width), startCol + (n % width)));
  return all.filter((address) => address !== cell.address);
}

/** The range that a dynamic formula has to be given, where it is another than the file says. */
function newRef(cell: SourceCell, range: string): string | undefined {
  if (!isDynamic(cell)) return undefined;
  const before = child(cell.element, "f")?.getAttribute("ref") ?? cell.address;
  const [first, last] = [range, before].map((each) => JSON.stringify(parseRange(each)));
  return first === last ? undefined : range;
}

function editsOf(source: SourceSheet, changes: ReadonlyMap<string, Change>): Edit[] {
  const edits: Edit[] = [];
  const fresh = new Map<number, { column: number; text: string }[]>();
  const cells = new Map(source.rows.flatMap((row) => row.cells.map((cell) => [cell.address, cell] as const)));
  for (const [address, { value, ref }] of changes) {
    const cell = cells.get(address);
    if (cell !== undefined) {
      const isBare = value === undefined && [...cell.element.attributes].every(({ name }) => name === "r" || name === "t");
      edits.push({ start: cell.start, end: cell.end, text: isBare ? "" : cellXml(cell.element, source.prefix, value, ref) });
    } else {
      const { startRow: row, startCol: column } = parseRange(address);
      fresh.set(row, [...(fresh.get(row) ?? []), { column, text: cellXml({ address }, source.prefix, value) }]);
    }
  }
  for (const [row, added] of [...fresh].sort(([one], [other]) => one - other)) edits.push(...insertions(source, row, added));
  return edits;
}

/** New cells at their place among the others: the format wants rows and cells in order. */
function insertions(source: SourceSheet, row: number, added: readonly { column: number; text: string }[]): Edit[] {
  const sorted = [...added].sort((one, other) => one.column - other.column);
  const existing = source.rows.find((each) => each.row === row);
  const { prefix } = source;
  const all = sorted.map(({ text }) => text).join("");
  if (existing === undefined) {
    const at = source.rows.find((each) => each.row > row)?.start ?? source.contentEnd;
    return [{ start: at, end: at, text: `<${prefix}row r="${row + 1}">${all}</${prefix}row>` }];
  }
  if (existing.isEmptyTag) return [{ start: existing.openEnd - 2, end: existing.openEnd, text: `>${all}</${prefix}row>` }];
  return sorted.map(({ column, text }) => {
    const at = placeInRow(existing, column);
    return { start: at, end: at, text };
  });
}

function placeInRow({ cells, contentEnd }: SourceRow, column: number): number {
  return cells.find((each) => each.column > column)?.start ?? contentEnd;
}
