import { BooleanNumber, BorderStyleTypes, InterceptorEffectEnum, type ICellData, type IStyleData } from "@univerjs/core";
import { INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { BookRecords, TableRecord } from "../host/excel/book-records";
import type { Grid } from "./grid";

/** Before the grid's conditional formats, which win over a table's look. */
const priority = 20;
const line = { s: BorderStyleTypes.THIN, cl: { rgb: "#8fa39a" } };
const header: IStyleData = { bl: BooleanNumber.TRUE, bg: { rgb: "#e3ece4" }, bd: { b: line } };
const totals: IStyleData = { bl: BooleanNumber.TRUE, bd: { t: line } };
const band: IStyleData = { bg: { rgb: "#f5f8f5" } };
const lastRow: IStyleData = { bd: { b: line } };

/** Shows tables: a header, every other row shaded, a line at the end. What a cell is given of its own comes first. */
export function showTables({ univer }: Grid, records: BookRecords): void {
  univer.__getInjector().get(SheetInterceptorService).intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    effect: InterceptorEffectEnum.Style,
    priority,
    handler: (cell, { row, col, subUnitId, workbook, rawData }, next) => {
      const table = records.tables.find(({ area }) => area.sheetId === subUnitId && holds(area, row, col));
      const look = table === undefined ? undefined : lookIn(table, row);
      if (look === undefined) return next(cell);
      const own = workbook.getStyles().getStyleByCell(cell) ?? {};
      const shown: ICellData = cell === rawData ? { ...cell } : (cell ?? {});
      return next(Object.assign(shown, { s: { ...look, ...own } }));
    },
  });
}

function holds({ row, column, rowCount, columnCount }: TableRecord["area"], atRow: number, atColumn: number): boolean {
  return atRow >= row && atRow < row + rowCount && atColumn >= column && atColumn < column + columnCount;
}

function lookIn({ area, showTotals }: TableRecord, row: number): IStyleData | undefined {
  const place = row - area.row;
  if (place === 0) return header;
  const isLast = place === area.rowCount - 1;
  if (isLast && showTotals) return totals;
  const shade = place % 2 === 0 ? band : undefined;
  return isLast ? { ...shade, ...lastRow } : shade;
}
