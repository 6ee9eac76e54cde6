import { BooleanNumber, LocaleType, type ICellData, type IFreeze, type IRowData, type IWorkbookData, type IWorksheetData } from "@univerjs/core";
import type { Book, BookCell, BookLook, BookSheet } from "../book";
import { tablesOf } from "../engine/structured-references";
import { cellData } from "../engine/univer-values";
import { areasOf, parseArea } from "../host/excel/area";
import { styleOf } from "./cell-looks";
import { formulaData, inDialect } from "./formula-dialect";
import { digitWidth, pixelsPerPoint } from "./grid-geometry";
import { rangeIn } from "./ranges";

export const unitId = "workbook";
export const sheetIdOf = (place: number): string => `sheet-${place + 1}`;

type Cells = Record<number, Record<number, ICellData>>;

/** Room for spills and for a log that grows. */
const room = { rows: 200, columns: 12, leastColumns: 26 };
const pixels = { column: 92, sides: 5, leastColumn: 56, padding: 24, perCharacter: 7.5, longText: 24 };

/** A book as the grid component takes it; formulas in the component's own dialect. */
export function workbookData(book: Book): Partial<IWorkbookData> {
  const ids = book.sheets.map((_, place) => sheetIdOf(place));
  const sheets = Object.fromEntries(book.sheets.map((sheet, place) => [sheetIdOf(place), sheetData(book, sheet, sheetIdOf(place))]));
  return { id: unitId, name: "Workbook", locale: LocaleType.EN_US, sheetOrder: ids, sheets, styles: {} };
}

function sheetData(book: Book, sheet: BookSheet, id: string): Partial<IWorksheetData> {
  const { looks } = sheet;
  const { cells, widths, lastRow } = cellsOf(book, sheet);
  for (const [column, digits] of looks?.columnWidths ?? []) widths[column] = digits * digitWidth() + pixels.sides;
  const freeze = freezeOf(looks?.frozen ?? { rows: 0 });
  return {
    id,
    name: sheet.name,
    cellData: cells,
    rowCount: lastRow + room.rows,
    columnCount: Math.max(room.leastColumns, widths.length + room.columns),
    defaultColumnWidth: pixels.column,
    columnData: Object.fromEntries(widths.map((w, column) => [column, looks?.hiddenColumns.has(column) === true ? { w, hd: BooleanNumber.TRUE } : { w }])),
    rowData: rowData(sheet),
    mergeData: areasOf(looks?.merged ?? [], id).map(rangeIn),
    showGridlines: looks?.gridLines === false ? BooleanNumber.FALSE : BooleanNumber.TRUE,
    hidden: looks?.isHidden === true ? BooleanNumber.TRUE : BooleanNumber.FALSE,
    ...(freeze.ySplit === 0 ? {} : { freeze }),
  };
}

/** Frozen columns scroll away all the same: beside them the component scrolls too little, and cells out of sight cannot be typed into. */
export function freezeOf({ rows }: { readonly rows: number }): IFreeze {
  return { ySplit: rows, xSplit: 0, startRow: rows === 0 ? -1 : rows, startColumn: -1 };
}

function cellsOf(book: Book, sheet: BookSheet): { cells: Cells; widths: number[]; lastRow: number } {
  const tables = tablesOf(book);
  const rows: Cells = {};
  const widths: number[] = [];
  let lastRow = 0;
  for (const address of new Set([...sheet.cells.keys(), ...(sheet.looks?.cells.keys() ?? [])])) {
    const place = parseArea(address, "");
    if (place === undefined) continue;
    const { row, column } = place;
    const cell = sheet.cells.get(address) ?? {};
    const dialect = (formula: string): string => inDialect(formula, { sheet: sheet.name, row, column }, { tables, names: book.names, spill: () => undefined });
    (rows[row] ??= {})[column] = dataOf(cell, { ...cell, ...sheet.looks?.cells.get(address) }, dialect);
    widths[column] = Math.max(widths[column] ?? pixels.leastColumn, widthOf(cell));
    lastRow = Math.max(lastRow, row);
  }
  return { cells: rows, widths, lastRow };
}

function rowData({ hiddenRows = new Set(), looks }: BookSheet): Record<number, Partial<IRowData>> {
  const heights = [...(looks?.rowHeights ?? [])].map(([row, points]): [number, Partial<IRowData>] => [row, { h: points * pixelsPerPoint, ia: BooleanNumber.FALSE }]);
  const data: Record<number, Partial<IRowData>> = Object.fromEntries(heights);
  for (const row of hiddenRows) data[row] = { ...data[row], hd: BooleanNumber.TRUE };
  return data;
}

function dataOf({ value, formula }: BookCell, look: BookLook, dialect: (formula: string) => string): ICellData {
  const { numberFormat } = look;
  const s = { ...styleOf(look), ...(numberFormat === undefined || numberFormat === "General" ? {} : { n: { pattern: numberFormat } }) };
  const style = Object.keys(s).length === 0 ? {} : { s };
  if (formula !== undefined) return { ...formulaData(`=${formula}`, `=${dialect(formula)}`), ...style };
  return value === undefined ? style : { ...cellData(value), ...style };
}

/** Wide enough for every number and short text; what is longer runs over into the next cells. */
function widthOf({ value, formula, numberFormat = "" }: BookCell): number {
  if (formula !== undefined || value === undefined) return 0;
  const text = typeof value === "number" ? numberFormat : String(typeof value === "object" ? value.error : value);
  return text.length > pixels.longText ? 0 : pixels.padding + text.length * pixels.perCharacter;
}
