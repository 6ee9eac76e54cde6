import { CellValueType, LocaleType, LogLevel, Univer, UniverInstanceType, type ICellData, type IRange, type IWorkbookData } from "@univerjs/core";
import {
  ErrorType,
  ErrorValueObject,
  FormulaDataModel,
  ICalculateFormulaService,
  IDefinedNamesService,
  IFunctionService,
  UniverFormulaEnginePlugin,
  type BaseFunction,
  type IAllRuntimeData,
} from "@univerjs/engine-formula";
import { firstValueFrom } from "rxjs";
import type { CellValue } from "../host/functions-host";
import type { UniverFunction } from "./univer-functions";

/** Everything that Univer's engine is asked and answers, in plain words; rows and columns count from 0. */
export interface EngineCell {
  readonly address: string;
  readonly row: number;
  readonly column: number;
  readonly value?: CellValue | undefined;
  /** In the engine's own dialect: no structured references, no `B2#`. */
  readonly formula?: string;
}
export interface EngineSheet {
  readonly name: string;
  readonly cells: readonly EngineCell[];
}
export interface EngineName {
  readonly name: string;
  readonly refersTo: string;
}
export interface Dependencies {
  readonly formula: number;
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  /** The numbers of the formulas it reads from. */
  readonly readsFrom: readonly number[];
}
export interface EngineAnswer {
  /** The computed cell, by the sheet's place in the book. */
  readonly cellAt: (sheet: number, row: number, column: number) => ICellData | undefined;
  /** The range that the formula in a cell spills into. */
  readonly spillFrom: (sheet: number, row: number, column: number) => IRange | undefined;
  /** What each formula reads from. */
  readonly dependencies: readonly Dependencies[];
}

const unit = "book";
const idOf = (sheet: number | ""): string => `sheet${sheet}`;
/** Free rows and columns around what is filled, for spills; the host's full million rows would make `A:A` slow. */
const room = { rows: 20_000, columns: 200 };

export async function runEngine(
  sheets: readonly EngineSheet[],
  names: readonly EngineName[],
  functions: readonly UniverFunction[],
): Promise<EngineAnswer> {
  const univer = new Univer({ locale: LocaleType.EN_US, locales: { [LocaleType.EN_US]: {} }, logLevel: LogLevel.SILENT });
  try {
    univer.registerPlugin(UniverFormulaEnginePlugin, { function: functions.map(({ functionClass, name }) => [functionClass, name] as [typeof functionClass, string]) });
    univer.createUnit(UniverInstanceType.UNIVER_SHEET, workbookData(sheets));
    const definedNames = univer.__getInjector().get(IDefinedNamesService);
    for (const [id, { name, refersTo }] of names.entries()) {
      definedNames.registerDefinedName(unit, { id: `name${id}`, name, formulaOrRefString: refersTo });
    }
    for (const each of univer.__getInjector().get(IFunctionService).getExecutors().values()) contain(each);
    return await calculated(univer);
  } finally {
    univer.dispose();
  }
}

/** One function of the engine that throws would otherwise end the whole calculation. */
function contain(executor: BaseFunction): void {
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...args) => {
    try {
      return calculate(...args);
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
}

async function calculated(univer: Univer): Promise<EngineAnswer> {
  const injector = univer.__getInjector();
  const service = injector.get(ICalculateFormulaService);
  const everything = {
    formulaData: injector.get(FormulaDataModel).getFormulaData(),
    arrayFormulaCellData: {},
    arrayFormulaRange: {},
    forceCalculate: true,
    dirtyRanges: [],
    dirtyNameMap: {},
    dirtyDefinedNameMap: {},
    dirtyUnitFeatureMap: {},
    dirtyUnitOtherFormulaMap: {},
    isCalculateTreeModel: true,
  };
  const done = firstValueFrom(service.executionCompleteListener$);
  await service.execute(everything);
  return answer(await done);
}

function answer(data: IAllRuntimeData): EngineAnswer {
  return {
    cellAt: (sheet, row, column) =>
      data.arrayFormulaCellData[unit]?.[idOf(sheet)]?.getValue(row, column) ?? data.unitData[unit]?.[idOf(sheet)]?.getValue(row, column) ?? undefined,
    spillFrom: (sheet, row, column) => data.arrayFormulaRange[unit]?.[idOf(sheet)]?.[row]?.[column],
    dependencies: data.dependencyTreeModelData.map(({ treeId: formula, subUnitId, row, column, children: readsFrom }) => ({
      formula,
      sheet: Number(subUnitId.slice(idOf("").length)),
      row,
      column,
      readsFrom,
    })),
  };
}

function workbookData(sheets: readonly EngineSheet[]): Partial<IWorkbookData> {
  const entries = sheets.map(({ name, cells }, n) => {
    const cellData: Record<number, Record<number, ICellData>> = {};
    for (const cell of cells) (cellData[cell.row] ??= {})[cell.column] = cellDataOf(cell);
    const rowCount = room.rows + cells.reduce((most, { row }) => Math.max(most, row), 0);
    const columnCount = room.columns + cells.reduce((most, { column }) => Math.max(most, column), 0);
    return [idOf(n), { id: idOf(n), name, rowCount, columnCount, cellData }] as const;
  });
  return { id: unit, name: unit, sheetOrder: entries.map(([id]) => id), sheets: Object.fromEntries(entries) };
}

function cellDataOf({ value, formula }: EngineCell): ICellData {
  if (formula !== undefined) return { f: `=${formula}` };
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: typeof value === "object" ? value.error : (value ?? ""), t: CellValueType.STRING };
}
