import { CellValueType, type ICellData, type IRange, type Nullable } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { Area } from "../host/excel/area";
import { Bounds, mapCells } from "../host/excel/area-maths";
import type { Scalar } from "../host/excel/sheet-store";
import { unitId } from "./book-data";
import { typedIn } from "./formula-dialect";
import { areaIn } from "./ranges";

type SpilledCells = Readonly<Record<number, Readonly<Record<number, Nullable<ICellData>>> | undefined>>;

/** Reads cells of one sheet at full precision; cells that a formula spilled into are kept apart by the component. */
export class CellReading {
  constructor(
    private readonly sheet: FWorksheet,
    private readonly model: FormulaDataModel,
  ) {}

  values(area: Area): Scalar[][] {
    const spilled = this.spilledCells();
    return mapCells(area, (row, column) => this.value(row, column, spilled));
  }

  formulas(area: Area): Scalar[][] {
    const spilled = this.spilledCells();
    return mapCells(area, (row, column) => {
      const cell = this.cell(row, column);
      const isFormula = typeof cell?.f === "string" || typeof cell?.si === "string";
      if (!isFormula) return this.value(row, column, spilled);
      return typedIn(cell)?.typed ?? this.sheet.getRange(row, column).getFormula();
    });
  }

  texts(area: Area): string[][] {
    return this.eachInGrid(area, "", (inside) => this.sheet.getRange(inside.row, inside.column, inside.rowCount, inside.columnCount).getDisplayValues());
  }

  numberFormats(area: Area): string[][] {
    const formats = this.eachInGrid(area, "", (inside) =>
      this.sheet.getRange(inside.row, inside.column, inside.rowCount, inside.columnCount).getNumberFormats());
    return formats.map((row) => row.map((format) => (format === "" ? "General" : format)));
  }

  /** The smallest area that holds every filled cell (and every formatted one, unless only values count). */
  filledArea(onlyValues: boolean): Area | undefined {
    const bounds = new Bounds();
    this.sheet.getSheet().getCellMatrix().forValue((row, column, cell) => {
      if (holdsValue(cell) || (!onlyValues && Boolean(cell?.s))) bounds.include(row, column);
    });
    for (const area of this.spills()) bounds.include(area.row + area.rowCount - 1, area.column + area.columnCount - 1);
    return bounds.on(this.sheet.getSheetId());
  }

  /** The areas of all formulas that fill more than their own cell. */
  spills(): Area[] {
    const id = this.sheet.getSheetId();
    const rows: Readonly<Record<number, Readonly<Record<number, IRange>>>> = this.model.getArrayFormulaRange()[unitId]?.[id] ?? {};
    return Object.values(rows).flatMap((columns) => Object.values(columns)).map((range) => areaIn(id, range));
  }

  private value(row: number, column: number, spilled: SpilledCells): Scalar {
    const own = this.cell(row, column);
    const answer = spilled[row]?.[column];
    const { v, t } = own?.f === undefined && answer?.v !== undefined ? answer : (own ?? {});
    if (v === undefined || v === null) return "";
    return t === CellValueType.BOOLEAN ? v === 1 || v === true : v;
  }

  private spilledCells(): SpilledCells {
    return this.model.getArrayFormulaCellData()[unitId]?.[this.sheet.getSheetId()] ?? {};
  }

  private cell(row: number, column: number): Nullable<ICellData> {
    return this.sheet.getSheet().getCellRaw(row, column);
  }

  /** The grid is smaller than a sheet of the host: what lies beyond it is blank. */
  private eachInGrid(area: Area, beyond: string, read: (inside: Area) => readonly (readonly string[])[]): string[][] {
    const rowCount = Math.min(area.rowCount, this.sheet.getMaxRows() - area.row);
    const columnCount = Math.min(area.columnCount, this.sheet.getMaxColumns() - area.column);
    const known = rowCount > 0 && columnCount > 0 ? read({ ...area, rowCount, columnCount }) : [];
    return mapCells(area, (row, column) => known[row - area.row]?.[column - area.column] ?? beyond);
  }
}

function holdsValue(cell: Nullable<ICellData>): boolean {
  if (!cell) return false;
  return typeof cell.f === "string" || typeof cell.si === "string" || (cell.v !== undefined && cell.v !== null && cell.v !== "");
}
