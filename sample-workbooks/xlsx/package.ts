import { strToU8, type Zippable, zipSync } from "fflate";
import { type Variant } from "./cell-part";
import { type Part, type Relation, relationsPart } from "./part";
import { appPropertiesPart, corePropertiesPart } from "./property-parts";
import { sheetParts } from "./sheet-parts";
import { type WorkbookSpec } from "./spec";
import { type AddIn, taskpanesPart, webExtensionPart } from "./web-extension-parts";
import { metadataPart, workbookPart } from "./workbook-part";
import { document, element, vocabularies } from "./xml";

export interface PackageOptions {
  readonly variant?: Variant;
  /** Asks the host to open this add-in's pane with the workbook. */
  readonly opens?: AddIn | undefined;
}

const { relations } = vocabularies;
const spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const vmlDrawing = "application/vnd.openxmlformats-officedocument.vmlDrawing";
const packageFormat = "application/vnd.openxmlformats-package";
const extensions = "http://schemas.microsoft.com/office/2011/relationships";

/** The bytes of the .xlsx file: the same for the same workbook, on every machine and at every hour. */
export function workbookBytes(workbook: WorkbookSpec, { variant = "host", opens }: PackageOptions = {}): Uint8Array {
  const panes = opens === undefined ? [] : paneParts(opens);
  const parts = [...packageParts(workbook.title, panes.length > 0), ...workbookParts(workbook), ...sheetParts(workbook.sheets, variant), ...panes];
  // A zip entry holds local time; a date made from local parts is the same in every zone.
  const mtime = new Date(2026, 0, 1);
  const files: Zippable = {};
  for (const part of [contentTypes(parts), ...parts]) files[part.path] = [bytesOf(part), { level: 9, mtime }];
  return zipSync(files);
}

const bytesOf = ({ content, isUtf16 }: Part): Uint8Array => (isUtf16 === true ? new Uint8Array(Buffer.from(content, "utf16le")) : strToU8(content));

function contentTypes(parts: readonly Part[]): Part {
  const defaults = [
    element("Default", { Extension: "rels", ContentType: `${packageFormat}.relationships+xml` }),
    element("Default", { Extension: "xml", ContentType: "application/xml" }),
    ...(parts.some(({ path }) => path.endsWith(".vml")) ? [element("Default", { Extension: "vml", ContentType: vmlDrawing })] : []),
  ];
  const typed = parts.filter(({ type }) => type !== undefined);
  const overrides = typed.map(({ path, type }) => element("Override", { PartName: `/${path}`, ContentType: type }));
  return { path: "[Content_Types].xml", content: document(element("Types", { xmlns: vocabularies.contentTypes }, ...defaults, ...overrides)) };
}

function packageParts(title: string, opensPane: boolean): Part[] {
  const root: Relation[] = [
    [`${relations}/officeDocument`, "xl/workbook.xml"],
    ["http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties", "docProps/core.xml"],
    [`${relations}/extended-properties`, "docProps/app.xml"],
    ...(opensPane ? [[`${extensions}/webextensiontaskpanes`, "xl/webextensions/taskpanes.xml"] as const] : []),
  ];
  return [
    { path: "_rels/.rels", content: relationsPart(root) },
    { path: "docProps/core.xml", content: corePropertiesPart(title), type: `${packageFormat}.core-properties+xml` },
    { path: "docProps/app.xml", content: appPropertiesPart(), type: "application/vnd.openxmlformats-officedocument.extended-properties+xml" },
  ];
}

function workbookParts(workbook: WorkbookSpec): Part[] {
  const related: Relation[] = [
    ...workbook.sheets.map((_, i) => [`${relations}/worksheet`, `worksheets/sheet${i + 1}.xml`] as const),
    [`${relations}/styles`, "styles.xml"],
    [`${relations}/sharedStrings`, "sharedStrings.xml"],
    [`${relations}/sheetMetadata`, "metadata.xml"],
  ];
  return [
    { path: "xl/workbook.xml", content: workbookPart(workbook), type: `${spreadsheet}.sheet.main+xml` },
    { path: "xl/_rels/workbook.xml.rels", content: relationsPart(related) },
    { path: "xl/metadata.xml", content: metadataPart(), type: `${spreadsheet}.sheetMetadata+xml` },
  ];
}

function paneParts(opens: AddIn): Part[] {
  const folder = "xl/webextensions";
  const type = "application/vnd.ms-office.webextension";
  return [
    { path: `${folder}/taskpanes.xml`, content: taskpanesPart(), type: `${type}taskpanes+xml` },
    { path: `${folder}/_rels/taskpanes.xml.rels`, content: relationsPart([[`${extensions}/webextension`, "webextension1.xml"]]) },
    { path: `${folder}/webextension1.xml`, content: webExtensionPart(opens), type: `${type}+xml` },
  ];
}
