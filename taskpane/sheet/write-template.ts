import { columnLetters } from "../../src/index";
import { type SheetTemplate, type TemplateCell } from "../templates/sheet-template";
import { restrict } from "./restrict";
import { type Look, looks } from "./template-looks";

/**
 * Points of a column so many characters wide, in the host's usual font: 7 pixels a character and 5 between columns, at
 * 96 to the inch.
 */
const columnPoints = (characters: number): number => (characters * 7 + 5) * 0.75;

/** What is asked of a new sheet while it is made: there after the sync. */
export interface Made {
  readonly sheet: Excel.Worksheet;
  readonly block: Excel.Range;
}

/** Puts a template on a new sheet of that name; nothing is there before the sync. */
export function writeTemplate(context: Excel.RequestContext, template: SheetTemplate, name: string): Made {
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

/** All cells in two writes, then looks and rules by cell; answers the range that holds them. */
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
