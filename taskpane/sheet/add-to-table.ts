import { type ComputedColumn, formulaFor, type FormulaOptions } from "../formulas/computed-columns";
import { inThisRow, logCells } from "../formulas/log-cell";
import { type RootZone } from "../root-zone";
import { inExcel, SheetProblem } from "../workbook";
import { type Block, blockAddress } from "./address";
import { assertUnchanged, type Done, rangeOf, writableSheet, type WrittenCells } from "./done";
import { assertFree } from "./free-place";
import { leftOutInWords } from "./left-out";
import { assertNew, headerCells } from "./log-place";

/** The part of the host's interface that widens a Table without moving its neighbours. */
const resizeSet = "1.13";

/**
 * Widens the log's Table over the empty cells beside it and fills the new columns with structured references, so that the
 * Table carries them on into new rows. (Inserting columns would push aside what stands to the right of the Table.)
 */
export const addToTable = (zone: RootZone, columns: readonly ComputedColumn[], options: FormulaOptions): Promise<Done> =>
  inExcel(async (context) => {
    const { sheetId, sheetName, tableName = "" } = zone.selection;
    if (!Office.context.requirements.isSetSupported("ExcelApi", resizeSet)) throw new SheetProblem("not offered");
    const sheet = await writableSheet(context, sheetId);
    const table = context.workbook.tables.getItem(tableName);
    const whole = await tableBlock(context, table);
    assertNew(columns.map(({ header }) => header), await headerCells(context, sheet, whole), whole.row);
    const place = { ...whole, column: whole.column + whole.columns, columns: columns.length };
    await assertFree(context, sheet, place);
    const names = await columnNames(context, table);
    const cells = logCells(zone.reading.columns, (column) => {
      const name = names[(zone.selection.columnNumbers[column] ?? 0) - whole.column];
      if (name === undefined) throw new SheetProblem("selection", `Select cells of the Table ${tableName} only, then read the selection again.`);
      return inThisRow(tableName, name);
    });
    const written = await widen(context, { sheet, table, place, whole }, columns.map((column) => ({ column, formula: formulaFor(column, cells, options) })));
    return {
      words: `Put ${columns.map(({ header }) => header).join(", ")} into the Table ${tableName} on ${sheetName}, at ${blockAddress(place)}. New rows take them on.${leftOutInWords(zone)}`,
      takeBack: () => narrow({ sheetId, tableName, whole }, written),
    };
  });

async function tableBlock(context: Excel.RequestContext, table: Excel.Table): Promise<Block> {
  const range = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  return { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount };
}

async function columnNames(context: Excel.RequestContext, table: Excel.Table): Promise<string[]> {
  table.columns.load("items/name");
  await context.sync();
  return table.columns.items.map(({ name }) => name);
}

interface Widening {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly place: Block;
  readonly whole: Block;
}

async function widen(
  context: Excel.RequestContext, { sheet, table, place, whole }: Widening,
  columns: readonly { readonly column: ComputedColumn; readonly formula: string }[],
): Promise<WrittenCells> {
  table.resize(rangeOf(sheet, { ...whole, columns: whole.columns + place.columns }));
  rangeOf(sheet, { ...place, rows: 1 }).values = [columns.map(({ column }) => column.header)];
  const body = table.getDataBodyRange().load("rowCount");
  await context.sync();
  const filled = rangeOf(sheet, { ...place, row: place.row + 1, rows: body.rowCount });
  const line = <T>(each: (column: ComputedColumn, formula: string) => T): T[] => columns.map(({ column, formula }) => each(column, formula));
  filled.numberFormat = Array.from({ length: body.rowCount }, () => line(({ numberFormat }) => numberFormat));
  filled.formulas = Array.from({ length: body.rowCount }, () => line((_, formula) => formula));
  filled.format.autofitColumns();
  const all = rangeOf(sheet, place).load("formulas");
  await context.sync();
  return { block: place, before: [], after: all.formulas };
}

interface Narrowing {
  readonly sheetId: string;
  readonly tableName: string;
  readonly whole: Block;
}

/** Gives the Table its old width and empties the cells it leaves; refused once rows or columns were added. */
const narrow = ({ sheetId, tableName, whole }: Narrowing, written: WrittenCells): Promise<string> =>
  inExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    const table = context.workbook.tables.getItem(tableName);
    const now = await tableBlock(context, table);
    if (now.rows !== whole.rows || now.columns !== whole.columns + written.block.columns) throw new SheetProblem("changed");
    await assertUnchanged(context, sheet, [written]);
    table.resize(rangeOf(sheet, whole));
    rangeOf(sheet, written.block).clear("All");
    await context.sync();
    return `Taken back: the Table ${tableName} is as wide as before.`;
  });
