import { CellValueType, type ICellData } from "@univerjs/core";
import { ErrorType } from "@univerjs/engine-formula";
import { cellRef, parseRange, rangeRef } from "hucre";
import type { Book, BookSheet, ComputedSheet } from "../book";
import type { CellValue } from "../host/functions-host";
import { circularFormulas } from "./circular";
import { withReason } from "./error-reasons";
import type { EngineAnswer } from "./univer-engine";
import { reasonOf } from "./univer-values";

export interface Answers {
  readonly sheets: readonly ComputedSheet[];
  /** Why a formula was refused although the engine has an answer, by sheet number and address: `0!B2`. */
  readonly refused: ReadonlyMap<string, string>;
}

type Area = ReturnType<typeof parseRange>;
const errors = new Set<string>(Object.values(ErrorType));
const readsItself = "it reads its own answer, directly or through other cells";

/** What the engine answered, as values by address; formulas refused in an earlier round stay refused. */
export function answersOf(book: Book, engine: EngineAnswer, refusedBefore: ReadonlyMap<string, string>): Answers {
  const refused = new Map(refusedBefore);
  for (const { sheet, row, column } of circularFormulas(engine.dependencies)) refused.set(keyOf(sheet, cellRef(row, column)), readsItself);
  const sheets = book.sheets.map((sheet, n) => {
    const values = new Map<string, CellValue>();
    const spills = new Map<string, string>();
    for (const { address, fixedTo } of formulasOf(sheet)) {
      const answered = areaOf(engine, n, address);
      const misfit = misfitOf(fixedTo, answered);
      if (misfit !== undefined && !refused.has(keyOf(n, address))) refused.set(keyOf(n, address), misfit);
      const reason = refused.get(keyOf(n, address));
      const filled = reason === undefined ? answered : parseRange(fixedTo ?? address);
      for (const [row, column] of cellsIn(filled)) {
        values.set(cellRef(row, column), reason === undefined ? valueOf(engine.cellAt(n, row, column)) : withReason("#VALUE!", reason));
      }
      if (filled.endRow > filled.startRow || filled.endCol > filled.startCol) spills.set(address, written(filled));
    }
    return { name: sheet.name, values, spills };
  });
  return { sheets, refused };
}

export function keyOf(sheet: number, address: string): string {
  return `${sheet}!${address}`;
}

function formulasOf(sheet: BookSheet): { address: string; fixedTo: string | undefined }[] {
  return [...sheet.cells].flatMap(([address, { formula, fixedTo }]) => (formula === undefined ? [] : [{ address, fixedTo }]));
}

function areaOf(engine: EngineAnswer, sheet: number, address: string): Area {
  const own = parseRange(address);
  const range = engine.spillFrom(sheet, own.startRow, own.startCol);
  const isBlocked = engine.cellAt(sheet, own.startRow, own.startCol)?.v === ErrorType.SPILL;
  return range === undefined || isBlocked ? own : { ...own, endRow: range.endRow, endCol: range.endColumn };
}

function misfitOf(fixedTo: string | undefined, answered: Area): string | undefined {
  if (fixedTo === undefined || written(parseRange(fixedTo)) === written(answered)) return undefined;
  return `it answers ${written(answered)}, but the file holds it to ${fixedTo}: enter the formula anew`;
}

function* cellsIn({ startRow, endRow, startCol, endCol }: Area): Generator<[number, number]> {
  for (let row = startRow; row <= endRow; row += 1) for (let column = startCol; column <= endCol; column += 1) yield [row, column];
}

function written({ startRow, startCol, endRow, endCol }: Area): string {
  return rangeRef(startRow, startCol, endRow, endCol);
}

/** A formula that reads a blank cell shows 0, as the host does. */
function valueOf(cell: ICellData | undefined): CellValue {
  if (cell === undefined) return withReason("#VALUE!", "the formula was not computed");
  const { v, t } = cell;
  if (v === null || v === undefined) return 0;
  if (t === CellValueType.BOOLEAN) return v === 1 || v === true;
  if (typeof v === "string" && errors.has(v)) return withReason(v, reasonOf(cell));
  return typeof v === "number" && !Number.isFinite(v) ? withReason("#NUM!", undefined) : v;
}
