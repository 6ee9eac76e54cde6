import type { FRange, FWorkbook, FWorksheet } from "@univerjs/sheets/facade";
import type { Area } from "../host/excel/area";
import { type Line, span } from "../host/excel/area-maths";
import { HostError } from "../host/excel/host-error";
import type { Box, SheetInfo, Visibility } from "../host/excel/sheet-store";
import type { Grid } from "./grid";
import { boxOf, pixelsPerPoint } from "./grid-geometry";

/** What the grid calls the ends of a range, and how it hides and shows what lies between. */
const ends = { row: ["startRow", "endRow"], column: ["startColumn", "endColumn"] } as const;
const hiding = { row: ["hideRows", "showRows"], column: ["hideColumns", "showColumns"] } as const;
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

  hidden(sheetId: string, line: Line): ReadonlySet<number> {
    const sheet = this.sheet(sheetId).getSheet();
    const ranges = line === "row" ? sheet.getHiddenRows() : sheet.getHiddenCols();
    const [first, last] = ends[line];
    return new Set(ranges.flatMap((range) => Array.from({ length: range[last] - range[first] + 1 }, (_, i) => range[first] + i)));
  }

  setHidden(area: Area, line: Line, isHidden: boolean): void {
    const [hide, show] = hiding[line];
    const { first, count } = span(area, line);
    this.sheet(area.sheetId)[isHidden ? hide : show](first, count);
  }

  box(area: Area): Box { return boxOf(this.sheet(area.sheetId), area); }
  setSize(area: Area, line: Line, points: number): void {
    const { first, count } = span(area, line);
    this.sheet(area.sheetId)[line === "row" ? "setRowHeightsForced" : "setColumnWidths"](first, count, points * pixelsPerPoint);
  }

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

  protected range({ sheetId, row, column, rowCount, columnCount }: Area): FRange {
    return this.sheet(sheetId).getRange(row, column, rowCount, columnCount);
  }
}
