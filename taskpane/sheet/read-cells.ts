import { type LogGrid } from "../../src/index";
import { SheetProblem } from "../workbook";
import { rangeOf } from "./address";


export interface ReadCells extends Required<Pick<LogGrid, "cells" | "numberFormats">> {
  readonly rows: readonly number[];
}

/** Beyond this many cells nobody reads a log, and the host would be busy for a long while. */
export const mostCells = 1_000_000;

/** So many cells are asked for at a time: far below what one answer of the host may hold (about 5 MB on the web). */
const cellsAtATime = 100_000;

/** The cells where rows and columns cross, without the hidden rows; long logs in parts, so that the host can do other work between them. */
export async function readCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { rows, columns }: { readonly rows: readonly number[]; readonly columns: readonly number[] },
): Promise<ReadCells> {
  const [left = 0, right = left] = [columns[0], columns.at(-1)];
  const width = right - left + 1;
  const [top = 0, bottom = top] = [rows[0], rows.at(-1)];
  if (!((bottom - top + 1) * width <= mostCells)) throw new SheetProblem("too large");
  const kept: number[] = [];
  const cells: unknown[][] = [];
  const numberFormats: string[][] = [];
  const height = Math.max(1, Math.floor(cellsAtATime / width));
  for (let first = top; first <= bottom; first += height) {
    const block = { row: first, column: left, rows: Math.min(height, bottom - first + 1), columns: width };
    const part = rangeOf(sheet, block).load("values,numberFormat,rowHidden");
    await context.sync();
    const isHidden = await hiddenRows(context, part);
    for (const row of rows) {
      if (row < first || row >= first + height || isHidden(row - first)) continue;
      kept.push(row);
      cells.push(columns.map((column) => part.values[row - first]?.[column - left] as unknown));
      numberFormats.push(columns.map((column) => String(part.numberFormat[row - first]?.[column - left])));
    }
  }
  return { rows: kept, cells, numberFormats };
}

/** Which rows of a range a filter or a person has hidden; the host tells for all at once, or `null` where they differ. */
async function hiddenRows(context: Excel.RequestContext, range: Excel.Range): Promise<(row: number) => boolean> {
  const all = range.rowHidden as boolean | null;
  if (all !== null) return () => all;
  const each = range.getRowProperties({ rowHidden: true });
  await context.sync();
  return (row) => each.value[row]?.rowHidden === true;
}

/** The columns among those given that are hidden on the sheet: they are read, and the person is told. */
export async function hiddenColumns(context: Excel.RequestContext, sheet: Excel.Worksheet, columns: readonly number[]): Promise<number[]> {
  const asked = columns.map((column) => ({ column, range: sheet.getRangeByIndexes(0, column, 1, 1).load("columnHidden") }));
  await context.sync();
  return asked.filter(({ range }) => range.columnHidden).map(({ column }) => column);
}
