import type { IRange } from "@univerjs/core";
import type { FWorksheet } from "@univerjs/sheets/facade";
import type { BookName } from "../book";
import { areaAt, sheetColumns, sheetRows, type Area } from "../host/excel/area";
import { BookRecords } from "../host/excel/book-records";
import type { CellLook, Entry, SheetStore, StoreEvent } from "../host/excel/sheet-store";
import { giveLook } from "./cell-looks";
import { enterCells } from "./cell-writing";
import type { Grid } from "./grid";
import { listenTo } from "./grid-events";
import { sheetChange } from "./sheet-change";
import { ShownRecords } from "./shown-records";
import { showTables } from "./table-looks";
import { mostRounds, TypedFormulas } from "./typed-formulas";
import { UndoGroups } from "./undo-groups";
import { UniverCells } from "./univer-cells";

/** The open workbook of the grid, as the Excel-shaped host sees it. */
export class UniverStore extends UniverCells implements SheetStore {
  readonly records = new BookRecords();
  private readonly listeners = new Set<(event: StoreEvent) => void>();
  private readonly undoGroups: UndoGroups;
  private isWriting = false;
  private isUncomputed = false;
  private isComputing = false;
  private readonly formulasTyped: TypedFormulas;
  private readonly shown: ShownRecords;

  constructor(grid: Grid, names: readonly BookName[]) {
    super(grid);
    this.undoGroups = new UndoGroups(grid);
    this.formulasTyped = new TypedFormulas(grid, this, names, () => this.isComputing);
    this.shown = new ShownRecords(grid, this.records);
    showTables(grid, this.records);
    const writer = () => (this.isWriting ? "add-in" : "person");
    listenTo(grid, this.records.switches, writer, (event) => { this.tell(event); });
  }

  write(area: Area, cells: readonly (readonly (Entry | undefined)[])[]): void {
    this.asAddIn(() => { enterCells(this.sheet(area.sheetId), area, cells); });
    this.isUncomputed = true;
  }

  setNumberFormats(area: Area, formats: readonly (readonly (string | undefined)[])[]): void {
    const sheet = this.sheet(area.sheetId);
    this.asAddIn(() => {
      formats.forEach((row, i) => {
        row.forEach((format, j) => {
          if (format !== undefined) sheet.getRange(area.row + i, area.column + j).setNumberFormat(format);
        });
      });
    });
  }

  setLook(area: Area, look: CellLook | undefined): void {
    this.asAddIn(() => { giveLook(sheetChange(this.grid, area.sheetId), this.range(area), look); });
  }

  selection(): readonly Area[] {
    const sheet = this.book.getActiveSheet();
    return (sheet.getSelection()?.getActiveRangeList() ?? []).map((range) => selected(sheet, range.getRange()));
  }

  select(areas: readonly Area[]): void {
    const [first] = areas;
    if (first === undefined) return;
    const sheet = this.sheet(first.sheetId);
    if (sheet.getSheetId() !== this.activeSheetId()) sheet.activate();
    this.range(first).activate();
    sheet.scrollToCell(Math.max(0, first.row - 2), Math.max(0, first.column - 1));
  }

  async settled(): Promise<void> {
    if (this.showRecords()) this.isUncomputed = true;
    if (!this.isUncomputed) return;
    this.isUncomputed = false;
    await this.recalculate();
  }

  /** Brings the grid up to what the workbook has beside its cells; whether formulas mean something else by it. */
  showRecords(): boolean {
    this.shown.show(this.sheets().map(({ id }) => id));
    return this.formulasTyped.refresh();
  }

  /** Computes every formula anew, and again while a spill changes its size under a formula that names it. */
  async recalculate(): Promise<void> {
    const formula = this.grid.api.getFormula();
    this.isComputing = true;
    for (let round = 1; round === 1 || (round <= mostRounds && this.formulasTyped.refresh()); round += 1) {
      formula.executeCalculation();
      await formula.onCalculationResultApplied();
    }
    this.isComputing = false;
  }

  undoGroup(mark: "start" | "end"): void { this.undoGroups.mark(mark); }

  /** Ends what a pane has left open that was loaded anew in the midst of its commands. */
  endUndoGroups(): void { this.undoGroups.end(); }

  subscribe(listener: (event: StoreEvent) => void): () => void {
    this.listeners.add(listener);
    return () => { this.listeners.delete(listener); };
  }

  private asAddIn(work: () => void): void {
    this.isWriting = true;
    try {
      work();
    } finally {
      this.isWriting = false;
    }
  }

  private tell(event: StoreEvent): void {
    for (const listener of this.listeners) listener(event);
  }
}

/** A selected range in the host's terms: all rows of the grid are all rows of the sheet. */
function selected(sheet: FWorksheet, { startRow, endRow, startColumn, endColumn }: IRange): Area {
  const [top, left] = [startRow || 0, startColumn || 0];
  const allRows = Number.isNaN(endRow) || (top === 0 && endRow >= sheet.getMaxRows() - 1);
  const allColumns = Number.isNaN(endColumn) || (left === 0 && endColumn >= sheet.getMaxColumns() - 1);
  return areaAt(sheet.getSheetId(), top, left, allRows ? sheetRows : endRow - top + 1, allColumns ? sheetColumns : endColumn - left + 1);
}
