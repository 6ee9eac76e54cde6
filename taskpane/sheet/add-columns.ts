import { type ComputedColumn, type FormulaOptions } from "../formulas/computed-columns";
import { logCells } from "../formulas/log-cell";
import { computedAs, type NewColumn } from "../formulas/new-column";
import { type RootZone } from "../root-zone";
import { SheetProblem, writingInExcel } from "../workbook";
import { addToTable } from "./add-to-table";
import { type Block, blockAddress, cellAddress } from "./address";
import { type Done, takeBackCells, writableSheet } from "./done";
import { fillEmpty } from "./fill-empty";
import { assertFree } from "./free-place";
import { leftOutInWords } from "./left-out";
import { assertNew, headerCells, type LogPlace, logPlace, usedCorner } from "./log-place";
import { picksOf } from "./looks";

/** Puts computed columns beside a log: into its Table, or into empty columns to its right. */
export const addColumns = (
  zone: RootZone,
  columns: readonly ComputedColumn[],
  options: FormulaOptions,
): Promise<Done> => putColumns(zone, computedAs(columns, options));

/** Puts columns beside a log, computed ones or empty ones to be filled in. */
export const putColumns = (zone: RootZone, columns: readonly NewColumn[]): Promise<Done> =>
  zone.selection.tableName === undefined ? addBeside(zone, columns) : addToTable(zone, columns);

/** So many rows after the last one read have the pick lists too. */
const rowsAhead = 200;

/**
 * Formulas row by row, down to the last row that was read, in the columns after the log or after all that is filled.
 */
const addBeside = (zone: RootZone, columns: readonly NewColumn[]): Promise<Done> =>
  writingInExcel(async (context) => {
    const { sheetId, sheetName } = zone.selection;
    const sheet = await writableSheet(context, sheetId);
    const place = logPlace(zone);
    const corner = await usedCorner(context, sheet);
    const { headerRow: row, firstColumn: column } = place;
    const there = await headerCells(context, sheet, { row, column, rows: 1, columns: corner.column - column + 1 });
    assertNew(columns.map(({ header }) => header), there, row);
    const height = Math.max(corner.row, place.lastRow) - row + 1;
    const free = await freeColumn(
      context,
      sheet,
      { row, column: place.lastColumn + 1, rows: height, columns: columns.length },
      corner.column + 1,
    );
    const block = { row, column: free, rows: place.lastRow - row + 1, columns: columns.length };
    const formulas = formulasOf(zone, place, columns);
    const numberFormat = formulas.map((_, i) => columns.map((each) => (i === 0 ? "General" : each.numberFormat)));
    const written = await fillEmpty(context, sheet, [
      { block, formulas, numberFormat, boldTop: true, picks: picksOf(columns, rowsAhead) },
    ]);
    const names = columns.map(({ header }) => header).join(", ");
    return {
      words: `Put ${columns.length === 1 ? "one column" : `${columns.length} columns`} on ${sheetName} at ${blockAddress(block)}: ${names}.${leftOutInWords(zone)}`,
      takeBack: () => takeBackCells([{ sheetId, written }]),
    };
  });

/** The column right after the log when all its height is empty there, else the one after everything on the sheet. */
async function freeColumn(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  beside: Block,
  afterAll: number,
): Promise<number> {
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
  { selection, reading }: RootZone, { headerRow, lastRow, firstRow, skipped }: LogPlace, columns: readonly NewColumn[],
): string[][] {
  const rows = Array.from({ length: lastRow - headerRow }, (_, i) => headerRow + 1 + i);
  const lines = rows.map((row) => {
    const cells = logCells(reading.columns, (column) => cellAddress(row, selection.columnNumbers[column] ?? column));
    return columns.map((column) => (row < firstRow || skipped.has(row) ? "" : column.formula(cells)));
  });
  return [columns.map(({ header }) => header), ...lines];
}
