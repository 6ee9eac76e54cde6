import { SheetProblem, writingInExcel } from "../workbook";
import { type Block, blockAddress, rangeOf } from "./address";
import { addresses, writableSheet } from "./done";
import { wholly } from "./wholly";

/** Figures for cells of one row; a cell that holds something already is never written over. */
export interface Entry {
  readonly row: number;
  readonly column: number;
  readonly values: readonly number[];
}

/**
 * Writes every entry, or none; the sync that writes looks once more whether the cells are empty.
 *
 * @throws {SheetProblem} `filled`, naming the cells, `protected`, or as `wholly`
 */
export const writeEntries = (sheetId: string, entries: readonly Entry[]): Promise<void> =>
  writingInExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    const places = entries.map(({ row, column, values }): Place => ({
      block: { row, column, rows: 1, columns: values.length }, values,
    }));
    assertEmpty(places, await formulasIn(context, sheet, places));
    let seen: readonly Excel.Range[] = [];
    const write = (): void => {
      seen = places.map(({ block }) => rangeOf(sheet, block).load("formulas"));
      for (const { block, values } of places) rangeOf(sheet, block).values = [[...values]];
    };
    const where = `${addresses(places)} of ${sheet.name}`;
    await wholly(context, { where, write, putBack: (again) => emptied(again, sheetId, places) });
    const before = seen.map(({ formulas }) => formulas as unknown[][]);
    if (before.every(isEmpty)) return;
    for (const [i, { block }] of places.entries()) rangeOf(sheet, block).formulas = before[i] ?? [];
    await context.sync();
    assertEmpty(places, before);
  });

interface Place {
  readonly block: Block;
  readonly values: readonly number[];
}

const isEmpty = (cells: readonly (readonly unknown[])[]): boolean => cells.flat().every((cell) => cell === "");

async function formulasIn(
  context: Excel.RequestContext, sheet: Excel.Worksheet, places: readonly Place[],
): Promise<unknown[][][]> {
  const ranges = places.map(({ block }) => rangeOf(sheet, block).load("formulas"));
  await context.sync();
  return ranges.map(({ formulas }) => formulas as unknown[][]);
}

function assertEmpty(places: readonly Place[], cells: readonly unknown[][][]): void {
  const taken = places.find((_, i) => !isEmpty(cells[i] ?? []));
  if (taken === undefined) return;
  throw new SheetProblem("filled", `${blockAddress(taken.block)} holds something already. Nothing was written.`);
}

/** Empties the cells that hold a figure of ours, and no other. */
async function emptied(context: Excel.RequestContext, sheetId: string, places: readonly Place[]): Promise<void> {
  const sheet = context.workbook.worksheets.getItem(sheetId);
  const now = await formulasIn(context, sheet, places);
  for (const [i, { block, values }] of places.entries()) {
    rangeOf(sheet, block).formulas = [(now[i]?.[0] ?? []).map((cell, column) => (cell === values[column] ? "" : cell))];
  }
  await context.sync();
}
