import type { Area } from "../excel/area";
import { intersection, moved, touches } from "../excel/area-maths";
import type { TableRecord } from "../excel/book-records";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { nameColumns } from "../excel/table-headers";
import { assertTableName } from "../excel/table-names";
import { areaGiven } from "./areas-given";
import { field, type HostDocument, type HostObject, type Kind, type Kinds, object, settable, type Targets } from "./kind";

function setTotals(record: TableRecord, shown: unknown, { records }: HostDocument): void {
  if (record.showTotals === shown) return;
  record.showTotals = shown === true;
  record.area = moved(record.area, 0, 0, record.showTotals ? 1 : -1);
  records.onChange();
}

/** The rows between header and totals. */
const bodyOf = ({ area, showTotals }: TableRecord): Area =>
  ({ ...area, row: area.row + 1, rowCount: Math.max(1, area.rowCount - 1 - (showTotals ? 1 : 0)) });

function assertNoTable(tables: readonly TableRecord[], area: Area): void {
  if (tables.some((each) => touches(each.area, area))) throw new HostError("InvalidArgument", "a table is there already");
}

/** Takes in other cells beside or below; none is moved. */
function resize(record: TableRecord, document: HostDocument, range: unknown): void {
  assertWritable(document, record.area.sheetId);
  const area = areaGiven(document, range, record.area.sheetId);
  const { tables } = document.records;
  if (area.row !== record.area.row || area.column !== record.area.column) throw new HostError("InvalidArgument", "a table keeps its corner");
  assertNoTable(tables.filter((other) => other !== record), area);
  record.area = area;
  nameColumns(document, record);
  document.records.onChange();
}

const table: Kind<TableRecord> = {
  alsoCalled: ({ name }) => name,
  properties: {
    id: field("id"),
    name: {
      get: ({ name }) => name,
      set: (record, name, document) => {
        assertTableName(document, String(name));
        record.name = String(name);
        document.records.onChange();
      },
    },
    showTotals: { get: ({ showTotals }) => showTotals, set: setTotals },
    style: settable("style"),
  },
  parts: {
    columns: (record) => object("TableColumnCollection", record),
    rows: (record) => object("TableRowCollection", record),
    worksheet: ({ area }) => object("Worksheet", area.sheetId),
  },
  finds: {
    getRange: ({ area }) => object("Range", area),
    getHeaderRowRange: ({ area }) => object("Range", { ...area, rowCount: 1 }),
    getDataBodyRange: (record) => object("Range", bodyOf(record)),
  },
  acts: {
    resize,
    /** Removes the table and what it held. */
    delete: (record, document) => {
      assertWritable(document, record.area.sheetId);
      document.store.write(record.area, document.store.values(record.area).map((row) => row.map(() => "")));
      document.records.remove(document.records.tables, (each) => each === record);
    },
  },
};

function holds({ area }: TableRecord, { sheetId, touching, fullyContained }: Targets["TableCollection"]): boolean {
  if (touching === undefined) return sheetId === undefined || sheetId === area.sheetId;
  const shared = intersection(area, touching);
  return shared !== undefined && (fullyContained !== true || (shared.rowCount === area.rowCount && shared.columnCount === area.columnCount));
}

/** Makes a table of cells whose first row holds the headers. */
function add({ sheetId }: Targets["TableCollection"], document: HostDocument, address: unknown, hasHeaders: unknown): HostObject {
  const { records, store } = document;
  const area = areaGiven(document, address, sheetId ?? store.activeSheetId());
  assertWritable(document, area.sheetId);
  if (hasHeaders !== true) throw new HostError("UnsupportedOperation", "the workbench makes tables with a header row only");
  assertNoTable(records.tables, area);
  const name = `Table${records.tables.length + 1}`;
  const made: TableRecord = { id: records.newId("table"), name, area, columns: [], showTotals: false, style: "TableStyleMedium2" };
  records.tables.push(made);
  nameColumns(document, made);
  records.onChange();
  return object("Table", made);
}

export const tableKinds = {
  Table: table,
  TableCollection: {
    items: (which, { records }) => records.tables.filter((each) => holds(each, which)).map((each) => object("Table", each)),
    acts: { add },
  },
} satisfies Partial<Kinds>;
