import { type LogGrid } from "../../src/index";
import { SheetProblem } from "../workbook";

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
    const part = sheet.getRangeByIndexes(first, left, Math.min(height, bottom - first + 1), width).load("values,numberFormat");
    const visible = part.getColumn(0).getVisibleView().load("cellAddresses");
    await context.sync();
    const shown = new Set((visible.cellAddresses as string[][]).map(([address = ""]) => Number(/\d+$/.exec(address)?.[0]) - 1));
    for (const row of rows) {
      if (row < first || row >= first + height || !shown.has(row)) continue;
      kept.push(row);
      cells.push(columns.map((column) => part.values[row - first]?.[column - left] as unknown));
      numberFormats.push(columns.map((column) => String(part.numberFormat[row - first]?.[column - left])));
    }
  }
  return { rows: kept, cells, numberFormats };
}
