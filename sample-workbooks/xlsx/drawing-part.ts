import { corners, type Place } from "./address";
import { type LineChart } from "./spec";
import { document, element, vocabularies } from "./xml";

const drawing = "http://schemas.openxmlformats.org/drawingml/2006";

/** Where the charts of a sheet lie: each over a range of cells; the first chart is rId1. */
export function drawingPart(charts: readonly LineChart[]): string {
  const names = { "xmlns:xdr": `${drawing}/spreadsheetDrawing`, "xmlns:a": `${drawing}/main`, "xmlns:r": vocabularies.relations };
  return document(element("xdr:wsDr", names, ...charts.map(anchor)));
}

function anchor({ at, title, alternative }: LineChart, number: number): string {
  const [first, last] = corners(at);
  const point = (name: string, { row, column }: Place): string =>
    element(`xdr:${name}`, {}, ...Object.entries({ col: column, colOff: 0, row, rowOff: 0 }).map(([key, at]) => element(`xdr:${key}`, {}, String(at))));
  const named = element("xdr:cNvPr", { id: number + 2, name: title, descr: alternative });
  const known = element("xdr:nvGraphicFramePr", {}, named, element("xdr:cNvGraphicFramePr"));
  const place = element("xdr:xfrm", {}, element("a:off", { x: 0, y: 0 }), element("a:ext", { cx: 0, cy: 0 }));
  const chart = element("c:chart", { "xmlns:c": `${drawing}/chart`, "r:id": `rId${number + 1}` });
  const graphic = element("a:graphic", {}, element("a:graphicData", { uri: `${drawing}/chart` }, chart));
  return element(
    "xdr:twoCellAnchor",
    {},
    point("from", first),
    point("to", { row: last.row + 1, column: last.column + 1 }),
    element("xdr:graphicFrame", { macro: "" }, known, place, graphic),
    element("xdr:clientData"),
  );
}
