import type { Area } from "./area";
import { intersection } from "./area-maths";
import type { TableRecord } from "./book-records";
import type { OpenBook } from "./sheet-access";

/** The columns of a table take their names from its header cells; a blank one is named, and shows it. */
export function nameColumns(book: OpenBook, table: TableRecord): void {
  const header = { ...table.area, rowCount: 1 };
  const texts = book.store.texts(header)[0] ?? [];
  table.columns = texts.map((text, i) => (text === "" ? `Column${i + 1}` : text));
  if (texts.includes("")) book.store.write(header, [texts.map((text, i) => (text === "" ? table.columns[i] : undefined))]);
}

/** After cells were written: tables whose header row is among them. */
export function renameColumns(book: OpenBook, written: Area): void {
  for (const table of book.records.tables) {
    if (intersection({ ...table.area, rowCount: 1 }, written) !== undefined) nameColumns(book, table);
  }
}
