import type { FWorksheet } from "@univerjs/sheets/facade";
import type { Area } from "../host/excel/area";
import type { Box } from "../host/excel/sheet-store";

export const pixelsPerPoint = 96 / 72;
const usualDigitWidth = 7;

let knownDigitWidth: number | undefined;

/** How wide a digit of the usual font, or of what stands in for it on this machine, is in pixels: files give columns' widths in it. */
export function digitWidth(): number {
  const pen = knownDigitWidth === undefined ? document.createElement("canvas").getContext("2d") : null;
  if (pen !== null) {
    pen.font = "11pt Calibri, sans-serif";
    knownDigitWidth = Math.ceil(pen.measureText("0").width);
  }
  return knownDigitWidth ?? usualDigitWidth;
}

/** Where an area lies on its sheet, in points; hidden rows take no room. */
export function boxOf(sheet: FWorksheet, { row, column, rowCount, columnCount }: Area): Box {
  const shown = (each: number): boolean => sheet.getSheet().getRowVisible(each);
  const across = (from: number, count: number): number =>
    sum(count, (i) => (from + i < sheet.getMaxColumns() ? sheet.getColumnWidth(from + i) : 0));
  const down = (from: number, count: number): number =>
    sum(count, (i) => (from + i < sheet.getMaxRows() && shown(from + i) ? sheet.getRowHeight(from + i) : 0));
  return {
    left: across(0, column) / pixelsPerPoint,
    top: down(0, row) / pixelsPerPoint,
    width: across(column, Math.min(columnCount, sheet.getMaxColumns())) / pixelsPerPoint,
    height: down(row, Math.min(rowCount, sheet.getMaxRows())) / pixelsPerPoint,
  };
}

function sum(count: number, each: (i: number) => number): number {
  return Array.from({ length: count }, (_, i) => each(i)).reduce((total, value) => total + value, 0);
}
