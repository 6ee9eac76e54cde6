import { type LogGrid, readLog } from "../../src/index";
import { rowsWords } from "../words/rows";
import { type Haste, inExcel, SheetProblem } from "../workbook";
import { type Block, covered, overlap } from "./address";
import { hiddenColumns, mostCells, type ReadCells, readCells } from "./read-cells";
import { blockOf, type SheetPlace } from "./selected-place";
import { isOneThing, surroundings, wholeLog } from "./whole-log";

/**
 * Part of a sheet, as selected, with its way back: which row and column of the sheet each row and column of the grid
 * is.
 */
export interface SheetSelection {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly grid: LogGrid;
  readonly rowNumbers: readonly number[];
  readonly columnNumbers: readonly number[];
  /** Rows of the selection that a filter or a person has hidden; they are not read. */
  readonly hiddenRows: number;
  /** Columns of the selection that are hidden, counted from 0 on the sheet; they are read all the same. */
  readonly hiddenColumns: readonly number[];
  /** Cells whose formula has not answered yet; they are read again when it has. */
  readonly waiting: number;
  /** Rows above the selection, read for the sake of the header only. */
  readonly headerRows: number;
  /** The Table it lies in. */
  readonly tableName: string | undefined;
  /** True when one cell was selected and the whole log around it was read. */
  readonly wholeLog: boolean;
}

/** How far above the selection, within its own block of cells, a header is looked for. */
const headerReach = 12;

/** Reads the rows of a place: several areas, whole columns, a Table, or the whole log around a single cell. */
export const readSelection = ({ sheetId, blocks: asked }: SheetPlace, options?: Haste): Promise<SheetSelection> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId).load("id,name");
    const used = sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount");
    const epoch = context.workbook.functions.date(2000, 1, 1).load("value");
    await context.sync();
    const [first] = asked;
    if (first === undefined) throw new SheetProblem("empty");
    if (used.isNullObject) throw new SheetProblem("empty", rowsWords.emptySheet(sheet.name));
    const usedBlock = blockOf(used);
    const around = await surroundings(context, sheet, first);
    const isOneCell = asked.length === 1 && (await isOneThing(context, sheet, first, usedBlock));
    const blocks = isOneCell
      ? [wholeLog(around.block, usedBlock)]
      : asked.flatMap((block) => overlap(block, usedBlock) ?? []);
    if (blocks.length === 0) throw new SheetProblem("empty");
    if (!(cellCount(blocks) <= mostCells))
      throw new SheetProblem("too large", rowsWords.tooLarge(cellCount(blocks), mostCells));
    const rows = covered(blocks, "row");
    const columns = covered(blocks, "column");
    const headers = headerRowsAbove(rows[0] ?? 0, overlap(around.block, usedBlock) ?? usedBlock);
    const all = await readCells(context, sheet, { rows: [...headers, ...rows], columns });
    const read = withoutReadingsAbove(all, rows[0] ?? 0);
    const hidden = await hiddenColumns(context, sheet, columns);
    const hiddenRows = headers.length + rows.length - all.rows.length;
    return {
      sheetId: sheet.id,
      sheetName: sheet.name,
      grid: { ...gridOf(read, columns, hidden), date1904: epoch.value === 35_064, hiddenRows },
      rowNumbers: read.rows,
      columnNumbers: columns,
      hiddenRows,
      hiddenColumns: hidden,
      waiting: read.cells.reduce((sum, line) => sum + line.filter((cell) => unanswered.has(cell)).length, 0),
      headerRows: read.rows.filter((row) => row < (rows[0] ?? 0)).length,
      tableName: around.tableName,
      wholeLog: isOneCell,
    };
  }, options);

/** The cells read, with their places on the sheet; `hidden` are columns of the sheet. */
const gridOf = (
  { cells, numberFormats, rows }: ReadCells,
  columns: readonly number[],
  hidden: readonly number[],
): LogGrid => ({
  cells,
  numberFormats,
  rowNumbers: rows,
  columnNumbers: columns,
  hiddenColumns: hidden.map((column) => columns.indexOf(column)),
});

/** What a cell shows while its function has not answered. */
const unanswered: ReadonlySet<unknown> = new Set(["#BUSY!", "#GETTING_DATA"]);

const cellCount = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, { rows, columns }) => sum + rows * columns, 0);

/** Of what stands above the selection only the header rows: the readings there were not selected. */
function withoutReadingsAbove(read: ReadCells, firstRow: number): ReadCells {
  const above = read.rows.findIndex((row) => row >= firstRow);
  if (above <= 0) return read;
  const headers = new Set(readLog({ cells: read.cells.slice(0, above + headerReach) }).headerRows);
  const keep = (_: unknown, place: number): boolean => place >= above || headers.has(place);
  return {
    rows: read.rows.filter(keep),
    cells: read.cells.filter(keep),
    numberFormats: read.numberFormats.filter(keep),
  };
}

/** The top rows of the block of cells that the selection lies in, where the selection begins below them. */
function headerRowsAbove(firstRow: number, around: Block): number[] {
  const reach = Math.min(headerReach, firstRow - around.row);
  return Array.from({ length: Math.max(0, reach) }, (_, place) => around.row + place);
}
