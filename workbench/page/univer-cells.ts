import { CellValueType, type ICellData, type IRange, type Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { FRange } from "@univerjs/sheets/facade";
import { areaAt, type Area } from "../host/excel/area";
import { Bounds, mapCells, touches } from "../host/excel/area-maths";
import type { CellLook, Scalar } from "../host/excel/sheet-store";
import { unitId } from "./book-data";
import { lookOf } from "./cell-looks";
import { typedIn } from "./formula-dialect";
import { areaIn } from "./ranges";
import { UniverSheets } from "./univer-sheets";

/** The cells of the open workbook, read at full precision; those that a formula spilled into are kept apart by the component. */
export abstract class UniverCells extends UniverSheets {
  values(area: Area): Scalar[][] {
    return mapCells(area, this.valuesOn(area.sheetId));
  }

  formulas(area: Area): Scalar[][] {
    const sheet = this.sheet(area.sheetId);
    const value = this.valuesOn(area.sheetId);
    return mapCells(area, (row, column) => {
      const cell = sheet.getSheet().getCellRaw(row, column);
      const isFormula = typeof cell?.f === "string" || typeof cell?.si === "string";
      return isFormula ? (typedIn(cell)?.typed ?? sheet.getRange(row, column).getFormula()) : value(row, column);
    });
  }

  texts(area: Area): string[][] {
    return this.eachInGrid(area, "", (range) => range.getDisplayValues());
  }

  numberFormats(area: Area): string[][] {
    return this.eachInGrid(area, "General", (range) => range.getNumberFormats());
  }

  look(row: number, column: number, sheetId: string): CellLook {
    return lookOf(this.sheet(sheetId).getSheet().getCellStyle(row, column));
  }

  filledArea(sheetId: string, onlyValues: boolean): Area | undefined {
    const bounds = new Bounds();
    this.sheet(sheetId).getSheet().getCellMatrix().forValue((row, column, cell) => {
      if (holdsValue(cell) || (!onlyValues && Boolean(cell?.s))) bounds.include(row, column);
    });
    for (const area of this.spills(sheetId)) bounds.include(area.row + area.rowCount - 1, area.column + area.columnCount - 1);
    return bounds.on(sheetId);
  }

  spillOver(row: number, column: number, sheetId: string): Area | undefined {
    return this.spills(sheetId).find((area) => touches(area, areaAt(sheetId, row, column)));
  }

  /** The areas of all formulas that fill more than their own cell. */
  private spills(sheetId: string): Area[] {
    const rows: Readonly<Record<number, Readonly<Record<number, IRange>>>> = this.model.getArrayFormulaRange()[unitId]?.[sheetId] ?? {};
    return Object.values(rows).flatMap((columns) => Object.values(columns)).map((range) => areaIn(sheetId, range));
  }

  private valuesOn(sheetId: string): (row: number, column: number) => Scalar {
    const sheet = this.sheet(sheetId).getSheet();
    const spilled = this.model.getArrayFormulaCellData()[unitId]?.[sheetId] ?? {};
    return (row, column) => {
      const own = sheet.getCellRaw(row, column);
      const answer: Nullable<ICellData> = spilled[row]?.[column];
      const { v, t } = own?.f === undefined && answer?.v !== undefined ? answer : (own ?? {});
      if (v === undefined || v === null) return "";
      return t === CellValueType.BOOLEAN ? v === 1 || v === true : v;
    };
  }

  private get model(): FormulaDataModel {
    return this.grid.univer.__getInjector().get(FormulaDataModel);
  }

  /** The grid is smaller than a sheet of the host: what lies beyond it is as nobody has touched it. */
  private eachInGrid(area: Area, untouched: string, read: (inside: FRange) => readonly (readonly string[])[]): string[][] {
    const sheet = this.sheet(area.sheetId);
    const rowCount = Math.min(area.rowCount, sheet.getMaxRows() - area.row);
    const columnCount = Math.min(area.columnCount, sheet.getMaxColumns() - area.column);
    const known = rowCount > 0 && columnCount > 0 ? read(this.range({ ...area, rowCount, columnCount })) : [];
    return mapCells(area, (row, column) => known[row - area.row]?.[column - area.column] || untouched);
  }
}

function holdsValue(cell: Nullable<ICellData>): boolean {
  if (!cell) return false;
  return typeof cell.f === "string" || typeof cell.si === "string" || (cell.v !== undefined && cell.v !== null && cell.v !== "");
}
