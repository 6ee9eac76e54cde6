import { type WorkbookSpec } from "./spec";
import { document, element, escaped, vocabularies } from "./xml";

/** The calculation engine the file claims: with an older one the host would recalculate on opening and drop the cached values. */
export const calculationId = 191029;

/** workbook.xml: sheets, defined names and how the host is to calculate. */
export function workbookPart({ sheets, names }: WorkbookSpec): string {
  const printed = sheets.flatMap(({ name, printArea, printedHeader }, sheet) => [
    ...(printArea === undefined ? [] : [{ name: "_xlnm.Print_Area", sheet, refersTo: `'${name}'!${printArea.replace(/[A-Z]+|\d+/g, "$$$&")}` }]),
    ...(printedHeader === undefined ? [] : [{ name: "_xlnm.Print_Titles", sheet, refersTo: `'${name}'!$${printedHeader.replace(":", ":$")}` }]),
  ]);
  const all = [...printed, ...names.map((each) => ({ ...each, sheet: undefined }))];
  const written = all.map(({ name, sheet, refersTo }) => element("definedName", { name, localSheetId: sheet }, escaped(refersTo)));
  return document(
    element(
      "workbook",
      { xmlns: vocabularies.sheet, "xmlns:r": vocabularies.relations },
      element("bookViews", {}, element("workbookView", { xWindow: 0, yWindow: 0, windowWidth: 24000, windowHeight: 12000 })),
      element("sheets", {}, ...sheets.map(({ name }, i) => element("sheet", { name, sheetId: i + 1, "r:id": `rId${i + 1}` }))),
      written.length === 0 ? "" : element("definedNames", {}, ...written),
      element("calcPr", { calcId: calculationId }),
    ),
  );
}

/** metadata.xml: what cm="1" on a cell points at, the mark of a formula that may spill. */
export function metadataPart(): string {
  const spreadsheetml2017 = "http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray";
  const kind = {
    name: "XLDAPR",
    minSupportedVersion: 120000,
    ...{ copy: 1, pasteAll: 1, pasteValues: 1, merge: 1, splitFirst: 1, rowColShift: 1 },
    ...{ clearFormats: 1, clearComments: 1, assign: 1, coerce: 1, cellMeta: 1 },
  };
  const dynamic = element("xda:dynamicArrayProperties", { fDynamic: 1, fCollapsed: 0 });
  const extension = element("extLst", {}, element("ext", { uri: "{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}" }, dynamic));
  return document(
    element(
      "metadata",
      { xmlns: vocabularies.sheet, "xmlns:xda": spreadsheetml2017 },
      element("metadataTypes", { count: 1 }, element("metadataType", kind)),
      element("futureMetadata", { name: "XLDAPR", count: 1 }, element("bk", {}, extension)),
      element("cellMetadata", { count: 1 }, element("bk", {}, element("rc", { t: 1, v: 0 }))),
    ),
  );
}
