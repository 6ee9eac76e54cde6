import { addressOf, type Area, areaAt } from "../excel/area";
import { sheetOf } from "../excel/sheet-access";
import { type HostDocument, type Kind, object, type Property } from "./kind";

const inside = (first: number, count: number, without: ReadonlySet<number>): number[] =>
  Array.from({ length: count }, (_, i) => first + i).filter((each) => !without.has(each));

/** Rows down to the last filled one, without those a filter or a person has hidden. */
function visibleRows({ sheetId, row, rowCount }: Area, { store }: HostDocument): number[] {
  const filled = store.filledArea(sheetId, false);
  const end = Math.min(row + rowCount, Math.max(row + 1, filled === undefined ? 0 : filled.row + filled.rowCount));
  return inside(row, end - row, store.hidden(sheetId, "row"));
}

const visibleColumns = ({ sheetId, column, columnCount }: Area, { store }: HostDocument): number[] =>
  inside(column, columnCount, store.hidden(sheetId, "column"));

/** One answer for each cell in sight: the rows of none, where every column is hidden. */
function eachVisible(read: (cell: Area, document: HostDocument) => unknown): Property<Area> {
  return {
    get: (area, document) => {
      const columns = visibleColumns(area, document);
      const rows = columns.length === 0 ? [] : visibleRows(area, document);
      document.handOver(rows.length * columns.length);
      return rows.map((row) => columns.map((column) => read(areaAt(area.sheetId, row, column), document)));
    },
  };
}

/** The cells of a range that are in sight. */
export const rangeView: Kind<Area> = {
  properties: {
    rowCount: { get: (area, document) => (visibleColumns(area, document).length === 0 ? 0 : visibleRows(area, document).length) },
    columnCount: { get: (area, document) => visibleColumns(area, document).length },
    values: eachVisible((cell, { store }) => store.values(cell)[0]?.[0]),
    formulas: eachVisible((cell, { store }) => store.formulas(cell)[0]?.[0]),
    text: eachVisible((cell, { store }) => store.texts(cell)[0]?.[0]),
    numberFormat: eachVisible((cell, { store }) => store.numberFormats(cell)[0]?.[0]),
    cellAddresses: eachVisible((cell, document) => addressOf(cell, sheetOf(document, cell.sheetId).name)),
  },
  finds: { getRange: (area) => object("Range", area) },
};
