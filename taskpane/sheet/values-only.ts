import { isOurs } from "../formulas/repaired";
import { inExcel, SheetProblem } from "../workbook";
import { type Block, cellAddress, overlap } from "./address";
import { counted, type Done, rangeOf, type WrittenCells } from "./done";
import { formulasOfWorkbook, type FormulaCell, inBlocks, type SheetFormulas } from "./every-sheet";
import { assertOpen, takeBackAll } from "./functions-alive";

/** A cell that shows one of these has no answer to keep. */
const unanswered: ReadonlySet<unknown> = new Set(["#NAME?", "#BUSY!", "#CONNECT!", "#GETTING_DATA", "#SPILL!", "#CALC!"]);

/** Turns every formula of ours into the value it shows, so that the workbook can be read without the add-in. */
export const keepValuesOnly = (): Promise<Done> =>
  inExcel(async (context) => {
    const found = await formulasOfWorkbook(context, isOurs);
    assertOpen(found);
    assertAnswered(found);
    if (found.length === 0) throw new SheetProblem("empty", "No formula of this workbook uses the functions: there is nothing to turn into values.");
    const written: { sheetId: string; blocks: WrittenCells[] }[] = [];
    for (const { sheet, cells } of found) written.push({ sheetId: sheet.id, blocks: await turn(context, sheet, cells) });
    const total = written.flatMap(({ blocks }) => blocks).flatMap(({ before }) => before.flat()).filter(isOurs).length;
    const names = found.map(({ sheet }) => sheet.name).join(", ");
    return { words: `Turned ${counted(total, "formula")} into values, on ${names}.`, takeBack: () => takeBackAll(written) };
  });

function assertAnswered(found: readonly SheetFormulas[]): void {
  for (const { sheet, cells } of found) {
    const without = cells.filter(({ shows }) => unanswered.has(shows));
    const [first] = without;
    if (first === undefined) continue;
    const at = `${sheet.name}!${cellAddress(first.row, first.column)}`;
    throw new SheetProblem("unknown", `Without an answer: ${counted(without.length, "formula")}, first ${at}, which shows ${String(first.shows)}. Enter again first; nothing was changed.`);
  }
}

/** Single cells by column, and what a formula fills beyond its own cell as one block. */
async function turn(context: Excel.RequestContext, sheet: Excel.Worksheet, cells: readonly FormulaCell[]): Promise<WrittenCells[]> {
  const spills = await filledBy(context, sheet, cells.filter(({ mayFill }) => mayFill));
  // A host may show the formula in the cells that it fills, too: they belong to its block.
  const alone = cells.filter((cell) => !spills.some(({ block }) => overlap(block, { ...cell, rows: 1, columns: 1 }) !== undefined));
  const blocks = inBlocks(alone).map(({ block, cells: inside }) => ({
    block, before: inside.map(({ formula }) => [formula]), values: inside.map(({ shows }) => [shows]),
  }));
  const all = [...blocks, ...spills].map(({ block, before, values }) => {
    const range = rangeOf(sheet, block);
    range.values = values;
    return { block, before, range: range.load("formulas") };
  });
  await context.sync();
  return all.map(({ block, before, range }) => ({ block, before, after: range.formulas }));
}

interface Filled {
  readonly block: Block;
  readonly before: unknown[][];
  readonly values: unknown[][];
}

/** The blocks that formulas fill beyond their own cell. */
async function filledBy(context: Excel.RequestContext, sheet: Excel.Worksheet, cells: readonly FormulaCell[]): Promise<Filled[]> {
  const spills = cells.map(({ row, column, formula }) => ({
    formula,
    range: sheet.getRangeByIndexes(row, column, 1, 1).getSpillingToRangeOrNullObject().load("rowIndex,columnIndex,rowCount,columnCount,values"),
  }));
  await context.sync();
  return spills.flatMap(({ formula, range }) =>
    range.isNullObject ? [] : [{ block: blockOf(range), before: onlyFirst(range.values, formula), values: range.values as unknown[][] }]);
}

const blockOf = ({ rowIndex, columnIndex, rowCount, columnCount }: Excel.Range): Block => ({
  row: rowIndex, column: columnIndex, rows: rowCount, columns: columnCount,
});

/** A spilling formula stands in its first cell alone; the others have to be blank for it to fill them. */
const onlyFirst = (values: readonly (readonly unknown[])[], formula: string): unknown[][] =>
  values.map((line, i) => line.map((_, j) => (i === 0 && j === 0 ? formula : "")));
