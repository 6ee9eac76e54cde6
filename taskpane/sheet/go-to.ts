import { inExcel } from "../workbook";

/** Selects one cell of a sheet, or the columns of one of its rows; rows and columns counted from 0. */
export const goTo = (sheetId: string, row: number, column: number, columns = 1): Promise<void> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    sheet.activate();
    sheet.getRangeByIndexes(row, column, 1, columns).select();
    await context.sync();
  });
