import { SheetProblem, writingInExcel } from "../workbook";
import { blockAddress } from "./address";

/** Figures for cells of one row; a cell that holds something already is never written over. */
export interface Entry {
  readonly row: number;
  readonly column: number;
  readonly values: readonly number[];
}

/** Writes every entry, or none. @throws {SheetProblem} `filled`, naming the cells, or `protected` */
export const writeEntries = (sheetId: string, entries: readonly Entry[]): Promise<void> =>
  writingInExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId);
    sheet.protection.load("protected");
    const ranges = entries.map(({ row, column, values }) =>
      sheet.getRangeByIndexes(row, column, 1, values.length).load("formulas"),
    );
    await context.sync();
    if (sheet.protection.protected) throw new SheetProblem("protected");
    const taken = entries.find(
      (_, i) => (ranges[i]?.formulas as unknown[][] | undefined)?.flat().some((cell) => cell !== "") ?? true,
    );
    if (taken !== undefined) {
      throw new SheetProblem(
        "filled",
        `${blockAddress({ ...taken, rows: 1, columns: taken.values.length })} holds something already. Nothing was written.`,
      );
    }
    for (const [i, { values }] of entries.entries()) {
      const range = ranges[i];
      if (range !== undefined) range.values = [[...values]];
    }
    await context.sync();
  });
