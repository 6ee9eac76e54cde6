import { columnLetters } from "../../src/index";
import { flagHeader } from "../formulas/computed-columns";
import { isOurs } from "../formulas/repaired";
import { type RootZone } from "../root-zone";
import { SheetProblem, writingInExcel } from "../workbook";
import { blockAddress, rangeOf } from "./address";
import { type Done, writableSheet } from "./done";
import { headerCells, logPlace, usedCorner } from "./log-place";
import { wholly } from "./wholly";

/** Stands in each rule of ours, where it changes nothing, so that they are found again and others left alone. */
const signature = 'N("Runoff Ledger")=0';

/**
 * A rule on the text in the flag column (the host takes none of our functions here) and a look that is told without
 * colour.
 */
const rules = [
  {
    words: "check reading",
    says: 'ISNUMBER(SEARCH("check reading",FLAG))',
    italic: true,
    bold: false,
    line: "Dash",
    fill: "#E9E6F2",
    color: "#3A2F5B",
  },
  {
    words: "in band",
    says: 'AND(FLAG<>"",FLAG<>"in band")',
    italic: false,
    bold: true,
    line: "Continuous",
    fill: "#F8E7CF",
    color: "#4F2E00",
  },
] as const;

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
      { address: blockAddress(block), formulas: rules.map(({ says }) => formulaOf(says, flag)) },
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

/** A place that is marked, with the formulas of its rules in the order of `rules`. */
interface Marks {
  readonly address: string;
  readonly formulas: readonly string[];
}

/** One rule of ours that stands on the sheet. */
interface StandingRule {
  readonly format: Excel.ConditionalFormat;
  readonly formula: string;
  readonly address: string;
}

/** A rule that says nothing is one of ours that was added and not written to its end. */
const isOurRule = (formula: string): boolean => formula.includes(signature) || formula === "";

async function ourMarks(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<StandingRule[]> {
  const formats = sheet.getRange().conditionalFormats.load("items/type");
  await context.sync();
  const custom = formats.items
    .filter(({ type }) => type === "Custom")
    .map((format) => ({ format, range: format.getRange().load("address") }));
  for (const { format } of custom) format.custom.rule.load("formula");
  await context.sync();
  return custom
    .map(({ format, range }) => ({
      format,
      formula: format.custom.rule.formula,
      address: range.address.replace(/^.*!/, ""),
    }))
    .filter(({ formula }) => isOurRule(formula));
}

/** The rules that stand, by place, in the order of `rules`. */
function marksOf(standing: readonly StandingRule[]): Marks[] {
  const places = [...new Set(standing.map(({ address }) => address))];
  return places.map((address) => ({
    address,
    formulas: standing.filter((each) => each.address === address && each.formula !== "").map(({ formula }) => formula),
  }));
}

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

const formulaOf = (says: string, flag: string): string =>
  `=AND(${signature},ISTEXT(${flag}),${says.replaceAll("FLAG", flag)})`;

/** The host puts a new rule before the others, so that the first is added last; each stops the next. */
function addMarks(sheet: Excel.Worksheet, { address, formulas }: Marks): void {
  const range = sheet.getRange(address);
  for (const formula of [...formulas].reverse()) {
    const rule = rules.find(({ words }) => formula.includes(words)) ?? rules[1];
    addRule(range, rule, formula);
  }
}

function addRule(
  range: Excel.Range,
  { italic, bold, line, fill, color }: (typeof rules)[number],
  formula: string,
): void {
  const added = range.conditionalFormats.add("Custom");
  const { custom } = added;
  custom.rule.formula = formula;
  const { format } = custom;
  format.fill.color = fill;
  format.font.color = color;
  format.font.bold = bold;
  format.font.italic = italic;
  for (const edge of ["EdgeTop", "EdgeBottom"] as const) {
    format.borders.getItem(edge).style = line;
    format.borders.getItem(edge).color = color;
  }
  added.priority = 0;
  added.stopIfTrue = true;
}
