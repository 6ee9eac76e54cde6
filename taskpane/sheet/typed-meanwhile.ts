import { SheetProblem } from "../workbook";
import { type Block, cellAddress, rangeOf } from "./address";

/** Cells about to be written over, and what is known to stand in them. */
export interface Known {
  readonly block: Block;
  readonly holds: readonly (readonly unknown[])[];
  /** What may stand there as well. */
  readonly orHolds?: readonly (readonly unknown[])[];
}

/** What stood in cells at the moment they were written over. */
export interface Stood {
  readonly sheet: Excel.Worksheet;
  readonly known: Known;
  readonly range: Excel.Range;
}

/** Asks for it: to be queued before the writes of the same sync. */
export const stoodIn = (sheet: Excel.Worksheet, known: readonly Known[]): Stood[] =>
  known.map((each) => ({ sheet, known: each, range: rangeOf(sheet, each.block).load("formulas") }));

/**
 * After the sync that wrote: where a person typed between the look at the cells and that sync, everything is put back,
 * and what they typed with it.
 *
 * @param putBack queues that every cell holds what it was known to hold
 * @throws {SheetProblem} `changed`, naming the cell
 */
export async function keepTyped(
  context: Excel.RequestContext, stood: readonly Stood[], putBack: () => void,
): Promise<void> {
  const other = stood.flatMap(differences);
  const typed = other.find(({ isKnown }) => !isKnown);
  if (typed === undefined) return;
  putBack();
  for (const { sheet, row, column, cell } of other)
    rangeOf(sheet, { row, column, rows: 1, columns: 1 }).formulas = [[cell]];
  const where = cellAddress(typed.row, typed.column);
  try {
    await context.sync();
  } catch {
    throw new SheetProblem(
      "stopped", `Somebody typed "${String(typed.cell)}" into ${where} meanwhile, and Excel did not take it back: look there.`,
    );
  }
  throw new SheetProblem(
    "changed", `Somebody typed into ${where} meanwhile: what stands there stays, and nothing else was changed.`,
  );
}

interface Difference {
  readonly sheet: Excel.Worksheet;
  readonly row: number;
  readonly column: number;
  readonly cell: unknown;
  readonly isKnown: boolean;
}

const differences = ({ sheet, range, known: { block, holds, orHolds } }: Stood): Difference[] =>
  (range.formulas as unknown[][]).flatMap((line, i) => line.flatMap((cell, j) =>
    cell === holds[i]?.[j]
      ? []
      : [{ sheet, row: block.row + i, column: block.column + j, cell, isKnown: cell === orHolds?.[i]?.[j] }]));
