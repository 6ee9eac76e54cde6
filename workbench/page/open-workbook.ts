import type { Book, BookChart, SheetLooks } from "../book";
import { engineNames } from "../engine/sheet-names";
import { areaAt, areasOf, splitSheetName } from "../host/excel/area";
import { bounding } from "../host/excel/area-maths";
import type { BookRecords, ChartRecord } from "../host/excel/book-records";
import type { SheetStore } from "../host/excel/sheet-store";
import { sheetIdOf, workbookData } from "./book-data";
import { defineName } from "./defined-names";
import type { Grid } from "./grid";
import { showNotes } from "./notes";
import { sheetChange } from "./sheet-change";

/** Puts a book into the grid and computes it; resolves when every formula has its value. */
export async function openWorkbook(grid: Grid, book: Book): Promise<void> {
  const { api } = grid;
  api.createWorkbook(workbookData(book));
  for (const { name, refersTo } of engineNames(book)) defineName(grid, name, refersTo);
  book.sheets.forEach((sheet, place) => { showNotes(sheetChange(grid, sheetIdOf(place)), sheet.looks?.notes); });
  const hasFormulas = book.sheets.some(({ cells }) => [...cells.values()].some(({ formula }) => formula !== undefined));
  if (hasFormulas) await api.getFormula().onCalculationResultApplied();
}

/** Tells the host object of what belongs to a book beside its cells. */
export function fillRecords(store: Pick<SheetStore, "records" | "box">, book: Book): void {
  const { records } = store;
  records.date1904 = book.date1904;
  book.sheets.forEach((sheet, place) => {
    const sheetId = sheetIdOf(place);
    for (const { name, ref, columns, hasTotals } of sheet.tables) {
      for (const area of areasOf([ref], sheetId)) {
        records.tables.push({ id: records.newId("table"), name, area, columns: [...columns], showTotals: hasTotals === true, style: "" });
      }
    }
    for (const [name, text] of sheet.kept ?? []) records.sheet(sheetId).custom.set(name, text);
    if (sheet.looks !== undefined) fillLooks(records, sheet.looks, sheetId);
    for (const each of sheet.looks?.charts ?? []) records.charts.push(chart(store, book, each, sheetId));
  });
  for (const { name, refersTo, onlyOn } of book.names) {
    if (onlyOn === undefined) records.names.push({ id: records.newId("name"), name, formula: `=${refersTo}`, comment: "" });
  }
}

function fillLooks(records: BookRecords, { conditionalFormats, validations, frozen }: SheetLooks, sheetId: string): void {
  records.sheet(sheetId).frozen = { ...frozen };
  for (const { ranges, ...rule } of conditionalFormats) {
    for (const area of areasOf(ranges, sheetId)) records.conditionalFormats.push({ ...rule, id: records.newId("conditional-format"), area });
  }
  for (const { ranges, ...limits } of validations) {
    for (const area of areasOf(ranges, sheetId)) records.validations.push({ ...limits, area });
  }
}

function chart(store: Pick<SheetStore, "records" | "box">, book: Book, { type, title, sources, over }: BookChart, sheetId: string): ChartRecord {
  const { records } = store;
  const drawn = sources.flatMap((source) => {
    const { sheetName, cells } = splitSheetName(source);
    return areasOf([cells], sheetName === undefined ? sheetId : sheetIdOf(book.sheets.findIndex(({ name }) => name === sheetName)));
  });
  const [place = areaAt(sheetId, 0, 0)] = areasOf([over], sheetId);
  const source = drawn.length === 0 ? place : drawn.reduce(bounding);
  return { id: records.newId("chart"), sheetId, type, source, name: `Chart ${records.charts.length + 1}`, title, ...store.box(place) };
}
