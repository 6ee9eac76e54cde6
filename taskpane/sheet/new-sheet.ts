import { columnLetters } from "../../src/index";
import { type SheetTemplate, type TemplateCell } from "../templates/sheet-template";
import { inExcel, offers, SheetProblem, writingInExcel } from "../workbook";
import { cellAddress } from "./address";
import { type Done } from "./done";
import { restrict } from "./restrict";
import { type Look, looks } from "./template-looks";
import { wholly } from "./wholly";

/**
 * Points of a column so many characters wide, in the host's usual font: 7 pixels a character and 5 between columns, at
 * 96 to the inch.
 */
const columnPoints = (characters: number): number => (characters * 7 + 5) * 0.75;

/** Writes a template on a new sheet at the end of the workbook, under a name that is free; all of it in one sync. */
export const addSheet = (template: SheetTemplate): Promise<Done> =>
  writingInExcel(async (context) => {
    const name = await freeName(context, template.name);
    let made: Made | undefined;
    await wholly(context, {
      where: `the sheet ${name}`,
      write: () => { made = writeSheet(context, template, name); },
      putBack: async (again) => {
        const sheet = again.workbook.worksheets.getItemOrNullObject(name).load("id");
        await again.sync();
        if (sheet.isNullObject) return;
        sheet.delete();
        await again.sync();
      },
    });
    const { id, asWritten } = asMade(made, template);
    return { words: `Made the sheet ${name}. Nothing else was touched.`, takeBack: () => removeSheet(id, asWritten) };
  });

/** What is asked of a new sheet while it is made: there after the sync. */
interface Made {
  readonly sheet: Excel.Worksheet;
  readonly block: Excel.Range;
}

function writeSheet(context: Excel.RequestContext, template: SheetTemplate, name: string): Made {
  const sheet = context.workbook.worksheets.add(name).load("id");
  const block = writeCells(sheet, template);
  template.widths.forEach((width, column) => {
    sheet.getRange(`${columnLetters(column)}:${columnLetters(column)}`).format.columnWidth = columnPoints(width);
  });
  template.heights.forEach((height, row) => { sheet.getRange(`${row + 1}:${row + 1}`).format.rowHeight = height; });
  block.format.verticalAlignment = "Center";
  sheet.showGridlines = false;
  setUpPrint(sheet, template);
  if (template.chart !== undefined) addChart(sheet, template.chart);
  sheet.activate();
  return { sheet, block: block.load("formulas") };
}

/** What a sheet held when it was made, in the cells that the template fills; its formulas may fill others since. */
interface AsWritten {
  readonly cells: readonly (readonly unknown[])[];
  readonly isFilled: readonly (readonly boolean[])[];
}

function asMade(
  made: Made | undefined,
  { rows, widths }: SheetTemplate,
): { readonly id: string; readonly asWritten: AsWritten } {
  if (made === undefined) throw new SheetProblem("unknown");
  const isFilled = rows.map((row) =>
    widths.map((_, column) => row[column]?.value !== undefined || row[column]?.formula !== undefined),
  );
  return { id: made.sheet.id, asWritten: { cells: made.block.formulas as unknown[][], isFilled } };
}

