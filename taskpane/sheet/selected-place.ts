import { inExcel, SheetProblem } from "../workbook";
import { type Block } from "./address";

/** Cells as a person selected them: a place on a sheet that can be read again whenever its cells change. */
export interface SheetPlace {
  readonly sheetId: string;
  readonly blocks: readonly Block[];
}

/** What is selected: one area or several, whole columns, or a single cell. */
export const selectedPlace = (): Promise<SheetPlace> =>
  inExcel(async (context) => {
    const areas = context.workbook
      .getSelectedRanges()
      .areas.load("items/rowIndex,items/columnIndex,items/rowCount,items/columnCount");
    const sheet = context.workbook.worksheets.getActiveWorksheet().load("id");
    await context.sync();
    if (areas.items.length === 0) throw new SheetProblem("selection");
    return { sheetId: sheet.id, blocks: areas.items.map(blockOf) };
  });

export const blockOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Block => ({
  row: rowIndex,
  column: columnIndex,
  rows: rowCount,
  columns: columnCount,
});
