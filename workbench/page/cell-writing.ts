import type { ICellData } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { cellData } from "../engine/univer-values";
import type { Area } from "../host/excel/area";
import type { Entry } from "../host/excel/sheet-store";

/** Puts values and formulas into cells; `undefined` leaves a cell as it is. The grid grows where it is too small. */
export function enterCells(sheet: FWorksheet, area: Area, cells: readonly (readonly (Entry | undefined)[])[]): void {
  grow(sheet, area);
  const matrix: Record<number, Record<number, ICellData>> = {};
  cells.forEach((row, i) => {
    row.forEach((entry, j) => {
      if (entry !== undefined) (matrix[area.row + i] ??= {})[area.column + j] = dataOf(entry);
    });
  });
  if (Object.keys(matrix).length > 0) sheet.getRange(area.row, area.column, area.rowCount, area.columnCount).setValues(matrix);
}

function grow(sheet: FWorksheet, area: Area): void {
  const [rows, columns] = [area.row + area.rowCount, area.column + area.columnCount];
  if (rows > sheet.getMaxRows()) sheet.setRowCount(rows);
  if (columns > sheet.getMaxColumns()) sheet.setColumnCount(columns);
}

function dataOf(entry: Entry): ICellData {
  if (typeof entry === "object") return { f: entry.formula, v: null, si: null, p: null };
  const kept = entry === "" ? { v: null, t: null } : cellData(entry);
  return { ...kept, f: null, si: null, p: null, custom: null };
}
