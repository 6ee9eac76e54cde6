import { type LogGrid } from "../../src/index";
import { inExcel, SheetProblem } from "../workbook";
import { type Block, covered, overlap } from "./address";

/** Part of a sheet, as selected, with its way back: which row and column of the sheet each row and column of the grid is. */
export interface SheetSelection {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly grid: LogGrid;
  readonly rowNumbers: readonly number[];
  readonly columnNumbers: readonly number[];
  /** Rows of the selection that a filter or a person has hidden; they are not read. */
  readonly hiddenRows: number;
  /** Rows above the selection, read for the sake of the header only. */
  readonly headerRows: number;
  /** The Table it lies in. */
  readonly tableName: string | undefined;
  /** True when one cell was selected and the whole log around it was read. */
  readonly wholeLog: boolean;
}

/** Beyond this many cells the host takes seconds and may cut the answer short. */
const mostCells = 800_000;

/** How far above the selection, within its own block of cells, a header is looked for. */
const headerReach = 12;

/** Reads the selected rows of the log: several areas, whole columns, a Table, or one cell inside the log. */
export const readSelection = (): Promise<SheetSelection> =>
  inExcel(async (context) => {
    const areas = context.workbook.getSelectedRanges().areas.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount");
    const sheet = context.workbook.worksheets.getActiveWorksheet().load("id,name");
    const used = sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount");
    const epoch = context.workbook.functions.date(2000, 1, 1).load("value");
    await context.sync();
    if (used.isNullObject) throw new SheetProblem("empty");
    const first = areas.items[0];
    if (first === undefined) throw new SheetProblem("selection");
    const usedBlock = blockOf(used);
    const around = await surroundings(context, first);
    const selected = areas.items.map(blockOf);
    const isOneCell = selected.length === 1 && selected[0]?.rows === 1 && selected[0].columns === 1;
    const asked = isOneCell ? [around.block] : selected;
    const blocks = asked.flatMap((block) => overlap(block, usedBlock) ?? []);
    if (blocks.length === 0) throw new SheetProblem("empty");
    const rows = covered(blocks, "row");
    const columns = covered(blocks, "column");
    const headers = headerRowsAbove(rows[0] ?? 0, overlap(around.block, usedBlock) ?? usedBlock);
    const read = await cells(context, sheet, [...headers, ...rows], columns);
    return {
      sheetId: sheet.id,
      sheetName: sheet.name,
      grid: {
        cells: read.cells,
        numberFormats: read.numberFormats,
        date1904: epoch.value === 35_064,
        rowNumbers: read.rows,
        columnNumbers: columns,
      },
      rowNumbers: read.rows,
      columnNumbers: columns,
      hiddenRows: headers.length + rows.length - read.rows.length,
      headerRows: read.rows.filter((row) => row < (rows[0] ?? 0)).length,
      tableName: around.tableName,
      wholeLog: isOneCell,
    };
  });

const blockOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Block => ({
  row: rowIndex,
  column: columnIndex,
  rows: rowCount,
  columns: columnCount,
});

/** The Table that the selection begins in, or else the block of filled cells around it. */
async function surroundings(context: Excel.RequestContext, range: Excel.Range): Promise<{ block: Block; tableName: string | undefined }> {
  const tables = range.getTables(false).load("items/name");
  const region = range.getCell(0, 0).getSurroundingRegion().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const table = tables.items[0];
  if (table === undefined) return { block: blockOf(region), tableName: undefined };
  const whole = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  return { block: blockOf(whole), tableName: table.name };
}

/** The top rows of the block of cells that the selection lies in, where the selection begins below them. */
function headerRowsAbove(firstRow: number, around: Block): number[] {
  const reach = Math.min(headerReach, firstRow - around.row);
  return Array.from({ length: Math.max(0, reach) }, (_, place) => around.row + place);
}

interface ReadCells extends Required<Pick<LogGrid, "cells" | "numberFormats">> {
  readonly rows: readonly number[];
}

/** The cells where rows and columns cross, without the hidden rows. */
async function cells(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  rows: readonly number[],
  columns: readonly number[],
): Promise<ReadCells> {
  const [top = 0, left = 0] = [rows[0], columns[0]];
  const [height, width] = [(rows.at(-1) ?? top) - top + 1, (columns.at(-1) ?? left) - left + 1];
  if (height * width > mostCells) throw new SheetProblem("too large");
  const range = sheet.getRangeByIndexes(top, left, height, width).load("values,numberFormat");
  const visible = range.getColumn(0).getVisibleView().load("cellAddresses");
  await context.sync();
  const shown = new Set((visible.cellAddresses as string[][]).flat().map((address) => Number(/(\d+)$/.exec(address)?.[1]) - 1));
  const kept = rows.filter((row) => shown.has(row));
  const crossing = (matrix: readonly (readonly unknown[])[]): unknown[][] =>
    kept.map((row) => columns.map((column) => matrix[row - top]?.[column - left]));
  return { rows: kept, cells: crossing(range.values), numberFormats: crossing(range.numberFormat) as string[][] };
}
