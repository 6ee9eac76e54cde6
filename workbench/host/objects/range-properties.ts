import { addressOf, type Area, cellsOf, sheetRows } from "../excel/area";
import { cellCountOf, isUnbounded, mapCells } from "../excel/area-maths";
import { categoryOf } from "../excel/number-format-category";
import { assertWritable, sheetOf } from "../excel/sheet-access";
import type { Scalar } from "../excel/sheet-store";
import { renameColumns } from "../excel/table-headers";
import { asEntered, matrixFor, textsFor } from "../excel/typed-cell";
import type { HostDocument, Property } from "./kind";

/** Answers of each cell of a bounded area; of whole rows and columns the host answers null. */
const cells = (read: (area: Area, document: HostDocument) => unknown): Property<Area> => ({
  get: (area, document) => {
    if (isUnbounded(area)) return null;
    document.handOver(cellCountOf(area));
    return read(area, document);
  },
});

function enter(area: Area, given: unknown, document: HostDocument): void {
  assertWritable(document, area.sheetId);
  const formats = document.store.numberFormats(area);
  const entered = matrixFor(area, given).map((row, i) => row.map((value, j) => asEntered(value, formats[i]?.[j] ?? "General")));
  document.store.write(area, entered);
  renameColumns(document, area);
}

function setFormats(area: Area, given: unknown, document: HostDocument): void {
  assertWritable(document, area.sheetId);
  document.store.setNumberFormats(area, textsFor(area, given));
}

/** All hidden, none, or null for some. */
function hidden(lines: ReadonlySet<number>, first: number, count: number): boolean | null {
  const inside = [...lines].filter((each) => each >= first && each < first + count).length;
  return inside === 0 ? false : inside === count || null;
}

const rowsHidden = ({ sheetId, row, rowCount }: Area, { store }: HostDocument): boolean | null =>
  hidden(store.hiddenRows(sheetId), row, rowCount);
const columnsHidden = ({ sheetId, column, columnCount }: Area, { store }: HostDocument): boolean | null =>
  hidden(store.hiddenColumns(sheetId), column, columnCount);

function typeOf(value: Scalar): string {
  if (value === "") return "Empty";
  if (typeof value === "number") return "Double";
  if (typeof value === "boolean") return "Boolean";
  return /^#([A-Z_/0]+[!?]|N\/A|GETTING_DATA)$/.test(value) ? "Error" : "String";
}

const mostCellsCounted = 2 ** 31;

/** What can be read of a range, and what can be written to it. */
export const rangeProperties: Readonly<Record<string, Property<Area>>> = {
  address: { get: (area, document) => addressOf(area, sheetOf(document, area.sheetId).name) },
  addressLocal: { get: (area) => cellsOf(area) },
  cellCount: { get: (area) => (cellCountOf(area) < mostCellsCounted ? cellCountOf(area) : -1) },
  rowCount: { get: (area) => area.rowCount },
  columnCount: { get: (area) => area.columnCount },
  rowIndex: { get: (area) => area.row },
  columnIndex: { get: (area) => area.column },
  isEntireColumn: { get: (area) => area.rowCount === sheetRows },
  values: { ...cells((area, { store }) => store.values(area)), set: enter },
  valueTypes: cells((area, { store }) => store.values(area).map((row) => row.map(typeOf))),
  formulas: { ...cells((area, { store }) => store.formulas(area)), set: enter },
  text: cells((area, { store }) => store.texts(area)),
  numberFormat: { ...cells((area, { store }) => store.numberFormats(area)), set: setFormats },
  numberFormatCategories: cells((area, { store }) => store.numberFormats(area).map((row) => row.map(categoryOf))),
  hasSpill: {
    get: (area, { store }) => mapCells(area, (row, column) => store.spillOver(row, column, area.sheetId)).flat().some(Boolean),
  },
  hidden: { get: (area, document) => rowsHidden(area, document) === true || columnsHidden(area, document) },
  rowHidden: {
    get: rowsHidden,
    set: (area, value, document) => {
      assertWritable(document, area.sheetId);
      document.store.setRowsHidden(area, value === true);
    },
  },
  columnHidden: {
    get: columnsHidden,
    set: (area, value, document) => {
      assertWritable(document, area.sheetId);
      document.store.setColumnsHidden(area, value === true);
    },
  },
  left: { get: (area, { store }) => store.box(area).left },
  top: { get: (area, { store }) => store.box(area).top },
  width: { get: (area, { store }) => store.box(area).width },
  height: { get: (area, { store }) => store.box(area).height },
};
