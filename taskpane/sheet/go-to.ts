import { inExcel } from "../workbook";
import { type SheetSelection } from "./read-selection";
import { type SheetPlace } from "./selected-place";

/**
 * Selects one cell of a sheet, or the columns of one of its rows; rows and columns counted from 0. Answers what is
 * selected now.
 */
export const goTo = (sheetId: string, row: number, column: number, columns = 1): Promise<SheetPlace> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    sheet.activate();
    sheet.getRangeByIndexes(row, column, 1, columns).select();
    await context.sync();
    return { sheetId, blocks: [{ row, column, rows: 1, columns }] };
  });

/** The cells of one row of what was read, for `goTo`; the row counted from 0 within it. */
export function cellsOfRow(
  { sheetId, rowNumbers, columnNumbers }: SheetSelection,
  row: number,
): Parameters<typeof goTo> {
  const [first = 0] = columnNumbers;
  return [sheetId, rowNumbers[row] ?? row, first, (columnNumbers.at(-1) ?? first) - first + 1];
}
