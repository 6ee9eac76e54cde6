import type { Area } from "../excel/area";
import { moved } from "../excel/area-maths";
import type { TableRecord } from "../excel/book-records";
import { HostError } from "../excel/host-error";
import { assertWritable } from "../excel/sheet-access";
import { matrixFor } from "../excel/typed-cell";
import { field, type HostDocument, type HostObject, type Kinds, object, type Targets } from "./kind";

const columnArea = ({ table, index }: Targets["TableColumn"]): Area => ({ ...table.area, column: table.area.column + index, columnCount: 1 });
const rowArea = ({ table, index }: Targets["TableRow"]): Area => ({ ...table.area, row: table.area.row + 1 + index, rowCount: 1 });
const rowsOf = ({ area, showTotals }: TableRecord): number => area.rowCount - 1 - (showTotals ? 1 : 0);

function assertBlank(area: Area, { store }: HostDocument): void {
  if (store.values(area).flat().some((value) => value !== "")) throw new HostError("InvalidOperation", "the workbench moves no cells aside");
}

/** A new column at the right side; the cells there have to be blank. The first value is the header. */
function addColumn(table: TableRecord, document: HostDocument, index: unknown, values: unknown, name: unknown): HostObject {
  assertWritable(document, table.area.sheetId);
  const last = table.columns.length;
  if (typeof index === "number" && index !== -1 && index !== last) throw new HostError("UnsupportedOperation", "the workbench adds columns at the end only");
  const area = { ...moved(table.area, 0, last), columnCount: 1 };
  assertBlank(area, document);
  const cells = values === undefined || values === null ? undefined : matrixFor(area, values);
  const header = typeof name === "string" ? name : String(cells?.[0]?.[0] ?? `Column${last + 1}`);
  if (table.columns.some((column) => column.toLowerCase() === header.toLowerCase())) throw new HostError("InvalidArgument", `the table has a column ${header}`);
  table.area = { ...table.area, columnCount: last + 1 };
  table.columns.push(header);
  document.records.onChange();
  document.store.write(area, Array.from({ length: area.rowCount }, (_, i) => [i === 0 ? header : cells?.[i]?.[0]]));
  return object("TableColumn", { table, index: last });
}

/** New rows below the last; the cells there have to be blank. */
function addRows(table: TableRecord, document: HostDocument, index: unknown, values: unknown): HostObject {
  assertWritable(document, table.area.sheetId);
  const before = rowsOf(table);
  if ((typeof index === "number" && index >= 0 && index < before) || table.showTotals) {
    throw new HostError("UnsupportedOperation", "the workbench adds rows at the end only");
  }
  const count = Array.isArray(values) ? values.length : 1;
  const area = { ...moved(table.area, table.area.rowCount, 0), rowCount: count };
  assertBlank(area, document);
  document.store.write(area, matrixFor(area, values));
  table.area = { ...table.area, rowCount: table.area.rowCount + count };
  document.records.onChange();
  return object("TableRow", { table, index: before });
}

export const tableLineKinds = {
  TableColumnCollection: {
    items: (table) => table.columns.map((_, index) => object("TableColumn", { table, index })),
    acts: { add: addColumn },
  },
  TableColumn: {
    alsoCalled: ({ table, index }) => table.columns[index] ?? "",
    properties: {
      name: { get: ({ table, index }) => table.columns[index] },
      index: field("index"),
      id: { get: ({ index }) => index + 1 },
      values: { get: (column, { store }) => store.values(columnArea(column)) },
    },
    finds: {
      getRange: (column) => object("Range", columnArea(column)),
      getHeaderRowRange: (column) => object("Range", { ...columnArea(column), rowCount: 1 }),
      getDataBodyRange: (column) => object("Range", { ...moved(columnArea(column), 1, 0), rowCount: Math.max(1, rowsOf(column.table)) }),
    },
  },
  TableRowCollection: {
    items: (table) => Array.from({ length: rowsOf(table) }, (_, index) => object("TableRow", { table, index })),
    acts: { add: addRows },
  },
  TableRow: {
    properties: { index: field("index"), values: { get: (row, { store }) => store.values(rowArea(row)) } },
    finds: { getRange: (row) => object("Range", rowArea(row)) },
  },
} satisfies Partial<Kinds>;
