import { type Variant, type Writing } from "./cell-part";
import { chartPart } from "./chart-part";
import { drawingPart } from "./drawing-part";
import { commentsPart, noteBoxesPart, notesOf } from "./notes-parts";
import { keptTextPart } from "./kept-text-part";
import { type Part, type Relation, relationsPart } from "./part";
import { SharedStrings } from "./shared-strings";
import { type LineChart, type SheetSpec, type TableSpec } from "./spec";
import { CellStyles } from "./styles-part";
import { tablePart } from "./table-part";
import { type SheetRelations, worksheetPart } from "./worksheet-part";
import { vocabularies } from "./xml";

const { relations } = vocabularies;
const openXml = "application/vnd.openxmlformats-officedocument";

/** Every part that belongs to the sheets; tables, drawings and charts are numbered through the whole workbook. */
export function sheetParts(sheets: readonly SheetSpec[], variant: Variant): Part[] {
  const writing: Writing = { variant, strings: new SharedStrings(), styles: new CellStyles() };
  const parts: Part[] = [];
  const before = { tables: 0, charts: 0 };
  sheets.forEach((sheet, i) => {
    parts.push(...oneSheet(sheet, { number: i + 1, before, writing }));
    before.tables += sheet.tables?.length ?? 0;
    before.charts += sheet.charts?.length ?? 0;
  });
  return [
    ...parts,
    { path: "xl/sharedStrings.xml", content: writing.strings.part(), type: `${openXml}.spreadsheetml.sharedStrings+xml` },
    { path: "xl/styles.xml", content: writing.styles.part(), type: `${openXml}.spreadsheetml.styles+xml` },
  ];
}

interface Place {
  /** Of the sheet, counted from 1. */
  readonly number: number;
  readonly before: { readonly tables: number; readonly charts: number };
  readonly writing: Writing;
}

/** A worksheet, what lies on it, and how they refer to each other. */
function oneSheet(sheet: SheetSpec, { number, before, writing }: Place): Part[] {
  const { tables = [], charts = [], kept } = sheet;
  const notes = notesOf(sheet);
  const related: Relation[] = [];
  const relate = (kind: string, target: string): string => `rId${related.push([`${relations}/${kind}`, `../${target}`])}`;
  const parts = tables.map((table, i) => oneTable(table, before.tables + i + 1, writing.variant));
  const ids: SheetRelations = {
    tables: tables.map((_, i) => relate("table", `tables/table${before.tables + i + 1}.xml`)),
    ...(charts.length === 0 ? {} : { drawing: relate("drawing", `drawings/drawing${number}.xml`) }),
    ...(kept === undefined ? {} : { kept: relate("customProperty", `customProperty${number}.bin`) }),
    ...(notes.length === 0 ? {} : { noteBoxes: relate("vmlDrawing", `drawings/vmlDrawing${number}.vml`) }),
  };
  if (charts.length > 0) parts.push(...chartParts(charts, number, before.charts));
  if (kept !== undefined) parts.push(keptTextPart(kept, `xl/customProperty${number}.bin`));
  if (notes.length > 0) {
    relate("comments", `comments${number}.xml`);
    parts.push({ path: `xl/drawings/vmlDrawing${number}.vml`, content: noteBoxesPart(notes) });
    parts.push({ path: `xl/comments${number}.xml`, content: commentsPart(notes), type: `${openXml}.spreadsheetml.comments+xml` });
  }
  const content = worksheetPart(sheet, { ...writing, first: number === 1, ids });
  if (related.length > 0) parts.push({ path: `xl/worksheets/_rels/sheet${number}.xml.rels`, content: relationsPart(related) });
  return [{ path: `xl/worksheets/sheet${number}.xml`, content, type: `${openXml}.spreadsheetml.worksheet+xml` }, ...parts];
}

const oneTable = (table: TableSpec, id: number, variant: Variant): Part => ({
  path: `xl/tables/table${id}.xml`,
  content: tablePart(table, id, variant),
  type: `${openXml}.spreadsheetml.table+xml`,
});

/** The drawing of one sheet and its charts, numbered on from those of earlier sheets. */
function chartParts(charts: readonly LineChart[], sheet: number, before: number): Part[] {
  const path = `xl/drawings/drawing${sheet}.xml`;
  const numbers = charts.map((_, i) => before + i + 1);
  const related = numbers.map((number): Relation => [`${relations}/chart`, `../charts/chart${number}.xml`]);
  return [
    { path, content: drawingPart(charts), type: `${openXml}.drawing+xml` },
    { path: `xl/drawings/_rels/drawing${sheet}.xml.rels`, content: relationsPart(related) },
    ...charts.map((chart, i) => ({
      path: `xl/charts/chart${before + i + 1}.xml`,
      content: chartPart(chart),
      type: `${openXml}.drawingml.chart+xml`,
    })),
  ];
}
