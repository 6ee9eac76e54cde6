import { addressOf, type Area, cellsOf } from "./area";
import { cellCountOf, isUnbounded, mapCells } from "./area-maths";
import type { Properties } from "./client-object";
import { categoryOf } from "./number-format-category";
import type { Range } from "./range";
import type { RequestContext } from "./request-context";
import { assertWritable, sheetOf } from "./sheet-access";
import type { Scalar } from "./sheet-store";
import { renameColumns } from "./table-headers";
import { asEntered, matrixFor, textsFor } from "./typed-cell";

/** Cells of a bounded area; the host answers null for whole rows and columns. */
function cells<Answer>(context: RequestContext, area: Area, read: () => Answer): Answer | null {
  if (isUnbounded(area)) return null;
  context.handOver(cellCountOf(area));
  return read();
}

function enter(context: RequestContext, area: Area, given: unknown): void {
  assertWritable(context, area.sheetId);
  const formats = context.store.numberFormats(area);
  const entered = matrixFor(area, given).map((row, i) => row.map((value, j) => asEntered(value, formats[i]?.[j] ?? "General")));
  context.store.write(area, entered);
  renameColumns(context, area);
}

function setFormats(context: RequestContext, area: Area, given: unknown): void {
  assertWritable(context, area.sheetId);
  context.store.setNumberFormats(area, textsFor(area, given));
}

/** All rows hidden, none, or null for some. */
function rowsHidden(context: RequestContext, area: Area): boolean | null {
  const hidden = [...context.store.hiddenRows(area.sheetId)].filter((row) => row >= area.row && row < area.row + area.rowCount);
  if (hidden.length === 0) return false;
  return hidden.length === area.rowCount ? true : null;
}

function typeOf(value: Scalar): string {
  if (value === "") return "Empty";
  if (typeof value === "number") return "Double";
  if (typeof value === "boolean") return "Boolean";
  return /^#([A-Z/0]+[!?]|N\/A)$/.test(value) ? "Error" : "String";
}

/** What can be read of a range, and what can be written to it. */
export const rangeProperties: Properties<Area, Range> = {
  address: { get: (area, { context }) => addressOf(area, sheetOf(context, area.sheetId).name) },
  addressLocal: { get: (area) => cellsOf(area) },
  cellCount: { get: (area) => (cellCountOf(area) < 2 ** 31 ? cellCountOf(area) : -1) },
  rowCount: { get: (area) => area.rowCount },
  columnCount: { get: (area) => area.columnCount },
  rowIndex: { get: (area) => area.row },
  columnIndex: { get: (area) => area.column },
  isEntireColumn: { get: (area) => cellsOf(area) === cellsOf({ ...area, row: 0, rowCount: 2 ** 20 }) },
  values: {
    get: (area, { context }) => cells(context, area, () => context.store.values(area)),
    set: (area, given, { context }) => { enter(context, area, given); },
  },
  valueTypes: { get: (area, { context }) => cells(context, area, () => context.store.values(area).map((row) => row.map(typeOf))) },
  formulas: {
    get: (area, { context }) => cells(context, area, () => context.store.formulas(area)),
    set: (area, given, { context }) => { enter(context, area, given); },
  },
  text: { get: (area, { context }) => cells(context, area, () => context.store.texts(area)) },
  numberFormat: {
    get: (area, { context }) => cells(context, area, () => context.store.numberFormats(area)),
    set: (area, given, { context }) => { setFormats(context, area, given); },
  },
  numberFormatCategories: {
    get: (area, { context }) => cells(context, area, () => context.store.numberFormats(area).map((row) => row.map(categoryOf))),
    since: "1.12",
  },
  hasSpill: {
    get: (area, { context: { store } }) => mapCells(area, (row, column) => store.spillOver(row, column, area.sheetId)).flat().some(Boolean),
    since: "1.12",
  },
  hidden: { get: (area, { context }) => rowsHidden(context, area) },
  rowHidden: {
    get: (area, { context }) => rowsHidden(context, area),
    set: (area, hidden, { context }) => {
      assertWritable(context, area.sheetId);
      context.store.setRowsHidden(area, hidden === true);
    },
  },
  columnHidden: { get: () => false },
  left: { get: (area, { context }) => context.store.box(area).left, since: "1.10" },
  top: { get: (area, { context }) => context.store.box(area).top, since: "1.10" },
  width: { get: (area, { context }) => context.store.box(area).width, since: "1.10" },
  height: { get: (area, { context }) => context.store.box(area).height, since: "1.10" },
};
