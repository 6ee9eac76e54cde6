import { SheetProblem, writingInExcel } from "../workbook";
import { type Block, blockAddress, rangeOf } from "./address";
import { addresses, writableSheet } from "./done";
import { keepTyped, type Stood, stoodIn } from "./typed-meanwhile";
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
    let stood: Stood[] = [];
    const write = (): void => {
      stood = stoodIn(sheet, places.map(({ block, values }) => ({ block, holds: [values.map(() => "")] })));
      for (const { block, values } of places) rangeOf(sheet, block).values = [[...values]];
    };
    const where = `${addresses(places)} of ${sheet.name}`;
    await wholly(context, { where, write, putBack: (again) => emptied(again, sheetId, places) });
    await keepTyped(context, stood, () => {
      for (const { block, values } of places) rangeOf(sheet, block).values = [values.map(() => "")];
    });
  });

interface Place {
  readonly block: Block;
  readonly values: readonly number[];
}

async function formulasIn(
  context: Excel.RequestContext, sheet: Excel.Worksheet, places: readonly Place[],
): Promise<unknown[][][]> {
  const ranges = places.map(({ block }) => rangeOf(sheet, block).load("formulas"));
  await context.sync();
  return ranges.map(({ formulas }) => formulas as unknown[][]);
}

function assertEmpty(places: readonly Place[], cells: readonly unknown[][][]): void {
  const taken = places.find((_, i) => cells[i]?.flat().some((cell) => cell !== ""));
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
