import { addressOf, type Area } from "../excel/area";
import { cellCountOf, isUnbounded, type Line, span } from "../excel/area-maths";
import { categoryOf } from "../excel/number-format-category";
import { assertWritable, sheetOf } from "../excel/sheet-access";
import type { Box, Scalar } from "../excel/sheet-store";
import { renameColumns } from "../excel/table-headers";
import { asEntered, matrixFor, textsFor } from "../excel/typed-cell";
import { field, type HostDocument, type Property } from "./kind";

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

/** Whether all rows or columns are hidden, or none; null where some are. */
function isHidden(area: Area, { store }: HostDocument, line: Line): boolean | null {
  const { first, count } = span(area, line);
  const inside = [...store.hidden(area.sheetId, line)].filter((each) => each >= first && each < first + count).length;
  return inside === 0 ? false : inside === count || null;
}

const hidden = (line: Line): Property<Area> => ({
  get: (area, document) => isHidden(area, document, line),
  set: (area, value, document) => {
    assertWritable(document, area.sheetId);
    document.store.setHidden(area, line, value === true);
  },
});

const boxed = (side: keyof Box): Property<Area> => ({ get: (area, { store }) => store.box(area)[side] });

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
  cellCount: { get: (area) => (cellCountOf(area) < mostCellsCounted ? cellCountOf(area) : -1) },
  rowCount: field("rowCount"),
  columnCount: field("columnCount"),
  rowIndex: field("row"),
  columnIndex: field("column"),
  values: { ...cells((area, { store }) => store.values(area)), set: enter },
  valueTypes: cells((area, { store }) => store.values(area).map((row) => row.map(typeOf))),
  formulas: { ...cells((area, { store }) => store.formulas(area)), set: enter },
  text: cells((area, { store }) => store.texts(area)),
  numberFormat: { ...cells((area, { store }) => store.numberFormats(area)), set: setFormats },
  numberFormatCategories: cells((area, { store }) => store.numberFormats(area).map((row) => row.map(categoryOf))),
  hidden: { get: (area, document) => isHidden(area, document, "row") === true || isHidden(area, document, "column") },
  rowHidden: hidden("row"),
  columnHidden: hidden("column"),
  left: boxed("left"),
  top: boxed("top"),
  width: boxed("width"),
  height: boxed("height"),
};
