import { columnHeaded, finderFor } from "../formulas/both-kinds";
import { isOurs } from "../formulas/repaired";
import { type RootZone } from "../root-zone";
import { SheetProblem, writingInExcel } from "../workbook";
import { type Block, cellAddress, rangeOf } from "./address";
import { addresses, type Done, takeBackCells, writableSheet } from "./done";
import { fillEmpty, type Filling } from "./fill-empty";
import { assertFree } from "./free-place";
import { headerCells, type LogPlace, logPlace, usedCorner } from "./log-place";

/** Carries computed columns beside a plain range on into rows that were added to the log since. */
export const extendColumns = (zone: RootZone): Promise<Done> =>
  writingInExcel(async (context) => {
    const { sheetId, sheetName } = zone.selection;
    const sheet = await writableSheet(context, sheetId);
    const place = logPlace(zone);
    const corner = await usedCorner(context, sheet);
    const row = place.headerRow;
    const headers = await headerCells(context, sheet, { row, column: 0, rows: 1, columns: corner.column + 1 });
    const columns = headers.flatMap(({ text, column }) => {
      const ours = columnHeaded(text);
      return ours === undefined ? [] : [{ column, ours }];
    });
    if (columns.length === 0)
      throw new SheetProblem("selection", "There are no computed columns beside this log yet. Add them first.");
    const fillings: Filling[] = [];
    const find = finderFor(zone);
    for (const { column, ours } of columns) {
      const isWritten: IsWritten = (cell, at) =>
        find(ours, (each) => cellAddress(at, zone.selection.columnNumbers[each] ?? each), cell) !== undefined;
      const filling = await extension(context, sheet, { place, column, isWritten });
      if (filling !== undefined) fillings.push(filling);
    }
    if (fillings.length === 0)
      return {
        words: `The computed columns of ${sheetName} reach the last row already.`,
        takeBack: () => Promise.resolve("There was nothing to take back."),
      };
    const written = await fillEmpty(context, sheet, fillings);
    return {
      words: `Carried on into new rows of ${sheetName}: ${addresses(written)}.`,
      takeBack: () => takeBackCells([{ sheetId, written }]),
    };
  });

/** Whether a cell of this row holds what is written there for its column. */
type IsWritten = (cell: unknown, row: number) => boolean;

interface Extending {
  readonly place: LogPlace;
  readonly column: number;
  readonly isWritten: IsWritten;
}

/**
 * One column: its last formula, written again for every row of readings below it; `undefined` where it reaches the last
 * row.
 */
async function extension(
  context: Excel.RequestContext, sheet: Excel.Worksheet, { place, column, isWritten }: Extending,
): Promise<Filling | undefined> {
  const all: Block = { row: place.headerRow, column, rows: place.lastRow - place.headerRow + 1, columns: 1 };
  const before = rangeOf(sheet, all).load("formulas,numberFormat");
  await context.sync();
  const lines: unknown[] = before.formulas.map((line: unknown[]) => line[0]);
  const last = lines.map((cell, i) => isOurs(cell) || isWritten(cell, place.headerRow + i)).lastIndexOf(true);
  if (last < 0 || last === lines.length - 1) return undefined;
  const block: Block = { row: place.headerRow + last + 1, column, rows: lines.length - last - 1, columns: 1 };
  await assertFree(context, sheet, block);
  const pattern = String(lines[last]);
  const rows = Array.from({ length: block.rows }, (_, i) => block.row + i);
  return {
    block,
    formulas: rows.map((row) => [place.skipped.has(row) ? "" : inRow(pattern, place.headerRow + last, row)]),
    numberFormat: rows.map(() => [String(before.numberFormat[last]?.[0] ?? "General")]),
    boldTop: false,
  };
}

/** A formula of one row (counted from 0) as it reads in another; text in quotes and fixed references stay. */
export const inRow = (formula: string, from: number, to: number): string =>
  formula.replace(/"[^"]*"|(?<![\w.$!])([A-Z]{1,3})(\d+)(?![\w(.!])/g, (whole, letters?: string, digits?: string) =>
    letters !== undefined && digits === String(from + 1) ? `${letters}${to + 1}` : whole);
