import { type Block, rangeOf } from "./address";


/** Beyond this many cells a sheet is read in parts, so that the host's limit on one answer is never reached. */
const cellsARead = 200_000;

/** One formula and what its cell shows. */
export interface FormulaCell {
  readonly row: number;
  readonly column: number;
  readonly formula: string;
  readonly shows: unknown;
}

/** The formulas of one sheet that were asked for. */
export interface SheetFormulas {
  readonly sheet: Excel.Worksheet;
  readonly isProtected: boolean;
  readonly cells: readonly FormulaCell[];
}

/** Every formula of the workbook that `isWanted`, by sheet; sheets without one are left out. */
export async function formulasOfWorkbook(
  context: Excel.RequestContext, isWanted: (formula: string, shows: unknown) => boolean,
): Promise<SheetFormulas[]> {
  const sheets = context.workbook.worksheets.load("items/id,items/name");
  await context.sync();
  const found: SheetFormulas[] = [];
  for (const sheet of sheets.items) {
    const used = sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount");
    sheet.protection.load("protected");
    await context.sync();
    if (used.isNullObject) continue;
    const whole = { row: used.rowIndex, column: used.columnIndex, rows: used.rowCount, columns: used.columnCount };
    const cells: FormulaCell[] = [];
    for (const part of parts(whole))
      cells.push(...(await formulasIn(context, sheet, part)).filter(({ formula, shows }) => isWanted(formula, shows)));
    if (cells.length > 0) found.push({ sheet, isProtected: sheet.protection.protected, cells });
  }
  return found;
}

function parts({ row, column, rows, columns }: Block): Block[] {
  const height = Math.max(1, Math.floor(cellsARead / columns));
  return Array.from({ length: Math.ceil(rows / height) }, (_, i) => ({
    row: row + i * height, column, rows: Math.min(height, rows - i * height), columns,
  }));
}

async function formulasIn(context: Excel.RequestContext, sheet: Excel.Worksheet, part: Block): Promise<FormulaCell[]> {
  const range = rangeOf(sheet, part).load("formulas,values");
  await context.sync();
  const formulas = range.formulas as unknown[][];
  return formulas.flatMap((line, i) =>
    line.flatMap((formula, j) => {
      if (typeof formula !== "string" || !formula.startsWith("=")) return [];
      return [{ row: part.row + i, column: part.column + j, formula, shows: (range.values as unknown[][])[i]?.[j] }];
    }));
}

/** Cells that stand under one another as blocks of one column, so that a filled column is one write. */
export function inBlocks<Cell extends { readonly row: number; readonly column: number }>(
  cells: readonly Cell[],
): { readonly block: Block; readonly cells: readonly Cell[] }[] {
  const sorted = [...cells].sort((a, b) => a.column - b.column || a.row - b.row);
  const blocks: { block: Block; cells: Cell[] }[] = [];
  for (const cell of sorted) {
    const last = blocks.at(-1);
    if (last?.block.column === cell.column && last.block.row + last.block.rows === cell.row) {
      last.block = { ...last.block, rows: last.block.rows + 1 };
      last.cells.push(cell);
    } else blocks.push({ block: { row: cell.row, column: cell.column, rows: 1, columns: 1 }, cells: [cell] });
  }
  return blocks;
}
