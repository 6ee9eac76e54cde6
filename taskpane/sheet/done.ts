import { SheetProblem, writingInExcel } from "../workbook";
import { type Block, blockAddress, rangeOf } from "./address";
import { type Dress, dress, type Looks, putLooksBack } from "./looks";
import { keepTyped, type Known, type Stood, stoodIn } from "./typed-meanwhile";
import { wholly } from "./wholly";

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
  /** How they looked before, and how the action wants them to look, where it changed that too. */
  readonly looks?: { readonly before: Looks; readonly after: Dress };
}

/** What was written on one sheet. */
export interface WrittenSheet {
  readonly sheetId: string;
  readonly written: readonly WrittenCells[];
}

/** Takes cells of one sheet or several back to what they held: all of them, or none when one was changed since. */
export const takeBackCells = (sheets: readonly WrittenSheet[]): Promise<string> =>
  writingInExcel(async (context) => {
    const open: (WrittenSheet & { readonly sheet: Excel.Worksheet })[] = [];
    for (const { sheetId, written } of sheets) {
      const sheet = await writableSheet(context, sheetId);
      await assertUnchanged(context, sheet, written);
      open.push({ sheet, sheetId, written });
    }
    const where = open.map(({ sheet, written }) => `${addresses(written)} of ${sheet.name}`).join(", ");
    let stood: Stood[] = [];
    const write = (): void => {
      stood = open.flatMap(({ sheet, written }) => stoodIn(sheet, asKnown(written)));
      for (const { sheet, written } of open) asBefore(sheet, written);
    };
    await wholly(context, { where, write, putBack: (again) => asAfter(again, sheets) });
    await keepTyped(context, stood, () => { for (const { sheet, written } of open) asWritten(sheet, written); });
    const wasBlank = sheets.every(({ written }) =>
      written.every(({ before }) => before.flat().every((cell) => cell === "")),
    );
    return `Taken back: ${where} ${wasBlank ? "is empty again" : "as before"}.`;
  });

/** What an action wrote stands in its cells, or already what stood there before it. */
export const asKnown = (written: readonly WrittenCells[]): Known[] =>
  written.map(({ block, before, after }) => ({ block, holds: after, orHolds: before }));

/** Queues that cells hold, and look like, what they did before. */
export function asBefore(sheet: Excel.Worksheet, written: readonly WrittenCells[]): void {
  for (const { block, before, looks } of written) {
    rangeOf(sheet, block).formulas = before as unknown[][];
    if (looks !== undefined) putLooksBack(sheet, block, looks.before);
  }
}

/** A taking back that failed: the cells hold again what the action wrote. */
async function asAfter(context: Excel.RequestContext, sheets: readonly WrittenSheet[]): Promise<void> {
  for (const { sheetId, written } of sheets) asWritten(context.workbook.worksheets.getItem(sheetId), written);
  await context.sync();
}

/** Queues that cells hold, and look like, what an action made of them. */
export function asWritten(sheet: Excel.Worksheet, written: readonly WrittenCells[]): void {
  for (const { block, after, looks } of written) {
    rangeOf(sheet, block).formulas = after as unknown[][];
    if (looks !== undefined) dress(sheet, block, looks.after);
  }
}

/** The sheet, ready to be written. @throws {SheetProblem} `protected`, `no longer there` */
export async function writableSheet(context: Excel.RequestContext, sheetId: string): Promise<Excel.Worksheet> {
  const sheet = context.workbook.worksheets.getItem(sheetId).load("name");
  sheet.protection.load("protected");
  await context.sync();
  if (sheet.protection.protected) throw new SheetProblem("protected");
  return sheet;
}

/** Every cell holds what was written, or already what it held before. @throws {SheetProblem} `changed` */
export async function assertUnchanged(
  context: Excel.RequestContext, sheet: Excel.Worksheet, written: readonly WrittenCells[],
): Promise<void> {
  const ranges = written.map(({ block }) => rangeOf(sheet, block).load("formulas"));
  await context.sync();
  const same = written.every(({ before, after }, i) =>
    (ranges[i]?.formulas as unknown[][]).every((line, row) =>
      line.every((cell, column) => cell === after[row]?.[column] || cell === before[row]?.[column])));
  if (!same) throw new SheetProblem("changed");
}

/** "one formula", "3 formulas". */
export const counted = (count: number, thing: string): string => (count === 1 ? `one ${thing}` : `${count} ${thing}s`);

/** "K4:M60 and P4", a few at most. */
export function addresses(written: readonly { readonly block: Block }[]): string {
  const all = written.map(({ block }) => blockAddress(block));
  return all.length > 4 ? `${all.slice(0, 3).join(", ")} and ${all.length - 3} more places` : all.join(", ");
}
