import { type LogGrid } from "../../src/index";
import { SheetProblem } from "../workbook";
import { rowsWords } from "../words/rows";
import { type Block, rangeOf } from "./address";

export interface ReadCells extends Required<Pick<LogGrid, "cells" | "numberFormats">> {
  readonly rows: readonly number[];
}

/** Beyond this many cells nobody reads a log, and the host would be busy for a long while. */
export const mostCells = 1_000_000;

/** So many cells are asked for at a time: far below what one answer of the host may hold (about 5 MB on the web). */
const cellsAtATime = 100_000;

/**
 * The cells where rows and columns cross, without the hidden rows; long logs in parts, so that the host can do other
 * work between them.
 */
export async function readCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { rows, columns }: { readonly rows: readonly number[]; readonly columns: readonly number[] },
): Promise<ReadCells> {
  const [left = 0, right = left] = [columns[0], columns.at(-1)];
  const width = right - left + 1;
  const [top = 0, bottom = top] = [rows[0], rows.at(-1)];
  const kept: number[] = [];
  const cells: unknown[][] = [];
  const numberFormats: string[][] = [];
  const height = Math.max(1, Math.floor(cellsAtATime / width));
  const parts = [...new Set(rows.map((row) => Math.floor((row - top) / height)))];
  if (!(rows.length * width <= mostCells && parts.length * height * width <= mostCells + 2 * cellsAtATime)) {
    throw new SheetProblem("too large", rowsWords.tooLarge((bottom - top + 1) * width, mostCells));
  }
  for (const part of parts) {
    const first = top + part * height;
    const block = { row: first, column: left, rows: Math.min(height, bottom - first + 1), columns: width };
    const range = rangeOf(sheet, block).load("values,numberFormat,rowHidden");
    await context.sync();
    const hidden = await hiddenRows(context, sheet, block, range.rowHidden);
    for (const row of rows) {
      if (row < first || row >= first + height || hidden.has(row - first)) continue;
      kept.push(row);
      cells.push(columns.map((column) => range.values[row - first]?.[column - left] as unknown));
      numberFormats.push(columns.map((column) => String(range.numberFormat[row - first]?.[column - left])));
    }
  }
  return { rows: kept, cells, numberFormats };
}

/**
 * Which rows of a block, counted from its first, a filter or a person has hidden. The host tells for all rows at once,
 * or `null` where they differ: then each half is asked, and so on.
 */
async function hiddenRows(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  block: Block,
  all: boolean | null,
): Promise<ReadonlySet<number>> {
  const hidden = new Set<number>();
  let open: { readonly block: Block; readonly isHidden: boolean | null }[] = [{ block, isHidden: all }];
  while (open.length > 0) {
    for (const part of open)
      if (part.isHidden === true)
        for (let i = 0; i < part.block.rows; i += 1) hidden.add(part.block.row + i - block.row);
    const asked = open
      .filter(({ isHidden }) => isHidden === null)
      .flatMap((part) => halves(part.block))
      .map((half) => ({ block: half, range: rangeOf(sheet, half).load("rowHidden") }));
    if (asked.length > 0) await context.sync();
    open = asked.map(({ block: half, range }) => ({ block: half, isHidden: range.rowHidden }));
  }
  return hidden;
}

function halves(block: Block): Block[] {
  const upper = Math.ceil(block.rows / 2);
  return [
    { ...block, rows: upper },
    { ...block, row: block.row + upper, rows: block.rows - upper },
  ].filter(({ rows }) => rows > 0);
}

/** The columns among those given that are hidden on the sheet: they are read, and the person is told. */
export async function hiddenColumns(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  columns: readonly number[],
): Promise<number[]> {
  const asked = columns.map((column) => ({
    column,
    range: sheet.getRangeByIndexes(0, column, 1, 1).load("columnHidden"),
  }));
  await context.sync();
  return asked.filter(({ range }) => range.columnHidden).map(({ column }) => column);
}
