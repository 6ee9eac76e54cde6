import { SheetProblem } from "../workbook";
import { type Block, blockAddress, rangeOf } from "./address";


/**
 * Refuses a place in which anything stands: a value, a formula (even one that shows nothing), a spill, or part of a
 * Table.
 *
 * @throws {SheetProblem} `filled`, naming the first filled cell
 */
export async function assertFree(context: Excel.RequestContext, sheet: Excel.Worksheet, place: Block): Promise<void> {
  const range = rangeOf(sheet, place).load("formulas,values");
  const tables = range.getTables(false).load("items/name");
  await context.sync();
  const [table] = tables.items;
  if (table !== undefined) throw filled(place, `the Table ${table.name} is there`);
  const at = firstFilled(range.formulas) ?? firstFilled(range.values);
  if (at === undefined) return;
  throw filled(
    place,
    `${blockAddress({ row: place.row + at[0], column: place.column + at[1], rows: 1, columns: 1 })} is not empty`,
  );
}

const filled = (place: Block, what: string): SheetProblem =>
  new SheetProblem(
    "filled",
    `${blockAddress(place)} is needed for this, and ${what}. Nothing was written; make room there and try again.`,
  );

function firstFilled(cells: readonly (readonly unknown[])[]): readonly [number, number] | undefined {
  for (const [row, line] of cells.entries()) {
    const column = line.findIndex((cell) => cell !== "");
    if (column >= 0) return [row, column];
  }
  return undefined;
}
