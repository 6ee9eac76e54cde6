import { columnLetters } from "../../src/index";
import { flagHeader } from "../formulas/computed-columns";
import { isOurs } from "../formulas/repaired";
import { type RootZone } from "../root-zone";
import { SheetProblem, writingInExcel } from "../workbook";
import { blockAddress, rangeOf } from "./address";
import { type Done, writableSheet } from "./done";
import { headerCells, logPlace, usedCorner } from "./log-place";
import { addMarks, formulasOn, type Marks, marksOf, ourMarks, type StandingRule } from "./marks";
import { wholly } from "./wholly";

/**
 * Marks the rows whose flags say anything but "in band": bold with lines above and below, a doubtful reading slanted
 * and dashed.
 */
export const markRows = (zone: RootZone): Promise<Done> =>
  writingInExcel(async (context) => {
    const { sheetId, sheetName } = zone.selection;
    const sheet = await writableSheet(context, sheetId);
    const place = logPlace(zone);
    const corner = await usedCorner(context, sheet);
    const row = place.headerRow;
    const first = rangeOf(sheet, { row: place.firstRow, column: 0, rows: 1, columns: corner.column + 1 }).load(
      "formulas",
    );
    const headers = await headerCells(context, sheet, { row, column: 0, rows: 1, columns: corner.column + 1 });
    const cells = (first.formulas[0] ?? []) as unknown[];
    const flags = cells.findIndex((cell, at) => tellsFlags(cell, headers[at]?.text));
    if (flags < 0)
      throw new SheetProblem("selection", `Add the column "${flagHeader}" first: it is what the marks go by.`);
    const left = Math.min(place.firstColumn, flags);
    const block = {
      row: row + 1,
      column: left,
      rows: Math.max(1, corner.row - row),
      columns: Math.max(place.lastColumn, flags) - left + 1,
    };
    const flag = `$${columnLetters(flags)}${row + 2}`;
    const before = await ourMarks(context, sheet);
    await remark(context, { sheet, sheetId }, before, [
      { address: blockAddress(block), formulas: formulasOn(flag) },
    ]);
    return {
      words: `Marked the rows of ${sheetName} at ${blockAddress(block)} whose flags say more than "in band".`,
      takeBack: () => takeBackMarks(sheetId, before.length === 0 ? [] : marksOf(before)),
    };
  });

/** A function's flags, or those of a plain formula, which are told by the column's header. */
const tellsFlags = (cell: unknown, header: string | undefined): boolean =>
  typeof cell === "string" &&
  cell.startsWith("=") &&
  ((isOurs(cell) && cell.includes("ROWFLAG(")) || header === flagHeader);

/** Removes our marks from a sheet, and no other format. */
export const removeMarks = (sheetId: string): Promise<Done> =>
  writingInExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    const before = await ourMarks(context, sheet);
    if (before.length === 0)
      return {
        words: `There are no marks of ours on ${sheet.name}.`,
        takeBack: () => Promise.resolve("There was nothing to take back."),
      };
    await remark(context, { sheet, sheetId }, before, []);
    return {
      words: `The marks on ${sheet.name} are gone; other formats stay.`,
      takeBack: () => takeBackMarks(sheetId, marksOf(before)),
    };
  });

interface MarkedSheet {
  readonly sheet: Excel.Worksheet;
  readonly sheetId: string;
}

/** Puts marks in the place of those that stand, in one sync. */
async function remark(
  context: Excel.RequestContext,
  { sheet, sheetId }: MarkedSheet,
  standing: readonly StandingRule[],
  marks: readonly Marks[],
): Promise<void> {
  const before = marksOf(standing);
  await wholly(context, {
    where: `the marks on ${sheet.name}`,
    write: () => {
      for (const { format } of standing) format.delete();
      for (const each of marks) addMarks(sheet, each);
    },
    putBack: async (again) => {
      const same = again.workbook.worksheets.getItem(sheetId);
      for (const { format } of await ourMarks(again, same)) format.delete();
      for (const each of before) addMarks(same, each);
      await again.sync();
    },
  });
}

const takeBackMarks = (sheetId: string, before: readonly Marks[]): Promise<string> =>
  writingInExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    await remark(context, { sheet, sheetId }, await ourMarks(context, sheet), before);
    return before.length === 0
      ? `Taken back: the marks on ${sheet.name} are gone; other formats stay.`
      : `Taken back: ${sheet.name} has the marks it had before.`;
  });
