import { columnLetters } from "../../src/index";
import { type Accepts, type SheetTemplate, type TemplateCell } from "../templates/sheet-template";
import { inExcel, SheetProblem } from "../workbook";
import { blockAddress } from "./address";
import { type Done } from "./done";
import { type Look, looks } from "./template-looks";

/** Points of a column so many characters wide, in the host's usual font: 7 pixels a character and 5 between columns, at 96 to the inch. */
const columnPoints = (characters: number): number => (characters * 7 + 5) * 0.75;

/** Writes a template on a new sheet at the end of the workbook, under a name that is free. */
export const addSheet = (template: SheetTemplate): Promise<Done> =>
  inExcel(async (context) => {
    const name = await freeName(context, template.name);
    const sheet = context.workbook.worksheets.add(name).load("id");
    const block = writeCells(sheet, template);
    template.widths.forEach((width, column) => { sheet.getRange(`${columnLetters(column)}:${columnLetters(column)}`).format.columnWidth = columnPoints(width); });
    sheet.showGridlines = false;
    setUpPrint(sheet, template);
    if (template.chart !== undefined) addChart(sheet, template.chart);
    sheet.activate();
    block.load("formulas");
    await context.sync();
    const { id } = sheet;
    const asWritten = JSON.stringify(block.formulas);
    return { words: `Made the sheet ${name}. Nothing else was touched.`, takeBack: () => removeSheet(id, asWritten) };
  });

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
  const each = <T>(pick: (cell: TemplateCell | undefined) => T): T[][] => rows.map((row) => columns.map((column) => pick(row[column])));
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

function dress({ format }: Excel.Range, { fill, color, bold, italic, size, edge }: Look): void {
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

/** What a box accepts; the person may keep another figure after a word of warning. */
function restrict({ dataValidation }: Excel.Range, accepts: Accepts): void {
  const rule = ruleOf(accepts);
  if (rule !== undefined) dataValidation.rule = rule;
  dataValidation.prompt = { showPrompt: true, title: "", message: accepts.hint };
  dataValidation.errorAlert = { showAlert: true, style: "Warning", title: "Is that right?", message: accepts.hint };
}

function ruleOf(accepts: Accepts): Excel.DataValidationRule | undefined {
  if ("between" in accepts) return { decimal: { formula1: accepts.between[0], formula2: accepts.between[1], operator: "Between" } };
  if ("date" in accepts) return { date: { formula1: "2000-01-01", operator: "GreaterThan" } };
  return accepts.words.length === 0 ? undefined : { list: { inCellDropDown: true, source: accepts.words.join(",") } };
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

/** Deletes the sheet if nothing on it was changed. */
const removeSheet = (sheetId: string, asWritten: string): Promise<string> =>
  inExcel(async (context) => {
    const sheet = context.workbook.worksheets.getItem(sheetId).load("name");
    const used = sheet.getUsedRange(true).load("rowIndex,columnIndex,rowCount,columnCount");
    await context.sync();
    const written = (JSON.parse(asWritten) as unknown[][]);
    const whole = sheet.getRangeByIndexes(0, 0, written.length, written[0]?.length ?? 1).load("formulas");
    await context.sync();
    const grew = used.rowIndex + used.rowCount > written.length || used.columnIndex + used.columnCount > (written[0]?.length ?? 1);
    if (grew || JSON.stringify(whole.formulas) !== asWritten) {
      throw new SheetProblem("changed", `The sheet ${sheet.name} was written on since, at ${blockAddress({ row: 0, column: 0, rows: used.rowCount, columns: used.columnCount })}: it stays. Delete it by hand if you do not want it.`);
    }
    sheet.delete();
    await context.sync();
    return `Taken back: the sheet ${sheet.name} is gone.`;
  });
