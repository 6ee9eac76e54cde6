import { columnLetters } from "../../src/index";
import { flagHeader } from "../formulas/computed-columns";
import { isOurs } from "../formulas/repaired";
import { type RootZone } from "../root-zone";
import { inExcel, SheetProblem } from "../workbook";
import { blockAddress } from "./address";
import { type Done, rangeOf, writableSheet } from "./done";
import { logPlace, usedCorner } from "./log-place";

/** Stands in each rule of ours, where it changes nothing, so that they are found again and others left alone. */
const signature = 'N("Runoff Ledger")=0';

/** A rule on the text in the flag column (the host takes none of our functions here) and a look that is told without colour. */
const rules = [
  { says: 'ISNUMBER(SEARCH("check reading",FLAG))', italic: true, bold: false, line: "Dash", fill: "#E9E6F2", color: "#3A2F5B" },
  { says: 'AND(FLAG<>"",FLAG<>"in band")', italic: false, bold: true, line: "Continuous", fill: "#F8E7CF", color: "#4F2E00" },
] as const;

/** Marks the rows whose flags say anything but "in band": bold with lines above and below, a doubtful reading slanted and dashed. */
export const markRows = (zone: RootZone): Promise<Done> =>
  inExcel(async (context) => {
    const { sheetId, sheetName } = zone.selection;
    const sheet = await writableSheet(context, sheetId);
    const place = logPlace(zone);
    const corner = await usedCorner(context, sheet);
    const row = place.headerRow;
    const first = rangeOf(sheet, { row: place.firstRow, column: 0, rows: 1, columns: corner.column + 1 }).load("formulas");
    await context.sync();
    const flags = ((first.formulas[0] ?? []) as unknown[]).findIndex((cell) => isOurs(cell) && cell.includes("ROWFLAG("));
    if (flags < 0) throw new SheetProblem("selection", `Add the column "${flagHeader}" first: it is what the marks go by.`);
    await removeOurs(context, sheet);
    const left = Math.min(place.firstColumn, flags);
    const block = { row: row + 1, column: left, rows: Math.max(1, corner.row - row), columns: Math.max(place.lastColumn, flags) - left + 1 };
    for (const place of rules.keys()) addRule(rangeOf(sheet, block), place, `$${columnLetters(flags)}${row + 2}`);
    await context.sync();
    return { words: `Marked the rows of ${sheetName} at ${blockAddress(block)} whose flags say more than "in band".`, takeBack: () => removeMarks(sheetId) };
  });

/** Removes our marks from a sheet, and no other format. */
export const removeMarks = (sheetId: string): Promise<string> =>
  inExcel(async (context) => {
    const sheet = await writableSheet(context, sheetId);
    const removed = await removeOurs(context, sheet);
    await context.sync();
    return removed === 0 ? `There are no marks of ours on ${sheet.name}.` : `The marks on ${sheet.name} are gone; other formats stay.`;
  });

/** The host puts a new rule before all others: it is given its place, and keeps those after it from adding to its look. */
function addRule(range: Excel.Range, place: number, flag: string): void {
  const { says, italic, bold, line, fill, color } = rules[place] ?? rules[0];
  const added = range.conditionalFormats.add("Custom");
  added.priority = place;
  added.stopIfTrue = true;
  const { custom } = added;
  custom.rule.formula = `=AND(${signature},ISTEXT(${flag}),${says.replaceAll("FLAG", flag)})`;
  const { format } = custom;
  format.fill.color = fill;
  format.font.color = color;
  format.font.bold = bold;
  format.font.italic = italic;
  for (const edge of ["EdgeTop", "EdgeBottom"] as const) {
    format.borders.getItem(edge).style = line;
    format.borders.getItem(edge).color = color;
  }
}

/** Deletes our rules and answers how many there were. */
async function removeOurs(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<number> {
  const formats = sheet.getRange().conditionalFormats.load("items/type");
  await context.sync();
  const custom = formats.items.filter(({ type }) => type === "Custom");
  for (const { custom: { rule } } of custom) rule.load("formula");
  await context.sync();
  const ours = custom.filter(({ custom: { rule } }) => rule.formula.includes(signature));
  for (const format of ours) format.delete();
  return ours.length;
}
