import { cellRef, parseRange } from "hucre";
import type { Book, BookCell, BookSheet, ComputedSheet } from "../book";
import type { CellValue, ErrorValue } from "../host/functions-host";
import { type Area, isMany, keyOf, meet, written } from "./areas";
import { circularFormulas } from "./circular";
import type { EngineAnswer } from "./engine-sheet";
import { withReason } from "./error-reasons";

export interface Answers {
  readonly sheets: readonly ComputedSheet[];
  /** Why a formula was refused although the engine has an answer, by sheet number and address: `0!B2`. */
  readonly refused: ReadonlyMap<string, ErrorValue>;
}

const readsItself = withReason("#VALUE!", "it reads its own answer, directly or through other cells");

/** What the engine answered, as values by address; formulas refused in an earlier round stay refused. */
export function answersOf(book: Book, engine: EngineAnswer, refusedBefore: Answers["refused"]): Answers {
  const refused = new Map(refusedBefore);
  for (const { sheet, row, column } of circularFormulas(engine.dependencies)) refused.set(keyOf(sheet, cellRef(row, column)), readsItself);
  const sheets = book.sheets.map((sheet, n) => {
    const values = new Map<string, CellValue>();
    const spills = new Map<string, string>();
    for (const [address, { formula, fixedTo }] of sheet.cells) {
      if (formula === undefined) continue;
      const answered = areaOf(engine, n, address);
      const refusal = refused.get(keyOf(n, address)) ?? refusalOf(sheet, address, answered, values);
      if (refusal !== undefined) refused.set(keyOf(n, address), refusal);
      const filled = refusal === undefined ? answered : parseRange(fixedTo ?? address);
      for (const { row, column, name } of cellsIn(filled)) values.set(name, refusal ?? engine.valueAt(n, row, column));
      if (isMany(filled)) spills.set(address, written(filled));
    }
    return { name: sheet.name, values, spills };
  });
  return { sheets, refused };
}

function areaOf(engine: EngineAnswer, sheet: number, address: string): Area {
  const own = parseRange(address);
  return engine.spillFrom(sheet, own.startRow, own.startCol) ?? own;
}

/** The host's rules for where an answer of many cells may go, checked anew: no filled cell, nor another answer, is written over. */
function refusalOf(
  sheet: BookSheet,
  address: string,
  answered: Area,
  earlier: ReadonlyMap<string, CellValue>,
): ErrorValue | undefined {
  const fixedTo = sheet.cells.get(address)?.fixedTo;
  if (fixedTo !== undefined && written(parseRange(fixedTo)) !== written(answered)) {
    return withReason("#VALUE!", `it answers ${written(answered)}, but the file holds it to ${fixedTo}: enter the formula anew`);
  }
  if (!isMany(answered)) return undefined;
  if (sheet.tables.some(({ ref }) => meet(parseRange(ref), answered))) {
    return withReason("#SPILL!", "it answers more than one cell, which a table cannot take: enter it outside the table");
  }
  const filled = [...cellsIn(answered)].find(({ name }) => name !== address && (isFilled(sheet.cells.get(name)) || earlier.has(name)));
  return filled === undefined ? undefined : withReason("#SPILL!", `its answer fills ${written(answered)}, but ${filled.name} is not empty`);
}

/** A cell with nothing but a number format is empty. */
const isFilled = (cell: BookCell | undefined): boolean => cell?.value !== undefined || cell?.formula !== undefined;

function* cellsIn({ startRow, endRow, startCol, endCol }: Area): Generator<{ row: number; column: number; name: string }> {
  for (let row = startRow; row <= endRow; row += 1) {
    for (let column = startCol; column <= endCol; column += 1) yield { row, column, name: cellRef(row, column) };
  }
}
