import type { FWorkbook, FWorksheet } from "@univerjs/sheets/facade";
import type { Area } from "../host/excel/area";
import { HostError } from "../host/excel/host-error";
import type { Box, SheetInfo, Visibility } from "../host/excel/sheet-store";
import type { Grid } from "./grid";
import { boxOf, setHeights, setWidths } from "./grid-geometry";

const sheetRoom = { rows: 200, columns: 26 };

/** The sheets of the open workbook, and the rows and columns they are made of. */
export abstract class UniverSheets {
  constructor(protected readonly grid: Grid) {}

  sheets(): readonly SheetInfo[] {
    return this.book.getSheets().map((sheet) => ({
      id: sheet.getSheetId(),
      name: sheet.getSheetName(),
      visibility: sheet.isSheetHidden() ? "Hidden" : "Visible",
    }));
  }

  activeSheetId(): string { return this.book.getActiveSheet().getSheetId(); }

  addSheet(name: string): string {
    const active = this.book.getActiveSheet();
    const id = this.book.create(name, sheetRoom.rows, sheetRoom.columns).getSheetId();
    active.activate();
    return id;
  }

  deleteSheet(id: string): void { this.book.deleteSheet(id); }
  renameSheet(id: string, name: string): void { this.sheet(id).setName(name); }
  activateSheet(id: string): void { this.sheet(id).activate(); }
  setVisibility(id: string, visibility: Visibility): void {
    if (visibility === "Visible") this.sheet(id).showSheet();
    else this.sheet(id).hideSheet();
  }

  hiddenRows(sheetId: string): ReadonlySet<number> {
    const hidden = this.sheet(sheetId).getSheet().getHiddenRows();
    return new Set(hidden.flatMap(({ startRow, endRow }) => Array.from({ length: endRow - startRow + 1 }, (_, i) => startRow + i)));
  }

  setRowsHidden(area: Area, hidden: boolean): void {
    const sheet = this.sheet(area.sheetId);
    if (hidden) sheet.hideRows(area.row, area.rowCount);
    else sheet.showRows(area.row, area.rowCount);
  }

  hiddenColumns(sheetId: string): ReadonlySet<number> {
    const hidden = this.sheet(sheetId).getSheet().getHiddenCols();
    return new Set(hidden.flatMap(({ startColumn, endColumn }) => Array.from({ length: endColumn - startColumn + 1 }, (_, i) => startColumn + i)));
  }

  setColumnsHidden(area: Area, hidden: boolean): void {
    const sheet = this.sheet(area.sheetId);
    if (hidden) sheet.hideColumns(area.column, area.columnCount);
    else sheet.showColumns(area.column, area.columnCount);
  }

  box(area: Area): Box { return boxOf(this.sheet(area.sheetId), area); }
  setColumnWidth(area: Area, points: number): void { setWidths(this.sheet(area.sheetId), area, points); }
  setRowHeight(area: Area, points: number): void { setHeights(this.sheet(area.sheetId), area, points); }
  fitColumns(area: Area): void { this.sheet(area.sheetId).autoResizeColumns(area.column, area.columnCount); }

  protected get book(): FWorkbook {
    const book = this.grid.api.getActiveWorkbook();
    if (book === null) throw new HostError("GeneralException", "no workbook is open");
    return book;
  }

  protected sheet(id: string): FWorksheet {
    const sheet = this.book.getSheetBySheetId(id);
    if (sheet === null) throw new HostError("ItemNotFound", "the sheet is gone");
    return sheet;
  }
}
