import { type RootZone } from "../root-zone";
import { SheetProblem } from "../workbook";

import { type Block, cellAddress, rangeOf } from "./address";

/** Where a log stands on its sheet; rows and columns counted from 0. */
export interface LogPlace {
  readonly headerRow: number;
  /** The first and the last row that the log reader took readings from. */
  readonly firstRow: number;
  readonly lastRow: number;
  readonly firstColumn: number;
  readonly lastColumn: number;
  /** Rows in between that are no readings: totals, headers repeated. */
  readonly skipped: ReadonlySet<number>;
}

/** @throws {SheetProblem} `selection` when no row was read or nothing stands above the first one */
export function logPlace({ selection, reading }: RootZone): LogPlace {
  const { rowNumbers, columnNumbers } = selection;
  const onSheet = (row: number): number => rowNumbers[row] ?? row;
  const rows = reading.rows.map(({ row }) => onSheet(row));
  const [firstRow, lastRow] = [Math.min(...rows), Math.max(...rows)];
  const header = reading.headerRows.at(-1);
  const headerRow = header === undefined ? firstRow - 1 : onSheet(header);
  if (rows.length === 0)
    throw new SheetProblem(
      "selection",
      "No row of readings was found in the selection, so that there is nothing to work on.",
    );
  if (headerRow < 0)
    throw new SheetProblem(
      "selection",
      "There is no row above the readings for headers. Insert one, then read the selection again.",
    );
  return {
    headerRow,
    firstRow,
    lastRow,
    firstColumn: columnNumbers[0] ?? 0,
    lastColumn: columnNumbers.at(-1) ?? 0,
    skipped: new Set(reading.setAside.map(({ row }) => onSheet(row))),
  };
}

/** The last row and column that anything stands in, values and formats. */
export async function usedCorner(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
): Promise<{ readonly row: number; readonly column: number }> {
  const used = sheet.getUsedRangeOrNullObject(false).load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  if (used.isNullObject) throw new SheetProblem("empty");
  return { row: used.rowIndex + used.rowCount - 1, column: used.columnIndex + used.columnCount - 1 };
}

/** A text of the header row and its column on the sheet. */
export interface HeaderCell {
  readonly text: string;
  readonly column: number;
}

/** What stands in the header row, from the log's first column to the last used one. */
export async function headerCells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  place: Block,
): Promise<HeaderCell[]> {
  const row = rangeOf(sheet, { ...place, rows: 1 }).load("values");
  await context.sync();
  return (row.values[0] ?? []).map((value, i) => ({ text: String(value), column: place.column + i }));
}

/** @throws {SheetProblem} `filled` when a header of ours is there already */
export function assertNew(headers: readonly string[], there: readonly HeaderCell[], row: number): void {
  const same = there.find(({ text }) => headers.some((header) => header.toLowerCase() === text.trim().toLowerCase()));
  if (same === undefined) return;
  throw new SheetProblem(
    "filled",
    `There is a column "${same.text}" already, at ${cellAddress(row, same.column)}. Nothing was written.`,
  );
}
