import { inExcel, SheetProblem } from "../workbook";
import { type Block, blockAddress } from "./address";

/** What an action did, in words, and how to take it back. */
export interface Done {
  readonly words: string;
  /** Undoes it, if nothing of it was changed since; answers in words what it did. */
  readonly takeBack: () => Promise<string>;
}

/** Cells that an action wrote, with what they held before and hold since, as the host gives their formulas. */
export interface WrittenCells {
  readonly block: Block;
  readonly before: readonly (readonly unknown[])[];
  readonly after: readonly (readonly unknown[])[];
}

export const rangeOf = (sheet: Excel.Worksheet, { row, column, rows, columns }: Block): Excel.Range =>
  sheet.getRangeByIndexes(row, column, rows, columns);

/** Takes cells back to what they held: all of them, or none when one was changed since. */
export const takeBackCells = (sheetId: string, written: readonly WrittenCells[]): Promise<string> =>
  inExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    await assertUnchanged(context, sheet, written);
    for (const { block, before } of written) rangeOf(sheet, block).formulas = before as unknown[][];
    await context.sync();
    return `Taken back: ${addresses(written)} of ${sheet.name} hold what they held before.`;
  });

/** The sheet, ready to be written. @throws {SheetProblem} `protected`, `no longer there` */
export async function writableSheet(context: Excel.RequestContext, sheetId: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItem(sheetId).load("name");
  sheet.protection.load("protected");
  await context.sync();
  if (sheet.protection.protected) throw new SheetProblem("protected");
  return sheet;
}

/** @throws {SheetProblem} `changed` */
export async function assertUnchanged(
  context: Excel.RequestContext, sheet: Excel.Worksheet, written: readonly WrittenCells[],
): Promise<void> {
  const ranges = written.map(({ block }) => rangeOf(sheet, block).load("formulas"));
  await context.sync();
  const same = written.every(({ after }, i) => JSON.stringify(ranges[i]?.formulas) === JSON.stringify(after));
  if (!same) throw new SheetProblem("changed");
}

/** "one formula", "3 formulas". */
export const counted = (count: number, thing: string): string => (count === 1 ? `one ${thing}` : `${count} ${thing}s`);

/** "K4:M60 and P4", a few at most. */
export function addresses(written: readonly { readonly block: Block }[]): string {
  const all = written.map(({ block }) => blockAddress(block));
  return all.length > 4 ? `${all.slice(0, 3).join(", ")} and ${all.length - 3} more places` : all.join(", ");
}
