import { inExcel, SheetProblem, writingInExcel } from "../workbook";
import { blockAddress } from "./address";

/** A sheet that the pane made, as its cells stand, from A1 on. */
export interface OwnSheet {
  readonly sheetId: string;
  readonly sheetName: string;
  readonly cells: readonly (readonly unknown[])[];
}

/** No sheet of ours is larger. */
const reach = { rows: 120, columns: 9 };

/** The sheet in view (or the one named) if `isOurs` says so of its cells; its first cell is looked at before the others. */
export const readOwnSheet = (isOurs: (cells: OwnSheet["cells"]) => boolean, mayBe: (title: unknown) => boolean, id?: string): Promise<OwnSheet | undefined> =>
  inExcel(async (context) => {
    const { worksheets } = context.workbook;
    const sheet = (id === undefined ? worksheets.getActiveWorksheet() : worksheets.getItem(id)).load("id,name");
    const first = sheet.getRangeByIndexes(0, 0, 1, 1).load("values");
    await context.sync();
    if (!mayBe((first.values as unknown[][])[0]?.[0])) return undefined;
    const range = sheet.getRangeByIndexes(0, 0, reach.rows, reach.columns).load("values");
    await context.sync();
    const cells = range.values as unknown[][];
    return isOurs(cells) ? { sheetId: sheet.id, sheetName: sheet.name, cells } : undefined;
  }, { canWait: true });

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
    const ranges = entries.map(({ row, column, values }) => sheet.getRangeByIndexes(row, column, 1, values.length).load("formulas"));
    await context.sync();
    if (sheet.protection.protected) throw new SheetProblem("protected");
    const taken = entries.find((_, i) => (ranges[i]?.formulas as unknown[][] | undefined)?.flat().some((cell) => cell !== "") ?? true);
    if (taken !== undefined) {
      throw new SheetProblem("filled", `${blockAddress({ ...taken, rows: 1, columns: taken.values.length })} holds something already. Nothing was written.`);
    }
    for (const [i, { values }] of entries.entries()) {
      const range = ranges[i];
      if (range !== undefined) range.values = [[...values]];
    }
    await context.sync();
  });
