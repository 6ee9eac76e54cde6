import { ICommandService, type ICellData, type ICommandInfo, type Nullable } from "@univerjs/core";
import { SetFormulaCalculationResultMutation } from "@univerjs/engine-formula";
import { SetRangeValuesCommand, SetRangeValuesMutation, type ISetRangeValuesCommandParams } from "@univerjs/sheets";
import type { BookName } from "../book";
import type { PlacedTable } from "../engine/structured-references";
import { cellsOf } from "../host/excel/area";
import type { SheetStore } from "../host/excel/sheet-store";
import { unitId } from "./book-data";
import { formulaData, inDialect, typedIn, type Surroundings } from "./formula-dialect";
import type { Grid } from "./grid";

type Matrix<Cell> = Record<number, Record<number, Cell>>;

/** A spill may read a spill that reads a spill: after so many rounds of looking up their ranges that is called endless. */
export const mostRounds = 10;

/** Translates formulas as they are entered, by a person or by the add-in, and again when a table or a spill has changed its size. */
export class TypedFormulas {
  private readonly commands: ICommandService;
  private rounds = 0;

  constructor(
    private readonly grid: Grid,
    private readonly store: Pick<SheetStore, "activeSheetId" | "records" | "sheets" | "spillOver">,
    private readonly names: readonly BookName[],
    isBusy: () => boolean,
  ) {
    this.commands = grid.univer.__getInjector().get(ICommandService);
    this.commands.beforeCommandExecuted((command) => { this.translateEntry(command); });
    this.commands.onCommandExecuted(({ id }) => {
      if (id !== SetFormulaCalculationResultMutation.id || isBusy()) return;
      this.rounds = this.rounds < mostRounds && this.refresh() ? this.rounds + 1 : 0;
    });
  }

  /** Translates anew what is no longer true; whether anything was. */
  refresh(): boolean {
    const surroundings = this.surroundings();
    const changed = this.store.sheets().map(({ id, name }) => this.refreshSheet(id, name, surroundings));
    return changed.includes(true);
  }

  private refreshSheet(id: string, name: string, surroundings: Surroundings): boolean {
    const cellValue: Matrix<ICellData> = {};
    this.grid.api.getActiveWorkbook()?.getSheetBySheetId(id)?.getSheet().getCellMatrix().forValue((row, column, cell: Nullable<ICellData>) => {
      const kept = cell ? typedIn(cell) : undefined;
      if (kept === undefined) return;
      const translated = inDialect(kept.typed, { sheet: name, row, column }, surroundings);
      if (translated !== kept.translated) (cellValue[row] ??= {})[column] = { ...formulaData(kept.typed, translated), v: null, si: null };
    });
    if (Object.keys(cellValue).length === 0) return false;
    this.commands.syncExecuteCommand(SetRangeValuesMutation.id, { unitId, subUnitId: id, cellValue });
    return true;
  }

  private translateEntry({ id, params }: Readonly<ICommandInfo>): void {
    if (id !== SetRangeValuesCommand.id) return;
    const { value, range, subUnitId } = params as ISetRangeValuesCommandParams;
    const sheet = this.store.sheets().find((each) => each.id === (subUnitId ?? this.store.activeSheetId()));
    if (sheet === undefined) return;
    const surroundings = this.surroundings();
    for (const { cell, row, column } of entries(value, range)) {
      if (typeof cell.f !== "string" || !cell.f.startsWith("=")) continue;
      Object.assign(cell, formulaData(cell.f, inDialect(cell.f, { sheet: sheet.name, row, column }, surroundings)));
    }
  }

  private surroundings(): Surroundings {
    const sheets = this.store.sheets();
    const tables = this.store.records.tables.map(({ name, area, columns, showTotals }): PlacedTable =>
      ({ name, sheet: sheets.find(({ id }) => id === area.sheetId)?.name ?? "", ref: cellsOf(area), columns, hasTotals: showTotals }));
    return { tables, names: this.names, spill: (sheet, address) => this.spillFrom(sheet, address) };
  }

  private spillFrom(sheetName: string, address: string): string | undefined {
    const sheet = this.grid.api.getActiveWorkbook()?.getSheetByName(sheetName);
    if (!sheet) return undefined;
    const anchor = sheet.getRange(address);
    const area = this.store.spillOver(anchor.getRow(), anchor.getColumn(), sheet.getSheetId());
    if (area?.row === anchor.getRow() && area.column === anchor.getColumn()) return cellsOf(area);
    return anchor.getFormula() === "" ? undefined : address;
  }
}

/** The cells of an entry, which comes in one of three shapes, with their places. */
function entries(value: ISetRangeValuesCommandParams["value"], range: ISetRangeValuesCommandParams["range"]): { cell: ICellData; row: number; column: number }[] {
  const isMatrix = Array.isArray(value) || Object.keys(value).every((key) => /^\d+$/.test(key));
  const [top, left] = [range?.startRow ?? 0, range?.startColumn ?? 0];
  if (!isMatrix) return [{ cell: value, row: top, column: left }];
  const [row0, column0] = Array.isArray(value) ? [top, left] : [0, 0];
  return Object.entries(value as Matrix<Nullable<ICellData>>).flatMap(([row, columns]) =>
    Object.entries(columns).flatMap(([column, cell]) => (cell ? [{ cell, row: row0 + Number(row), column: column0 + Number(column) }] : [])));
}
