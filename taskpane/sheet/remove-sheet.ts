import { inExcel, offers, SheetProblem } from "../workbook";
import { cellAddress } from "./address";

/** What a sheet held when it was made, in the cells that the template fills; its formulas may fill others since. */
export interface AsWritten {
  readonly cells: readonly (readonly unknown[])[];
  readonly isFilled: readonly (readonly boolean[])[];
}

/**
 * Deletes the sheet if nothing was typed on it since: every cell that was filled holds what it held, every other is
 * empty or an answer that a formula of the sheet fills.
 */
export const removeSheet = (sheetId: string, { cells, isFilled }: AsWritten): Promise<string> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(sheetId).load("name,id");
    await context.sync();
    if (sheet.isNullObject) return "Taken back: the sheet is gone already.";
    const used = sheet.getUsedRange(true).load("rowIndex,columnIndex,rowCount,columnCount,formulas");
    await context.sync();
    const typed = await typedSince(context, sheet, used, (row, column) =>
      isFilled[row]?.[column] === true ? cells[row]?.[column] : "",
    );
    if (typed !== undefined) {
      throw new SheetProblem(
        "changed",
        `The sheet ${sheet.name} was written on since, at ${typed}: it stays. Delete it by hand if you do not want it.`,
      );
    }
    await deleted(context, sheet);
    return `Taken back: the sheet ${sheet.name} is gone.`;
  });

/** Where the host fails, it may have deleted the sheet all the same: it is asked. */
async function deleted(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<void> {
  const { id, name } = sheet;
  sheet.delete();
  try {
    await context.sync();
  } catch (problem) {
    if (await isThere(id, name)) throw problem;
  }
}

const isThere = async (sheetId: string, name: string): Promise<boolean> => {
  try {
    return await inExcel(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(sheetId).load("name");
      await context.sync();
      return !sheet.isNullObject;
    });
  } catch {
    const again = (): Promise<string> =>
      Promise.resolve(`Look whether the sheet ${name} is still there, and delete it by hand.`);
    throw new SheetProblem(
      "stopped",
      `Excel does not answer: the sheet ${name} may be gone or still be there. Look before you press again.`,
      again,
    );
  }
};

/**
 * The address of a cell that holds something else than it did, answers of spilling formulas apart; `undefined` without
 * one.
 */
async function typedSince(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
  held: (row: number, column: number) => unknown,
): Promise<string | undefined> {
  const other = (used.formulas as unknown[][]).flatMap((line, i) =>
    line.flatMap((cell, j) => {
      const [row, column] = [used.rowIndex + i, used.columnIndex + j];
      return cell === held(row, column) ? [] : [{ row, column }];
    }),
  );
  if (other.length === 0) return undefined;
  if (!offers(spillSet)) return other.map(({ row, column }) => cellAddress(row, column))[0];
  const parents = other.map(({ row, column }) =>
    sheet.getRangeByIndexes(row, column, 1, 1).getSpillParentOrNullObject().load("address"),
  );
  await context.sync();
  const typed = other.filter((_, i) => parents[i]?.isNullObject !== false);
  return typed.map(({ row, column }) => cellAddress(row, column))[0];
}

/** The part of the host's interface that tells whose answer a cell shows. */
const spillSet = "1.12";
