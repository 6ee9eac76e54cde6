import { isOurs } from "../formulas/repaired";
import { offers, SheetProblem, writingInExcel } from "../workbook";
import { cellAddress, overlap } from "./address";
import { counted, type Done, takeBackCells } from "./done";
import { formulasOfWorkbook, type FormulaCell, inBlocks, type SheetFormulas } from "./every-sheet";
import { assertOpen } from "./functions-alive";
import { blockOf } from "./selected-place";
import { type Rewriting, writeOnSheets } from "./write-on-sheets";

/** A cell that shows one of these has no answer to keep. */
const unanswered: ReadonlySet<unknown> = new Set([
  "#NAME?",
  "#BUSY!",
  "#CONNECT!",
  "#GETTING_DATA",
  "#SPILL!",
  "#CALC!",
]);

/** Turns every formula of ours into the value it shows, so that the workbook can be read without the add-in. */
export const keepValuesOnly = (): Promise<Done> =>
  writingInExcel(async (context) => {
    const found = await formulasOfWorkbook(context, isOurs);
    assertOpen(found);
    assertAnswered(found);
    if (found.length === 0)
      throw new SheetProblem(
        "empty",
        "No formula of this workbook uses the functions: there is nothing to turn into values.",
      );
    const sheets = [];
    for (const { sheet, cells } of found) sheets.push({ sheet, blocks: await asValues(context, sheet, cells) });
    const written = await writeOnSheets(context, sheets);
    const total = found.reduce((sum, { cells }) => sum + cells.length, 0);
    const names = found.map(({ sheet }) => sheet.name).join(", ");
    return {
      words: `Turned ${counted(total, "formula")} into values, on ${names}.`,
      takeBack: () => takeBackCells(written),
    };
  });

function assertAnswered(found: readonly SheetFormulas[]): void {
  for (const { sheet, cells } of found) {
    const without = cells.filter(({ shows }) => unanswered.has(shows));
    const [first] = without;
    if (first === undefined) continue;
    const at = `${sheet.name}!${cellAddress(first.row, first.column)}`;
    throw new SheetProblem(
      "unknown",
      `Without an answer: ${counted(without.length, "formula")}, first ${at}, which shows ${String(first.shows)}. Enter again first; nothing was changed.`,
    );
  }
}

/** Single cells by column, and what a formula fills beyond its own cell as one block. */
async function asValues(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  cells: readonly FormulaCell[],
): Promise<Rewriting[]> {
  const spills = await filledBy(context, sheet, cells);
  // A host may show the formula in the cells that it fills, too: they belong to its block.
  const alone = cells.filter(
    (cell) => !spills.some(({ block }) => overlap(block, { ...cell, rows: 1, columns: 1 }) !== undefined),
  );
  const single = inBlocks(alone).map(({ block, cells: inside }) => ({
    block,
    before: inside.map(({ formula }) => [formula]),
    write: values(inside.map(({ shows }) => [shows])),
  }));
  return [...single, ...spills];
}

const values =
  (shown: readonly (readonly unknown[])[]) =>
  (range: Excel.Range): void => {
    range.values = shown as unknown[][];
  };

/** The part of the host's interface that tells how far a formula spills; hosts before it know no spills. */
const spillSet = "1.12";
/** So many formulas are asked about in one sync. */
const askedAtOnce = 1000;

/** The blocks that formulas fill beyond their own cell; each formula is asked, for an answer may be blank. */
async function filledBy(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  cells: readonly FormulaCell[],
): Promise<Rewriting[]> {
  if (!offers(spillSet)) return [];
  const filled: Rewriting[] = [];
  for (let first = 0; first < cells.length; first += askedAtOnce) {
    const spills = cells.slice(first, first + askedAtOnce).map(({ row, column, formula }) => ({
      formula,
      range: sheet
        .getRangeByIndexes(row, column, 1, 1)
        .getSpillingToRangeOrNullObject()
        .load("rowIndex,columnIndex,rowCount,columnCount,values,formulas"),
    }));
    await context.sync();
    filled.push(
      ...spills.flatMap(({ formula, range }) =>
        range.isNullObject
          ? []
          : [
              {
                block: blockOf(range),
                before: onlyFirst(range.values, formula),
                shown: range.formulas as unknown[][],
                write: values(range.values as unknown[][]),
              },
            ],
      ),
    );
  }
  return filled;
}

/** A spilling formula stands in its first cell alone; the others have to be blank for it to fill them. */
const onlyFirst = (shown: readonly (readonly unknown[])[], formula: string): unknown[][] =>
  shown.map((line, i) => line.map((_, j) => (i === 0 && j === 0 ? formula : "")));