async function freeName(context: Excel.RequestContext, wanted: string): Promise<string> {
  const sheets = context.workbook.worksheets.load("items/name");
  await context.sync();
  const taken = new Set(sheets.items.map(({ name }) => name.toLowerCase()));
  for (let number = 1; ; number += 1) {
    const name = number === 1 ? wanted : `${wanted} ${number}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}

/** All cells in three writes, then looks and rules by cell; answers the range that holds them. */
function writeCells(sheet: Excel.Worksheet, { rows, widths }: SheetTemplate): Excel.Range {
  const columns = widths.map((_, column) => column);
  const range = sheet.getRangeByIndexes(0, 0, rows.length, columns.length);
  const each = <T,>(pick: (cell: TemplateCell | undefined) => T): T[][] =>
    rows.map((row) => columns.map((column) => pick(row[column])));
  range.numberFormat = each((cell) => cell?.numberFormat ?? "General");
  range.formulas = each((cell) => (cell?.formula === undefined ? (cell?.value ?? "") : `=${cell.formula}`));
  rows.forEach((row, r) => {
    row.forEach((cell, c) => {
      if (cell === undefined) return;
      const one = sheet.getRangeByIndexes(r, c, 1, 1);
      if (cell.style !== undefined) dress(one, looks[cell.style]);
      if (cell.accepts !== undefined) restrict(one, cell.accepts);
    });
  });
  return range;
}

function dress({ format }: Excel.Range, { fill, color, bold, italic, size, edge, wrap }: Look): void {
  if (wrap === true) format.wrapText = true;
  if (fill !== undefined) format.fill.color = fill;
  if (color !== undefined) format.font.color = color;
  if (bold === true) format.font.bold = true;
  if (italic === true) format.font.italic = true;
  if (size !== undefined) format.font.size = size;
  if (edge === undefined) return;
  for (const side of ["EdgeTop", "EdgeBottom", "EdgeLeft", "EdgeRight"] as const) {
    const border = format.borders.getItem(side);
    border.style = "Continuous";
    border.color = edge;
  }
}

function setUpPrint({ pageLayout }: Excel.Worksheet, { printArea, landscape }: SheetTemplate): void {
  pageLayout.orientation = landscape ? "Landscape" : "Portrait";
  pageLayout.setPrintArea(printArea);
  pageLayout.zoom = { horizontalFitToPages: 1, verticalFitToPages: 1 };
  pageLayout.centerHorizontally = true;
}

function addChart(sheet: Excel.Worksheet, { title, cells, over }: NonNullable<SheetTemplate["chart"]>): void {
  const chart = sheet.charts.add("LineMarkers", sheet.getRange(cells), "Columns");
  chart.title.text = title;
  const [from = "", to = ""] = over.split(":");
  chart.setPosition(sheet.getRange(from), sheet.getRange(to));
}

/**
 * Deletes the sheet if nothing was typed on it since: every cell that was filled holds what it held, every other is
 * empty or an answer that a formula of the sheet fills.
 */
const removeSheet = (sheetId: string, { cells, isFilled }: AsWritten): Promise<string> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItemOrNullObject(sheetId).load("name,id");
    await context.sync();
    if (sheet.isNullObject) return "Taken back: the sheet is gone already.";
    const used = sheet.getUsedRange(true).load("rowIndex,columnIndex,rowCount,columnCount,formulas");
    await context.sync();
    const typed = await typedSince(context, sheet, used, (row, column) =>
      isFilled[row]?.[column] === true ? cells[row]?.[column] : "",
    );
    if (typed !== undefined) {
      throw new SheetProblem(
        "changed",
        `The sheet ${sheet.name} was written on since, at ${typed}: it stays. Delete it by hand if you do not want it.`,
      );
    }
    await deleted(context, sheet);
    return `Taken back: the sheet ${sheet.name} is gone.`;
  });

/** Where the host fails, it may have deleted the sheet all the same: it is asked. */
async function deleted(context: Excel.RequestContext, sheet: Excel.Worksheet): Promise<void> {
  const { id, name } = sheet;
  sheet.delete();
  try {
    await context.sync();
  } catch (problem) {
    if (await isThere(id, name)) throw problem;
  }
}

const isThere = async (sheetId: string, name: string): Promise<boolean> => {
  try {
    return await inExcel(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject(sheetId).load("name");
      await context.sync();
      return !sheet.isNullObject;
    });
  } catch {
    const again = (): Promise<string> =>
      Promise.resolve(`Look whether the sheet ${name} is still there, and delete it by hand.`);
    throw new SheetProblem(
      "stopped",
      `Excel does not answer: the sheet ${name} may be gone or still be there. Look before you press again.`,
      again,
    );
  }
};

/**
 * The address of a cell that holds something else than it did, answers of spilling formulas apart; `undefined` without
 * one.
 */
async function typedSince(
  context: Excel.RequestContext,
  sheet: Excel.Worksheet,
  used: Excel.Range,
  held: (row: number, column: number) => unknown,
): Promise<string | undefined> {
  const other = (used.formulas as unknown[][]).flatMap((line, i) =>
    line.flatMap((cell, j) => {
      const [row, column] = [used.rowIndex + i, used.columnIndex + j];
      return cell === held(row, column) ? [] : [{ row, column }];
    }),
  );
  if (other.length === 0) return undefined;
  if (!offers(spillSet)) return other.map(({ row, column }) => cellAddress(row, column))[0];
  const parents = other.map(({ row, column }) =>
    sheet.getRangeByIndexes(row, column, 1, 1).getSpillParentOrNullObject().load("address"),
  );
  await context.sync();
  const typed = other.filter((_, i) => parents[i]?.isNullObject !== false);
  return typed.map(({ row, column }) => cellAddress(row, column))[0];
}

/** The part of the host's interface that tells whose answer a cell shows. */
const spillSet = "1.12";
