import { inThisRow, logCells } from "../formulas/log-cell";
import { type NewColumn } from "../formulas/new-column";
import { type RootZone } from "../root-zone";
import { offers, SheetProblem, writingInExcel } from "../workbook";
import { type Block, blockAddress, rangeOf } from "./address";
import { asBefore, asKnown, assertUnchanged, asWritten, type Done, writableSheet, type WrittenCells } from "./done";
import { fillEmpty } from "./fill-empty";
import { assertFree } from "./free-place";
import { leftOutInWords } from "./left-out";
import { assertNew, headerCells } from "./log-place";
import { picksOf } from "./looks";
import { type Stood, keepTyped, stoodIn } from "./typed-meanwhile";
import { wholly } from "./wholly";

/** The part of the host's interface that widens a Table without moving its neighbours. */
const resizeSet = "1.13";

/**
 * Widens the log's Table over the empty cells beside it and fills the new columns with structured references, so that
 * the Table carries them on into new rows. (Inserting columns would push aside what stands to the right of the Table.)
 */
export const addToTable = (zone: RootZone, columns: readonly NewColumn[]): Promise<Done> =>
  writingInExcel(async (context) => {
    const { sheetId, sheetName, tableName = "" } = zone.selection;
    if (!offers(resizeSet)) throw new SheetProblem("not offered");
    const sheet = await writableSheet(context, sheetId);
    const table = context.workbook.tables.getItem(tableName);
    const whole = await tableBlock(context, table);
    assertNew(columns.map(({ header }) => header), await headerCells(context, sheet, whole), whole.row);
    const place = { ...whole, column: whole.column + whole.columns, columns: columns.length };
    await assertFree(context, sheet, place);
    const names = await columnNames(context, table);
    const cells = logCells(zone.reading.columns, (column) => {
      const name = names[(zone.selection.columnNumbers[column] ?? 0) - whole.column];
      if (name === undefined)
        throw new SheetProblem(
          "selection",
          `Select cells of the Table ${tableName} only, then read the selection again.`,
        );
      return inThisRow(tableName, name);
    });
    const written = await widen(
      context,
      { sheet, table, tableName, place, whole },
      columns.map((column) => ({ column, formula: column.formula(cells) })),
    );
    return {
      words: `Put ${columns.map(({ header }) => header).join(", ")} into the Table ${tableName} on ${sheetName}, at ${blockAddress(place)}. New rows take them on.${leftOutInWords(zone)}`,
      takeBack: () => narrow({ sheetId, tableName, whole }, written),
    };
  });

/** Where a Table stands, header and totals rows included. */
export async function tableBlock(context: Excel.RequestContext, table: Excel.Table): Promise<Block> {
  const range = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  return { row: range.rowIndex, column: range.columnIndex, rows: range.rowCount, columns: range.columnCount };
}

export async function columnNames(context: Excel.RequestContext, table: Excel.Table): Promise<string[]> {
  table.columns.load("items/name");
  await context.sync();
  return table.columns.items.map(({ name }) => name);
}

interface Widening {
  readonly sheet: Excel.Worksheet;
  readonly table: Excel.Table;
  readonly tableName: string;
  /** The new columns, header and totals rows included. */
  readonly place: Block;
  /** The Table as it was. */
  readonly whole: Block;
}

type Formula = { readonly column: NewColumn; readonly formula: string };

/** Grows the Table and fills its new columns; below its body (a totals row) nothing is written. */
async function widen(
  context: Excel.RequestContext, { sheet, table, tableName, place, whole }: Widening, columns: readonly Formula[],
): Promise<WrittenCells[]> {
  const body = table.getDataBodyRange().load("rowCount");
  await context.sync();
  const block = { ...place, rows: body.rowCount + 1 };
  const lines = <T>(top: (column: NewColumn) => T, below: (each: Formula) => T): T[][] =>
    Array.from({ length: block.rows }, (_, i) => columns.map((each) => (i === 0 ? top(each.column) : below(each))));
  const filling = {
    block,
    formulas: lines(({ header }) => header, ({ formula }) => formula),
    numberFormat: lines(() => "General", ({ column }) => column.numberFormat),
    boldTop: false,
    picks: picksOf(columns.map(({ column }) => column), 0),
  };
  const wide = { ...whole, columns: whole.columns + place.columns };
  return await fillEmpty(context, sheet, [filling], {
    first: () => { table.resize(rangeOf(sheet, wide)); },
    back: (again) => { resized(again, { tableName, block: whole }); },
    namesTops: true,
  });
}

/** Queues that a Table covers a block of its sheet. */
function resized(
  context: Excel.RequestContext,
  { tableName, block }: { readonly tableName: string; readonly block: Block },
): void {
  const table = context.workbook.tables.getItem(tableName);
  table.resize(rangeOf(table.worksheet, block));
}

interface Narrowing extends Pick<Widening, "tableName" | "whole"> {
  readonly sheetId: string;
}

/** Gives the Table its old width and empties the cells it leaves; refused once rows or columns were added. */
const narrow = ({ sheetId, tableName, whole }: Narrowing, written: readonly WrittenCells[]): Promise<string> =>
  writingInExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    const now = await tableBlock(context, context.workbook.tables.getItem(tableName));
    const added = written[0]?.block.columns ?? 0;
    const isNarrow = now.columns === whole.columns;
    if (now.rows !== whole.rows || !(isNarrow || now.columns === whole.columns + added))
      throw new SheetProblem("changed");
    await assertUnchanged(context, sheet, written);
    const wide = { ...whole, columns: whole.columns + added };
    let stood: Stood[] = [];
    const write = (): void => {
      stood = stoodIn(sheet, asKnown(written));
      resized(context, { tableName, block: whole });
      asBefore(sheet, written);
    };
    const widened = (again: Excel.RequestContext): void => {
      resized(again, { tableName, block: wide });
      asWritten(again.workbook.worksheets.getItem(sheetId), written);
    };
    const putBack = async (again: Excel.RequestContext): Promise<void> => {
      widened(again);
      await again.sync();
    };
    await wholly(context, { where: `the Table ${tableName} on ${sheet.name}`, write, putBack });
    await keepTyped(context, stood, () => { widened(context); });
    return `Taken back: the Table ${tableName} is as wide as before.`;
  });
