import { BooleanNumber, CellValueType, LocaleType, type ICellData, type IRowData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import type { Book, BookCell, BookSheet } from "../book";
import { withOwnNames } from "../engine/sheet-names";
import { tablesOf, withoutStructuredReferences } from "../engine/structured-references";
import { parseArea } from "../host/excel/area";

export const unitId = "workbook";
export const sheetIdOf = (place: number): string => `sheet-${place + 1}`;

/** Room for spills and for a log that grows. */
const room = { rows: 200, columns: 12, leastColumns: 26 };
const headerRowStyle = { bl: BooleanNumber.TRUE } as const;
const pixels = { column: 92, leastColumn: 56, padding: 24, perCharacter: 7.5, longText: 24 };

/** A book as the grid component takes it; formulas in the component's own dialect. */
export function workbookData(book: Book): Partial<IWorkbookData> {
  const ids = book.sheets.map((_, place) => sheetIdOf(place));
  const sheets = Object.fromEntries(book.sheets.map((sheet, place) => [sheetIdOf(place), sheetData(book, sheet, sheetIdOf(place))]));
  return { id: unitId, name: "Workbook", locale: LocaleType.EN_US, sheetOrder: ids, sheets, styles: {} };
}

function sheetData(book: Book, sheet: BookSheet, id: string): Partial<IWorksheetData> {
  const tables = tablesOf(book);
  const cellData: Record<number, Record<number, ICellData>> = {};
  const widths: number[] = [];
  let lastRow = 0;
  for (const [address, cell] of sheet.cells) {
    const place = parseArea(address, id);
    if (place === undefined) continue;
    const { row, column } = place;
    const dialect = (formula: string): string =>
      withOwnNames(withoutStructuredReferences(formula, tables, { sheet: sheet.name, row, column }), sheet.name, book.names);
    (cellData[row] ??= {})[column] = dataOf(cell, dialect);
    widths[column] = Math.max(widths[column] ?? pixels.leastColumn, widthOf(cell));
    lastRow = Math.max(lastRow, row);
  }
  for (const { ref } of sheet.tables) markHeader(cellData, ref);
  return {
    id,
    name: sheet.name,
    cellData,
    rowCount: lastRow + room.rows,
    columnCount: Math.max(room.leastColumns, widths.length + room.columns),
    defaultColumnWidth: pixels.column,
    columnData: Object.fromEntries(widths.map((w, column) => [column, { w }])),
    rowData: Object.fromEntries([...(sheet.hiddenRows ?? [])].map((row): [number, IRowData] => [row, { hd: BooleanNumber.TRUE }])),
  };
}

function dataOf({ value, formula, numberFormat }: BookCell, dialect: (formula: string) => string): ICellData {
  const style = numberFormat === undefined || numberFormat === "General" ? {} : { s: { n: { pattern: numberFormat } } };
  if (formula !== undefined) return { f: `=${dialect(formula)}`, ...style };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER, ...style };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN, ...style };
  return { v: typeof value === "object" ? value.error : (value ?? ""), t: CellValueType.STRING, ...style };
}

/** Wide enough for every number and short text; what is longer runs over into the next cells. */
function widthOf({ value, formula, numberFormat = "" }: BookCell): number {
  if (formula !== undefined || value === undefined) return 0;
  const text = typeof value === "number" ? numberFormat : String(typeof value === "object" ? value.error : value);
  return text.length > pixels.longText ? 0 : pixels.padding + text.length * pixels.perCharacter;
}

function markHeader(cellData: Record<number, Record<number, ICellData>>, ref: string): void {
  const area = parseArea(ref, "");
  if (area === undefined) return;
  const row = (cellData[area.row] ??= {});
  for (let column = area.column; column < area.column + area.columnCount; column += 1) {
    row[column] = { ...row[column], s: headerRowStyle };
  }
}
