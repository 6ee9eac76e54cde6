import { parseRange, rangeRef } from "hucre";
import type { Book, BookTable } from "../book";
import { brackets, outsideText, quotedSheet } from "./formula-text";

export interface PlacedTable extends BookTable {
  readonly sheet: string;
}

export interface Place {
  readonly sheet: string;
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
}

type Span = readonly [first: number, last: number];

const reference = new RegExp(String.raw`([\p{L}_\\][\p{L}\p{N}_.\\]*)?(${brackets})(?![^\s,;()+\-*/^&=<>{}]*!)`, "gu");

export function tablesOf(book: Book): PlacedTable[] {
  return book.sheets.flatMap(({ name: sheet, tables }) => tables.map((table) => ({ ...table, sheet })));
}

/**
 * Writes `Log[[#This Row],[EC]]` as `'Bench 1'!$C$5`. What cannot be found becomes #REF!: Univer would take the column beside
 * the table instead.
 */
export function withoutStructuredReferences(formula: string, tables: readonly PlacedTable[], place: Place): string {
  if (tables.length === 0 || !formula.includes("[")) return formula;
  return outsideText(formula, (code) =>
    code.replace(reference, (whole, name: string | undefined, inBrackets: string) => {
      const table = tables.find((each) => (name === undefined ? holds(each, place) : sameName(each.name, name)));
      return table === undefined ? whole : (resolved(table, inBrackets, place) ?? "#REF!");
    }),
  );
}

function resolved(table: PlacedTable, inBrackets: string, place: Place): string | undefined {
  const { sections, columns } = parts(inBrackets);
  const { startRow, endRow, startCol, endCol } = parseRange(table.ref);
  const spans = sections.map((section) => rowsOf(section, [startRow, endRow], table, place));
  const indices = columns.map((name) => table.columns.findIndex((column) => sameName(column, name)));
  if (spans.includes(undefined) || indices.includes(-1)) return undefined;
  const rows = spans.flatMap((span) => span ?? []);
  const across = columns.length === 0 ? [startCol, endCol] : indices.map((index) => startCol + index);
  return quotedSheet(table.sheet) + absolute(rangeRef(Math.min(...rows), Math.min(...across), Math.max(...rows), Math.max(...across)));
}

/** `@[EC]`, `[#Headers],[EC]`, `[EC]:[pH]`, `EC`: which rows and which columns are meant. */
function parts(inBrackets: string): { sections: string[]; columns: string[] } {
  const inner = inBrackets.slice(1, -1).trim();
  const thisRow = inner.startsWith("@");
  const rest = thisRow ? inner.slice(1) : inner;
  const items = rest.startsWith("[") ? [...rest.matchAll(/\[((?:'.|[^'[\]])*)\]/gu)].map(([, item = ""]) => item) : rest === "" ? [] : [rest];
  const sections = items.filter((item) => item.trim().startsWith("#")).map((item) => item.trim().toLowerCase());
  const columns = items.filter((item) => !item.trim().startsWith("#")).map((item) => item.replaceAll(/'(.)/gu, "$1"));
  if (thisRow) sections.push("#this row");
  return { sections: sections.length === 0 ? ["#data"] : sections, columns };
}

function rowsOf(section: string, [first, last]: Span, table: PlacedTable, place: Place): Span | undefined {
  const lastData = table.hasTotals === true ? last - 1 : last;
  const known: Record<string, Span | undefined> = {
    "#all": [first, last],
    "#headers": [first, first],
    "#data": lastData > first ? [first + 1, lastData] : undefined,
    "#totals": table.hasTotals === true ? [last, last] : undefined,
    "#this row": holds(table, place) && place.row > first && place.row <= lastData ? [place.row, place.row] : undefined,
  };
  return known[section];
}

function holds({ sheet, ref }: PlacedTable, place: Place): boolean {
  const { startRow, endRow } = parseRange(ref);
  return sheet === place.sheet && place.row >= startRow && place.row <= endRow;
}

function sameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

function absolute(range: string): string {
  return range.replaceAll(/([A-Z]+)(\d+)/gu, "$$$1$$$2");
}
