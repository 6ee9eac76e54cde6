import { type ComputedColumn, formulaFor, type FormulaOptions } from "../formulas/computed-columns";
import { logCells } from "../formulas/log-cell";
import { type RootZone } from "../root-zone";
import { inExcel, SheetProblem } from "../workbook";
import { addToTable } from "./add-to-table";
import { type Block, blockAddress, cellAddress } from "./address";
import { assertUnchanged, type Done, rangeOf, writableSheet, type WrittenCells } from "./done";
import { assertFree } from "./free-place";
import { leftOutInWords } from "./left-out";
import { assertNew, headerCells, type LogPlace, logPlace, usedCorner } from "./log-place";

/** Puts computed columns beside a log: into its Table, or into empty columns to its right. */
export const addColumns = (zone: RootZone, columns: readonly ComputedColumn[], options: FormulaOptions): Promise<Done> =>
  zone.selection.tableName === undefined ? addBeside(zone, columns, options) : addToTable(zone, columns, options);

/** Formulas row by row, down to the last row that was read, in the columns after the log or after all that is filled. */
const addBeside = (zone: RootZone, columns: readonly ComputedColumn[], options: FormulaOptions): Promise<Done> =>
  inExcel(async (context) => {
    const { sheetId, sheetName } = zone.selection;
    const sheet = await writableSheet(context, sheetId);
    const place = logPlace(zone);
    const corner = await usedCorner(context, sheet);
    const { headerRow: row, firstColumn: column } = place;
    const there = await headerCells(context, sheet, { row, column, rows: 1, columns: corner.column - column + 1 });
    assertNew(columns.map(({ header }) => header), there, row);
    const height = Math.max(corner.row, place.lastRow) - row + 1;
    const free = await freeColumn(context, sheet, { row, column: place.lastColumn + 1, rows: height, columns: columns.length }, corner.column + 1);
    const block = { row, column: free, rows: place.lastRow - row + 1, columns: columns.length };
    const written = await write(context, sheet, { block, columns, formulas: formulasOf(zone, place, { columns, options }) });
    const names = columns.map(({ header }) => header).join(", ");
    return {
      words: `Put ${columns.length === 1 ? "one column" : `${columns.length} columns`} on ${sheetName} at ${blockAddress(block)}: ${names}.${leftOutInWords(zone)}`,
      takeBack: () => takeBack(sheetId, written),
    };
  });

/** The column right after the log when all its height is empty there, else the one after everything on the sheet. */
async function freeColumn(context: Excel.RequestContext, sheet: Excel.Worksheet, beside: Block, afterAll: number): Promise<number> {
  try {
    await assertFree(context, sheet, beside);
    return beside.column;
  } catch (problem) {
    if (!(problem instanceof SheetProblem) || problem.kind !== "filled") throw problem;
    await assertFree(context, sheet, { ...beside, column: afterAll });
    return afterAll;
  }
}

/** Header row and every row of the log, a matrix as the host takes it; rows that are no readings stay empty. */
function formulasOf(
  { selection, reading }: RootZone, { headerRow, lastRow, firstRow, skipped }: LogPlace,
  { columns, options }: { readonly columns: readonly ComputedColumn[]; readonly options: FormulaOptions },
): string[][] {
  const rows = Array.from({ length: lastRow - headerRow }, (_, i) => headerRow + 1 + i);
  const lines = rows.map((row) => {
    const cells = logCells(reading.columns, (column) => cellAddress(row, selection.columnNumbers[column] ?? column));
    return columns.map((column) => (row < firstRow || skipped.has(row) ? "" : formulaFor(column, cells, options)));
  });
  return [columns.map(({ header }) => header), ...lines];
}

interface Writing {
  readonly block: Block;
  readonly columns: readonly ComputedColumn[];
  readonly formulas: string[][];
}

async function write(context: Excel.RequestContext, sheet: Excel.Worksheet, { block, columns, formulas }: Writing): Promise<WrittenCells> {
  const range = rangeOf(sheet, block);
  range.numberFormat = formulas.map((_, i) => columns.map(({ numberFormat }) => (i === 0 ? "General" : numberFormat)));
  range.formulas = formulas;
  const header = rangeOf(sheet, { ...block, rows: 1 });
  header.format.font.bold = true;
  range.format.autofitColumns();
  range.load("formulas");
  await context.sync();
  return { block, before: formulas.map((line) => line.map(() => "")), after: range.formulas };
}

const takeBack = (sheetId: string, written: WrittenCells): Promise<string> =>
  inExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    await assertUnchanged(context, sheet, [written]);
    rangeOf(sheet, written.block).clear("All");
    await context.sync();
    return `Taken back: ${blockAddress(written.block)} of ${sheet.name} is empty again.`;
  });
