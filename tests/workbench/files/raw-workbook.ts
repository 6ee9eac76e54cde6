import { strToU8, zipSync } from "fflate";

export const head = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
export const main = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const office = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const packageNs = "http://schemas.openxmlformats.org/package/2006";

export interface RawSheet {
  readonly name: string;
  /** The rows, as they stand in the part: `<row r="1"><c r="A1"><v>3</v></c></row>`. */
  readonly rows: string;
  /** What stands before and after the rows. */
  readonly before?: string;
  readonly after?: string;
  /** The parts the sheet points to: type (the last word of it) and target. */
  readonly links?: readonly (readonly [type: string, target: string])[];
}
export interface RawWorkbook {
  readonly sheets: readonly RawSheet[];
  /** Sheets of another kind, as they stand in the workbook part. */
  readonly moreSheets?: string;
  readonly names?: string;
  readonly workbookPr?: string;
  readonly sharedStrings?: readonly string[];
  readonly parts?: Readonly<Record<string, string | Uint8Array>>;
  readonly workbookLinks?: readonly (readonly [type: string, target: string])[];
}

/** An .xlsx written part by part, so that a test says exactly what stands in the file. */
export function rawWorkbook(book: RawWorkbook): Uint8Array {
  const links = [
    ...book.sheets.map((_, n) => ["worksheet", `worksheets/sheet${n + 1}.xml`] as const),
    ["styles", "styles.xml"] as const,
    ["sheetMetadata", "metadata.xml"] as const,
    ...(book.sharedStrings === undefined ? [] : [["sharedStrings", "sharedStrings.xml"] as const]),
    ...(book.workbookLinks ?? []),
  ];
  const parts: Record<string, string | Uint8Array> = {
    "[Content_Types].xml": contentTypes(book),
    "_rels/.rels": relationships([["officeDocument", "xl/workbook.xml"]]),
    "xl/workbook.xml": workbook(book),
    "xl/_rels/workbook.xml.rels": relationships(links),
    "xl/styles.xml": styles,
    "xl/metadata.xml": metadata,
    ...(book.sharedStrings === undefined ? {} : { "xl/sharedStrings.xml": sharedStrings(book.sharedStrings) }),
  };
  for (const [n, { rows, before = "", after = "", links: own = [] }] of book.sheets.entries()) {
    parts[`xl/worksheets/sheet${n + 1}.xml`] =
      `${head}<worksheet xmlns="${main}" xmlns:r="${office}">${before}<sheetData>${rows}</sheetData>${after}</worksheet>`;
    if (own.length > 0) parts[`xl/worksheets/_rels/sheet${n + 1}.xml.rels`] = relationships(own);
  }
  const bytes = Object.entries({ ...parts, ...book.parts }).map(([name, part]) => [name, typeof part === "string" ? strToU8(part) : part] as const);
  return zipSync(Object.fromEntries(bytes), { mtime: new Date(2026, 0, 1) });
}

export function relationships(links: readonly (readonly [type: string, target: string])[]): string {
  const each = links.map(([type, target], n) => `<Relationship Id="rId${n + 1}" Type="${office}/${type}" Target="${target}"/>`);
  return `${head}<Relationships xmlns="${packageNs}/relationships">${each.join("")}</Relationships>`;
}

function workbook({ sheets, moreSheets = "", names = "", workbookPr = "" }: RawWorkbook): string {
  const each = sheets.map(({ name }, n) => `<sheet name="${name.replaceAll("&", "&amp;")}" sheetId="${n + 1}" r:id="rId${n + 1}"/>`);
  const definedNames = names === "" ? "" : `<definedNames>${names}</definedNames>`;
  return `${head}<workbook xmlns="${main}" xmlns:r="${office}">${workbookPr}<sheets>${each.join("")}${moreSheets}</sheets>${definedNames}<calcPr calcId="191029"/></workbook>`;
}

function contentTypes({ sheets, sharedStrings: strings }: RawWorkbook): string {
  const kind = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  const override = (part: string, type: string) => `<Override PartName="/xl/${part}" ContentType="${kind}.${type}+xml"/>`;
  const all = [
    override("workbook.xml", "sheet.main"),
    override("styles.xml", "styles"),
    override("metadata.xml", "sheetMetadata"),
    ...(strings === undefined ? [] : [override("sharedStrings.xml", "sharedStrings")]),
    ...sheets.map((_, n) => override(`worksheets/sheet${n + 1}.xml`, "worksheet")),
  ];
  const defaults =
    '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Default Extension="png" ContentType="image/png"/>';
  return `${head}<Types xmlns="${packageNs}/content-types">${defaults}${all.join("")}</Types>`;
}

function sharedStrings(texts: readonly string[]): string {
  return `${head}<sst xmlns="${main}">${texts.map((text) => `<si><t xml:space="preserve">${text}</t></si>`).join("")}</sst>`;
}

const styles = `${head}<styleSheet xmlns="${main}"><numFmts count="2"><numFmt numFmtId="164" formatCode="yyyy\\-mm\\-dd"/><numFmt numFmtId="165" formatCode="0.0&quot; mS&quot;"/></numFmts><fonts count="1"><font><sz val="11"/><name val="Calibri"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="3"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="164" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/><xf numFmtId="165" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="1"><dxf><font><b/></font></dxf></dxfs></styleSheet>`;

/** What marks a formula with cm="1" as a dynamic array. */
const metadata = `${head}<metadata xmlns="${main}" xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray"><metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst><ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext></extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>`;
