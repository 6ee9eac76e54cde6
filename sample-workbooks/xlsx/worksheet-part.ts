import { address, inReadingOrder, placeOf } from "./address";
import { cellPart, type Writing } from "./cell-part";
import { type ConditionalFormat, type SheetSpec } from "./spec";
import { lookNumber } from "./styles-part";
import { validationPart } from "./validation-part";
import { counted, document, element, escaped, vocabularies } from "./xml";

/** The ids under which a sheet refers to what lies on it. */
export interface SheetRelations {
  readonly tables: readonly string[];
  readonly drawing?: string;
  readonly noteBoxes?: string;
  readonly kept?: string;
}

/** One worksheet. The order of its elements is the file format's. */
export function worksheetPart(sheet: SheetSpec, how: Writing & { first: boolean; ids: SheetRelations }): string {
  const { tables, drawing, noteBoxes, kept } = how.ids;
  return document(
    element(
      "worksheet",
      { xmlns: vocabularies.sheet, "xmlns:r": vocabularies.relations },
      element("sheetPr", {}, element("pageSetUpPr", { fitToPage: true })),
      element("dimension", { ref: usedRange(sheet) }),
      element("sheetViews", {}, view(sheet, how.first)),
      element("sheetFormatPr", { defaultRowHeight: 15 }),
      element("cols", {}, ...sheet.widths.map((width, i) => element("col", { min: i + 1, max: i + 1, width, customWidth: true }))),
      element("sheetData", {}, ...rows(sheet, how)),
      ...(sheet.formats ?? []).map(conditionalFormat),
      counted("dataValidations", (sheet.validations ?? []).map(validationPart)),
      sheet.printArea === undefined ? "" : element("printOptions", { horizontalCentered: true }),
      element("pageMargins", { left: 0.5, right: 0.5, top: 0.6, bottom: 0.6, header: 0.3, footer: 0.3 }),
      pageSetUp(sheet),
      element("headerFooter", {}, element("oddFooter", {}, escaped("&L&A&R&P / &N"))),
      kept === undefined ? "" : element("customProperties", {}, element("customPr", { name: sheet.kept?.name, "r:id": kept })),
      drawing === undefined ? "" : element("drawing", { "r:id": drawing }),
      noteBoxes === undefined ? "" : element("legacyDrawing", { "r:id": noteBoxes }),
      counted("tableParts", tables.map((id) => element("tablePart", { "r:id": id }))),
    ),
  );
}

/** On A4: one page for a print area, as many as it takes otherwise. */
const pageSetUp = ({ printArea, portrait }: SheetSpec): string =>
  element("pageSetup", { paperSize: 9, orientation: portrait === true ? "portrait" : "landscape", fitToWidth: 1, fitToHeight: printArea === undefined ? 0 : 1 });

function usedRange({ cells }: SheetSpec): string {
  const places = [...cells.keys()].map(placeOf);
  const row = Math.max(0, ...places.map((place) => place.row));
  const column = Math.max(0, ...places.map((place) => place.column));
  return `A1:${address({ row, column })}`;
}

function view({ frozen, gridLines }: SheetSpec, first: boolean): string {
  const attributes = { showGridLines: gridLines === false ? false : undefined, tabSelected: first ? true : undefined, workbookViewId: 0 };
  if (frozen === undefined) return element("sheetView", attributes);
  const pane = {
    xSplit: frozen.columns === 0 ? undefined : frozen.columns,
    ySplit: frozen.rows === 0 ? undefined : frozen.rows,
    topLeftCell: address({ row: frozen.rows, column: frozen.columns }),
    activePane: frozen.columns === 0 ? "bottomLeft" : frozen.rows === 0 ? "topRight" : "bottomRight",
    state: "frozen",
  };
  return element("sheetView", attributes, element("pane", pane));
}

function rows({ cells, heights }: SheetSpec, how: Writing): string[] {
  const ordered = [...cells].map(([at, cell]) => ({ at, cell, place: placeOf(at) })).sort((a, b) => inReadingOrder(a.place, b.place));
  const byRow = new Map<number, typeof ordered>();
  for (const each of ordered) byRow.set(each.place.row, [...(byRow.get(each.place.row) ?? []), each]);
  const height = (row: number): object => (heights?.has(row) === true ? { ht: heights.get(row), customHeight: true } : {});
  return [...byRow].map(([row, inRow]) => element("row", { r: row + 1, ...height(row + 1) }, ...inRow.map(({ at, cell }) => cellPart(at, cell, how))));
}

function conditionalFormat({ range, when, look }: ConditionalFormat, number: number): string {
  const rule = element("cfRule", { type: "expression", dxfId: lookNumber(look), priority: number + 1 }, element("formula", {}, escaped(when)));
  return element("conditionalFormatting", { sqref: range }, rule);
}
