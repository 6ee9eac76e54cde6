import { type Area, areaAt } from "./area";
import { type Line, mapCells } from "./area-maths";
import { BookRecords } from "./book-records";
import { HostError } from "./host-error";
import { MemorySheet, usualPoints } from "./memory-sheet";
import type { Box, CellLook, Entry, Scalar, SheetInfo, SheetStore, StoreEvent, Visibility } from "./sheet-store";

export interface MemoryOptions {
  /** What a formula gives: one row of cells or many; left out, a formula shows 0. */
  readonly compute?: (formula: string, cell: Area, store: SheetStore) => readonly (readonly Scalar[])[];
  /** What a cell shows in its number format. */
  readonly show?: (value: Scalar, numberFormat: string) => string;
}

/** A workbook in memory, without a screen: what tests and commands put under the Excel-shaped host. */
export class MemoryStore implements SheetStore {
  readonly records = new BookRecords();
  private readonly pages: MemorySheet[] = [];
  private readonly listeners = new Set<(event: StoreEvent) => void>();
  private active = "";
  private selected: readonly Area[] = [];

  constructor(private readonly options: MemoryOptions = {}, sheetName = "Sheet1") {
    this.activateSheet(this.addSheet(sheetName));
    this.selected = [areaAt(this.active, 0, 0)];
  }

  sheets(): readonly SheetInfo[] { return this.pages; }
  activeSheetId(): string { return this.active; }
  addSheet(name: string): string {
    const id = this.records.newId("sheet");
    this.pages.push(new MemorySheet(id, name));
    return id;
  }

  deleteSheet(id: string): void {
    this.pages.splice(this.pages.indexOf(this.page(id)), 1);
    if (this.active === id) this.activateSheet(this.pages[0]?.id ?? "");
  }

  renameSheet(id: string, name: string): void { this.page(id).name = name; }
  setVisibility(id: string, visibility: Visibility): void { this.page(id).visibility = visibility; }

  activateSheet(id: string): void {
    this.active = id;
    this.tell({ kind: "activated", sheetId: id });
  }

  values(area: Area): Scalar[][] { return this.each(area, (page, row, column) => page.value(row, column)); }
  formulas(area: Area): Scalar[][] { return this.each(area, (page, row, column) => page.cell(row, column)?.formula ?? page.value(row, column)); }
  numberFormats(area: Area): string[][] { return this.each(area, (page, row, column) => page.format(row, column)); }

  texts(area: Area): string[][] {
    const show = this.options.show ?? String;
    return this.each(area, (page, row, column) => show(page.value(row, column), page.format(row, column)));
  }

  write(area: Area, cells: readonly (readonly (Entry | undefined)[])[]): void {
    const page = this.page(area.sheetId);
    cells.forEach((line, i) => { line.forEach((value, j) => { page.enter(area.row + i, area.column + j, value); }); });
    this.compute();
    this.tell({ kind: "changed", area, by: "add-in" });
  }

  /** Writes as a person would, so that handlers learn of it. */
  type(area: Area, value: Entry): void {
    this.page(area.sheetId).enter(area.row, area.column, value);
    this.compute();
    this.tell({ kind: "changed", area, by: "person" });
  }

  setNumberFormats(area: Area, formats: readonly (readonly (string | undefined)[])[]): void {
    formats.forEach((line, i) => { line.forEach((format, j) => { this.page(area.sheetId).setFormat(area.row + i, area.column + j, format); }); });
  }

  look(row: number, column: number, sheetId: string): CellLook { return this.page(sheetId).look(row, column); }

  setLook(area: Area, look: CellLook | undefined): void {
    this.each(area, (page, row, column) => { page.setLook(row, column, look); });
  }

  filledArea(sheetId: string, onlyValues: boolean): Area | undefined { return this.page(sheetId).filled(onlyValues); }
  spillOver(row: number, column: number, sheetId: string): Area | undefined { return this.page(sheetId).spillOver(row, column); }
  hidden(sheetId: string, line: Line): ReadonlySet<number> { return this.page(sheetId).hidden[line]; }
  setHidden(area: Area, line: Line, isHidden: boolean): void { this.page(area.sheetId).setHidden(area, line, isHidden); }
  box(area: Area): Box { return this.page(area.sheetId).box(area); }
  setSize(area: Area, line: Line, points: number): void { this.page(area.sheetId).setSize(area, line, points); }
  fitColumns(area: Area): void { this.setSize(area, "column", usualPoints.column); }

  selection(): readonly Area[] { return this.selected; }

  select(areas: readonly Area[]): void {
    this.selected = areas;
    const sheetId = areas[0]?.sheetId;
    if (sheetId !== undefined && sheetId !== this.active) this.activateSheet(sheetId);
    this.tell({ kind: "selection" });
  }

  settled(): Promise<void> { return Promise.resolve(); }
  undoGroup(): void { /* Nothing can be undone in memory. */ }

  subscribe(listener: (event: StoreEvent) => void): () => void {
    this.listeners.add(listener);
    return () => { this.listeners.delete(listener); };
  }

  private tell(event: StoreEvent): void {
    for (const listener of this.listeners) listener(event);
  }

  private page(id: string): MemorySheet {
    const page = this.pages.find((each) => each.id === id);
    if (page === undefined) throw new HostError("ItemNotFound", "the sheet is gone");
    return page;
  }

  private each<Answer>(area: Area, answer: (page: MemorySheet, row: number, column: number) => Answer): Answer[][] {
    const page = this.page(area.sheetId);
    return mapCells(area, (row, column) => answer(page, row, column));
  }

  /** As after an edit: formulas of the add-in may answer later than the rest. */
  private compute(): void {
    const { answersLate } = this.records.switches;
    this.computeAll(answersLate > 0);
    if (answersLate === 0) return;
    setTimeout(() => {
      this.computeAll(false);
      for (const { id } of this.pages) this.tell({ kind: "calculated", sheetId: id });
    }, answersLate);
  }

  /** Every formula once, from the top left; a formula that reads a later one sees its earlier value. */
  private computeAll(isBusy: boolean): void {
    for (const page of this.pages) {
      page.forgetSpills();
      for (const { row, column, formula } of page.formulaCells()) {
        const cell = areaAt(page.id, row, column);
        const waits = isBusy && formula.includes("RUNOFF.");
        page.spill(cell, waits ? [["#BUSY!"]] : (this.options.compute?.(formula, cell, this) ?? [[0]]));
      }
    }
  }
}
