import type { ErrorValue } from "../host/functions-host";
import { parseArea, sheetRows } from "../host/excel/area";
import { HostError } from "../host/excel/host-error";
import { keyOf } from "./areas";
import type { EngineSheet } from "./engine-sheet";
import { withReason } from "./error-reasons";
import { outsideText } from "./formula-text";

/** As many cells as one range of a formula may span: the engine walks through each of them, filled or not. */
export const mostReadCells = 32 * sheetRows;

const range = /(?<![\p{L}\p{N}_.$])[$A-Z\d]{1,12}:[$A-Z\d]{1,12}(?![\p{L}\p{N}_.(])/giu;

/** How many cells the widest range of a formula spans. */
export function widestRange(formula: string): number {
  let widest = 0;
  outsideText(formula, (code) => {
    for (const [found] of code.matchAll(range)) {
      widest = Math.max(widest, cellsIn(found));
    }
    return code;
  });
  return widest;
}

/** 0 for what is no range of a sheet: the engine has its own word for it. */
function cellsIn(address: string): number {
  try {
    const area = parseArea(address, "");
    return area === undefined ? 0 : area.rowCount * area.columnCount;
  } catch (problem) {
    if (problem instanceof HostError) return 0;
    throw problem;
  }
}

/** The formulas that would keep the engine busy for minutes, each with the reason for which it is not computed. */
export function outOfReach(sheets: readonly EngineSheet[]): ReadonlyMap<string, ErrorValue> {
  const said = withReason("#VALUE!", `it reads a range of more than ${mostReadCells} cells: name the rows that are filled`);
  const tooWide = sheets.flatMap(({ cells }, sheet) =>
    cells.flatMap(({ address, formula }) =>
      formula !== undefined && widestRange(formula) > mostReadCells ? [keyOf(sheet, address)] : []));
  return new Map(tooWide.map((key) => [key, said]));
}
