import { type Block, rangeOf } from "./address";
import { addresses, type WrittenSheet } from "./done";
import { keepTyped, type Stood, stoodIn } from "./typed-meanwhile";
import { wholly } from "./wholly";

/** A block that is to hold something else than before. */
export interface Rewriting {
  readonly block: Block;
  readonly before: readonly (readonly unknown[])[];
  /** What the host says stands there now, where that is not `before`: it may show a spill in every cell it fills. */
  readonly shown?: readonly (readonly unknown[])[];
  readonly write: (range: Excel.Range) => void;
}

interface SheetRewriting {
  readonly sheet: Excel.Worksheet;
  readonly blocks: readonly Rewriting[];
}

/**
 * Writes blocks of several sheets in one sync, and answers what they hold since. Each sheet's id and name are loaded.
 */
export async function writeOnSheets(
  context: Excel.RequestContext,
  sheets: readonly SheetRewriting[],
): Promise<WrittenSheet[]> {
  const where = sheets.map(({ sheet, blocks }) => `${addresses(blocks)} of ${sheet.name}`).join(", ");
  let after: Excel.Range[][] = [];
  let stood: Stood[] = [];
  const write = (): void => {
    stood = sheets.flatMap(({ sheet, blocks }) =>
      stoodIn(sheet, blocks.map(({ block, before, shown }) => ({ block, holds: shown ?? before }))));
    for (const { sheet, blocks } of sheets) for (const { block, write: into } of blocks) into(rangeOf(sheet, block));
    after = sheets.map(({ sheet, blocks }) => blocks.map(({ block }) => rangeOf(sheet, block).load("formulas")));
  };
  const ids = sheets.map(({ sheet }) => sheet.id);
  const asBefore = (again: Excel.RequestContext): void => {
    for (const [i, { blocks }] of sheets.entries()) {
      const sheet = again.workbook.worksheets.getItem(ids[i] ?? "");
      for (const { block, before } of blocks) rangeOf(sheet, block).formulas = before as unknown[][];
    }
  };
  const putBack = async (again: Excel.RequestContext): Promise<void> => {
    asBefore(again);
    await again.sync();
  };
  await wholly(context, { where, write, putBack });
  await keepTyped(context, stood, () => { asBefore(context); });
  return sheets.map(({ blocks }, i) => ({
    sheetId: ids[i] ?? "",
    written: blocks.map(({ block, before }, j) => ({
      block,
      before,
      after: (after[i]?.[j]?.formulas ?? []) as unknown[][],
    })),
  }));
}
