import { cellRef, rangeRef, type ColumnDef, type Sheet } from "hucre";
import type { BookChart, BookLook, SheetLooks } from "../book";
import { cellLook } from "./cell-look";
import { conditionalFormats } from "./conditional-formats";
import { validations } from "./validations";

/** What a file says of a sheet beside its values. */
export function sheetLooks(sheet: Sheet): SheetLooks {
  const { rowDefs = [], freezePane, view, merges = [] } = sheet;
  const columns: readonly (ColumnDef | undefined)[] = sheet.columns ?? [];
  const widths = [...columns.entries()].flatMap(([column, definition]): [number, number][] =>
    definition?.width === undefined ? [] : [[column, definition.width]]);
  const heights = [...rowDefs].flatMap(([row, { height }]): [number, number][] => (height === undefined ? [] : [[row, height]]));
  return {
    cells: cellLooks(sheet),
    columnWidths: new Map(widths),
    rowHeights: new Map(heights),
    hiddenColumns: new Set([...columns.keys()].filter((column) => columns[column]?.hidden === true)),
    frozen: { rows: freezePane?.rows ?? 0, columns: freezePane?.columns ?? 0 },
    gridLines: view?.showGridLines !== false,
    merged: merges.map(({ startRow, startCol, endRow, endCol }) => rangeRef(startRow, startCol, endRow, endCol)),
    isHidden: sheet.hidden === true || sheet.veryHidden === true,
    conditionalFormats: conditionalFormats(sheet),
    validations: validations(sheet),
    charts: charts(sheet),
    notes: notes(sheet),
  };
}

function cellLooks({ cells }: Sheet): Map<string, BookLook> {
  return new Map([...(cells ?? [])].flatMap(([key, { style }]): [string, BookLook][] => {
    if (style === undefined) return [];
    const look = cellLook(style);
    return [[addressOf(key), style.numFmt === undefined ? look : { ...look, numberFormat: style.numFmt }]];
  }));
}

function notes({ cells }: Sheet): Map<string, string> {
  return new Map([...(cells ?? [])].flatMap(([key, { comment }]): [string, string][] => (comment === undefined ? [] : [[addressOf(key), comment.text]])));
}

function addressOf(key: string): string {
  const [row = 0, column = 0] = key.split(",").map(Number);
  return cellRef(row, column);
}

/** A chart that is placed by the page and not by cells is left out. */
function charts({ charts: held = [] }: Sheet): BookChart[] {
  return held.flatMap(({ kinds, title, series = [], anchor }) => {
    if (anchor === undefined) return [];
    const { from, to = { row: from.row + 15, col: from.col + 5 } } = anchor;
    const [kind = "line"] = kinds;
    const sources = series.flatMap(({ valuesRef }) => (valuesRef === undefined ? [] : [valuesRef]));
    const over = rangeRef(from.row, from.col, Math.max(from.row, to.row - 1), Math.max(from.col, to.col - 1));
    return [{ type: kind.charAt(0).toUpperCase() + kind.slice(1), title: title ?? "", sources, over }];
  });
}
