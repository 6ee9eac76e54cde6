import type { Book, BookCell, BookTable } from "../../workbench/book";
import type { CellValue } from "../../workbench/host/functions-host";

type Typed = CellValue | BookCell;

/** A book from what a person would type: `{ Log: { A1: 3, B1: "=A1*2" } }`. */
export function bookOf(sheets: Record<string, Record<string, Typed>>, more: Partial<Book> & { tables?: Record<string, BookTable[]> } = {}): Book {
  const { tables = {}, ...rest } = more;
  const entries = Object.entries(sheets).map(([name, cells]) => ({
    name,
    cells: new Map(Object.entries(cells).map(([address, typed]) => [address, cellOf(typed)])),
    tables: tables[name] ?? [],
  }));
  return { sheets: entries, names: [], date1904: false, ...rest };
}

function cellOf(typed: Typed): BookCell {
  if (typeof typed === "string" && typed.startsWith("=")) return { formula: typed.slice(1) };
  return typeof typed === "object" && !("error" in typed) ? typed : { value: typed };
}
