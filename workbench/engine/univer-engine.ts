import { CellValueType, LocaleType, LogLevel, Univer, UniverInstanceType, type ICellData, type IWorkbookData } from "@univerjs/core";
import {
  ArrayValueObject,
  BaseReferenceObject,
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
import type { EngineAnswer, EngineName, EngineSheet } from "./engine-sheet";
import { withReason } from "./error-reasons";
import { mostNamedCells, tooManyCells } from "./reach";
import type { UniverFunction } from "./univer-functions";
import { cellData, reasonOf } from "./univer-values";

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

/**
 * One function of the engine that throws would otherwise end the whole calculation; one that is given, or answers, millions of
 * cells would keep it busy for minutes. What a formula comes to ask for is only known here: OFFSET and INDIRECT make ranges.
 */
function contain(executor: BaseFunction): void {
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...args) => {
    try {
      if (isTooLarge(args)) return tooLarge();
      const answer = calculate(...args);
      return isTooLarge([answer]) ? tooLarge() : answer;
    } catch {
      return ErrorValueObject.create(ErrorType.VALUE);
    }
  };
}

const tooLarge = (): ErrorValueObject => new ErrorValueObject(ErrorType.VALUE).withCustomData({ reason: tooManyCells });

/** A column beside a row makes a table of both. */
function isTooLarge(values: ReturnType<BaseFunction["calculate"]>[]): boolean {
  let [rows, columns] = [1, 1];
  for (const value of values) {
    if (!(value instanceof ArrayValueObject || value instanceof BaseReferenceObject)) continue;
    rows = Math.max(rows, value.getRowCount());
    columns = Math.max(columns, value.getColumnCount());
  }
  return rows * columns > 2 * mostNamedCells;
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
    valueAt: (sheet, row, column) => {
      const spilled = data.arrayFormulaCellData[unit]?.[idOf(sheet)]?.getValue(row, column);
      return valueOf(spilled ?? data.unitData[unit]?.[idOf(sheet)]?.getValue(row, column) ?? undefined);
    },
    spillFrom: (sheet, row, column) => {
      const range = data.arrayFormulaRange[unit]?.[idOf(sheet)]?.[row]?.[column];
      return range && { startRow: row, startCol: column, endRow: range.endRow, endCol: range.endColumn };
    },
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
    const rows: Record<number, Record<number, ICellData>> = {};
    for (const { row, column, value, formula } of cells) {
      (rows[row] ??= {})[column] = formula === undefined ? cellData(value) : { f: `=${formula}` };
    }
    const rowCount = room.rows + cells.reduce((most, { row }) => Math.max(most, row), 0);
    const columnCount = room.columns + cells.reduce((most, { column }) => Math.max(most, column), 0);
    return [idOf(n), { id: idOf(n), name, rowCount, columnCount, cellData: rows }] as const;
  });
  return { id: unit, name: unit, sheetOrder: entries.map(([id]) => id), sheets: Object.fromEntries(entries) };
}

const errors = new Set<string>(Object.values(ErrorType));

/** A formula that reads a blank cell shows 0, as the host does. */
function valueOf(cell: ICellData | undefined): CellValue {
  if (cell === undefined) return withReason("#VALUE!", "the formula was not computed");
  const { v, t } = cell;
  if (v === null || v === undefined) return 0;
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true;
  if (typeof v === "string" && errors.has(v)) return withReason(v, reasonOf(cell));
  return typeof v === "number" && !Number.isFinite(v) ? withReason("#NUM!", undefined) : v;
}
