import { type Block, overlap, rangeOf } from "./address";
import { blockOf } from "./selected-place";

/** So many cells at most are merged into a title, and are asked whether they hold more than one thing. */
const mostOfTitle = 200;

/** Whether a person chose one cell: a single one, or a merged title, which holds something in its first cell only. */
export async function isOneThing(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  asked: Block,
  used: Block,
): Promise<boolean> {
  if (asked.rows === 1 && asked.columns === 1) return true;
  const block = overlap(asked, used);
  if (block === undefined || block.rows * block.columns > mostOfTitle) return false;
  const range = rangeOf(sheet, block).load("values");
  await context.sync();
  return (range.values as unknown[][]).flat().filter((cell) => cell !== "").length === 1;
}

/** The block of cells around the chosen one; a title that stands apart leads to all that the sheet holds. */
export const wholeLog = (around: Block, used: Block): Block => {
  const block = overlap(around, used) ?? used;
  return block.rows > 1 ? block : used;
};

/** The Table that the selection begins in, or else the block of filled cells around it. */
export async function surroundings(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  { row, column, rows, columns }: Block,
): Promise<{ block: Block; tableName: string | undefined }> {
  const range = sheet.getRangeByIndexes(row, column, rows, columns);
  const tables = range.getTables(false).load("items/name");
  const region = range.getCell(0, 0).getSurroundingRegion().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  const table = tables.items[0];
  if (table === undefined) return { block: blockOf(region), tableName: undefined };
  const whole = table.getRange().load("rowIndex,columnIndex,rowCount,columnCount");
  await context.sync();
  return { block: blockOf(whole), tableName: table.name };
}
