import type { Book } from "../book";
import { parseArea } from "../host/excel/area";
import type { BookRecords } from "../host/excel/book-records";
import { sheetIdOf, workbookData } from "./book-data";
import type { Grid } from "./grid";

/** Puts a book into the grid and computes it; resolves when every formula has its value. */
export async function openWorkbook({ api }: Grid, book: Book): Promise<void> {
  api.createWorkbook(workbookData(book));
  const workbook = api.getActiveWorkbook();
  for (const { name, refersTo } of book.names) workbook?.insertDefinedName(name, refersTo);
  const hasFormulas = book.sheets.some(({ cells }) => [...cells.values()].some(({ formula }) => formula !== undefined));
  if (hasFormulas) await api.getFormula().onCalculationResultApplied();
}

/** Tells the host object of what belongs to a book beside its cells. */
export function fillRecords(records: BookRecords, book: Book): void {
  records.date1904 = book.date1904;
  book.sheets.forEach((sheet, place) => {
    for (const { name, ref, columns, hasTotals } of sheet.tables) {
      const area = parseArea(ref, sheetIdOf(place));
      if (area === undefined) continue;
      records.tables.push({ id: records.newId("table"), name, area, columns: [...columns], showTotals: hasTotals === true, style: "" });
    }
  });
  for (const { name, refersTo } of book.names) {
    records.names.push({ id: records.newId("name"), name, formula: `=${refersTo}`, comment: "" });
  }
}
