import type { IRange } from "@univerjs/core";
import { areaAt, type Area } from "../host/excel/area";

/** An area as the grid component writes it. */
export function rangeIn({ row, column, rowCount, columnCount }: Area): IRange {
  return { startRow: row, startColumn: column, endRow: row + rowCount - 1, endColumn: column + columnCount - 1 };
}

/** And the way back. */
export function areaIn(sheetId: string, { startRow, startColumn, endRow, endColumn }: IRange): Area {
  return areaAt(sheetId, startRow, startColumn, endRow - startRow + 1, endColumn - startColumn + 1);
}
