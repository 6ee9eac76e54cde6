import { head, main, office, rawWorkbook, relationships } from "./raw-workbook";

const drawing = "http://schemas.openxmlformats.org/drawingml/2006";
const png = Uint8Array.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 1, 2, 3, 250, 251, 252]);

const formats = [
  '<conditionalFormatting sqref="C2:C4"><cfRule type="cellIs" dxfId="0" priority="1" operator="greaterThan"><formula>1.5</formula></cfRule></conditionalFormatting>',
  '<conditionalFormatting sqref="A2:A4"><cfRule type="colorScale" priority="2"><colorScale><cfvo type="min"/><cfvo type="max"/><color rgb="FFFFFFFF"/><color rgb="FF7A2E12"/></colorScale></cfRule></conditionalFormatting>',
  '<conditionalFormatting sqref="B2:B4"><cfRule type="dataBar" priority="3"><dataBar><cfvo type="min"/><cfvo type="max"/><color rgb="FF638EC6"/></dataBar></cfRule></conditionalFormatting>',
  '<conditionalFormatting sqref="D2:D4"><cfRule type="iconSet" priority="4"><iconSet iconSet="3Arrows"><cfvo type="percent" val="0"/><cfvo type="percent" val="33"/><cfvo type="percent" val="67"/></iconSet></cfRule></conditionalFormatting>',
  '<conditionalFormatting sqref="E2:E4"><cfRule type="top10" dxfId="0" priority="5" rank="2"/><cfRule type="timePeriod" dxfId="0" priority="6" timePeriod="lastWeek"><formula>TRUE</formula></cfRule><cfRule type="containsText" dxfId="0" priority="7" operator="containsText" text="flush"><formula>NOT(ISERROR(SEARCH("flush",E2)))</formula></cfRule></conditionalFormatting>',
].join("");

/** A sheet as the host leaves it: frozen panes, odd spacing and attributes, several kinds of conditional formats. */
const logRows = [
  '<row r="1" spans="1:5"><c r="A1" t="s"><v>0</v></c><c r="B1" t="s"><v>1</v></c><c r="C1" t="s"><v>2</v></c></row>',
  '<row r="2"><c r="A2" s="2"><v>3.0</v></c><c r="B2"><v>1.5</v></c><c r="C2" cm="1"><f t="array" ref="C2">_xldudf_RUNOFF_SALTRATIO(A2,B2)</f><v>9</v></c><c r="D2"><f>A2&amp;" mS"</f></c></row>\r\n',
  '<row r="3"><c r="A3"><v>2.5</v></c><c r="B3"><v>2</v></c><c r="C3" cm="1"><f t="array" ref="C3">_xldudf_RUNOFF_SALTRATIO(A3,B3)</f><v>1.25</v></c></row>',
  '<row r="4"  ht="30" customHeight="1"><c r="A4"   t="inlineStr"><is><t>probe out</t></is></c><c r="C4" cm="1"><f t="array" ref="C4">_xldudf_RUNOFF_SALTRATIO(A4,B4)</f><v>0</v></c></row>',
].join("");

/** A workbook that holds what add-ins tend to lose: a chart, a picture, comments, a pivot, names, custom parts. */
export function fullWorkbook(): Uint8Array {
  const panes = '<sheetViews><sheetView workbookViewId="0"><pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/></sheetView></sheetViews>';
  return rawWorkbook({
    sheets: [
      {
        name: "Log",
        before: `<sheetPr><tabColor rgb="FF00AA00"/></sheetPr>${panes}`,
        rows: logRows,
        after: `${formats}<drawing r:id="rId1"/><legacyDrawing r:id="rId3"/>`,
        links: [
          ["drawing", "../drawings/drawing1.xml"],
          ["comments", "../comments1.xml"],
          ["vmlDrawing", "../drawings/vmlDrawing1.vml"],
        ],
      },
      { name: "Pivot", rows: '<row r="1"><c r="A1" t="s"><v>0</v></c></row>', links: [["pivotTable", "../pivotTables/pivotTable1.xml"]] },
    ],
    sharedStrings: ["Runoff EC", "Input EC", "Ratio"],
    names: '<definedName name="LimitRatio">Log!$B$2</definedName><definedName name="_xlnm.Print_Area" localSheetId="0">Log!$A$1:$E$4</definedName>',
    workbookLinks: [["pivotCacheDefinition", "pivotCache/pivotCacheDefinition1.xml"]],
    parts: {
      "xl/drawings/drawing1.xml": `${head}<xdr:wsDr xmlns:xdr="${drawing}/spreadsheetDrawing" xmlns:a="${drawing}/main"/>`,
      "xl/drawings/_rels/drawing1.xml.rels": relationships([["chart", "../charts/chart1.xml"], ["image", "../media/image1.png"]]),
      "xl/drawings/vmlDrawing1.vml": "<xml>\r\n  <v:shape/>\r\n</xml>",
      "xl/charts/chart1.xml": `${head}<c:chartSpace xmlns:c="${drawing}/chart"><c:chart/></c:chartSpace>`,
      "xl/media/image1.png": png,
      "xl/comments1.xml": `${head}<comments xmlns="${main}"><authors><author>me</author></authors><commentList><comment ref="A4" authorId="0"><text><t>checked the probe</t></text></comment></commentList></comments>`,
      "xl/pivotTables/pivotTable1.xml": `${head}<pivotTableDefinition xmlns="${main}" name="Pivot" cacheId="1"/>`,
      "xl/pivotTables/_rels/pivotTable1.xml.rels": relationships([["pivotCacheDefinition", "../pivotCache/pivotCacheDefinition1.xml"]]),
      "xl/pivotCache/pivotCacheDefinition1.xml": `${head}<pivotCacheDefinition xmlns="${main}" xmlns:r="${office}"/>`,
      "customXml/item1.xml": "<b:kept xmlns:b='urn:own'>ü\n</b:kept>",
      "docProps/app.xml": `${head}<Properties/>`,
    },
  });
}
