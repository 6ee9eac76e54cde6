import { type LogSheet, logSheetsIn, type NamedGrid } from "../../src/index";
import { inExcel } from "../workbook";
import { rangeOf } from "./address";
import { blockOf } from "./selected-place";

/** A sheet of the workbook that holds a log, and the cell in its header from which the whole log is found. */
export interface LogTab {
  readonly sheetId: string;
  readonly sheetName: string;
  /** Counted from 0. */
  readonly row: number;
  readonly column: number;
}

/** A log shows in so many rows and columns from its first filled cell that it is one. */
const reach = { rows: 40, columns: 40 };

/** The tops of so many sheets are asked for at a time: far below what one answer of the host may hold. */
const sheetsAtATime = 40;

/** The sheets in sight that hold logs, in the workbook's order; a workbook of one sheet has none to choose from. */
export const logTabs = (): Promise<LogTab[]> =>
  inExcel(async (context) => {
    const sheets = context.workbook.worksheets.load("items/id,items/name,items/visibility");
    await context.sync();
    const inSight = sheets.items.filter(({ visibility }) => visibility === "Visible");
    const found: LogTab[] = [];
    if (inSight.length < 2) return found;
    for (let first = 0; first < inSight.length; first += sheetsAtATime) {
      const tops = await topsOf(context, inSight.slice(first, first + sheetsAtATime));
      found.push(...logSheetsIn(tops).map(tabOf));
    }
    return found;
  }, { canWait: true });

interface Top extends NamedGrid {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** What stands at the top of each sheet that holds anything. */
async function topsOf(context: Excel.RequestContext, sheets: readonly Excel.Worksheet[]): Promise<Top[]> {
  const filled = sheets.map((sheet) => ({
    sheet, used: sheet.getUsedRangeOrNullObject(true).load("rowIndex,columnIndex,rowCount,columnCount"),
  }));
  await context.sync();
  const asked = filled.filter(({ used }) => !used.isNullObject).map(({ sheet, used }) => {
    const { row, column, rows, columns } = blockOf(used);
    const block = { row, column, rows: Math.min(rows, reach.rows), columns: Math.min(columns, reach.columns) };
    return { sheet, block, range: rangeOf(sheet, block).load("values,numberFormat") };
  });
  await context.sync();
  return asked.map(({ sheet: { id, name }, block: { row, column }, range }) => ({
    sheetId: id,
    name,
    row,
    column,
    grid: { cells: range.values as unknown[][], numberFormats: range.numberFormat as string[][] },
  }));
}

function tabOf({ sheet, reading: { headerRows } }: LogSheet<Top>): LogTab {
  const header = headerRows.at(-1) ?? 0;
  const named = sheet.grid.cells[header]?.findIndex((cell) => cell !== "") ?? 0;
  return {
    sheetId: sheet.sheetId, sheetName: sheet.name, row: sheet.row + header, column: sheet.column + Math.max(0, named),
  };
}
