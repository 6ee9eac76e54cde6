import { type Variant } from "./cell-part";
import { chartPart } from "./chart-part";
import { drawingPart } from "./drawing-part";
import { type Part, type Relation, relationsPart } from "./part";
import { SharedStrings } from "./shared-strings";
import { type LineChart, type SheetSpec, type TableSpec } from "./spec";
import { tablePart } from "./table-part";
import { worksheetPart } from "./worksheet-part";
import { vocabularies } from "./xml";

const { relations } = vocabularies;
const openXml = "application/vnd.openxmlformats-officedocument";

/** Every part that belongs to the sheets; tables, drawings and charts are numbered through the whole workbook. */
export function sheetParts(sheets: readonly SheetSpec[], variant: Variant): Part[] {
  const strings = new SharedStrings();
  const parts: Part[] = [];
  let tables = 0;
  let charts = 0;
  sheets.forEach((sheet, i) => {
    const name = `sheet${i + 1}.xml`;
    const content = worksheetPart(sheet, { variant, strings, first: i === 0 });
    parts.push({ path: `xl/worksheets/${name}`, content, type: `${openXml}.spreadsheetml.worksheet+xml` });
    const related: Relation[] = [];
    for (const table of sheet.tables ?? []) {
      tables += 1;
      parts.push(oneTable(table, tables, variant));
      related.push([`${relations}/table`, `../tables/table${tables}.xml`]);
    }
    if (sheet.charts !== undefined && sheet.charts.length > 0) {
      parts.push(...chartParts(sheet.charts, i + 1, charts));
      charts += sheet.charts.length;
      related.push([`${relations}/drawing`, `../drawings/drawing${i + 1}.xml`]);
    }
    if (related.length > 0) parts.push({ path: `xl/worksheets/_rels/${name}.rels`, content: relationsPart(related) });
  });
  return [...parts, { path: "xl/sharedStrings.xml", content: strings.part(), type: `${openXml}.spreadsheetml.sharedStrings+xml` }];
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
