import type { ErrorValue } from "../host/functions-host";
import { parseArea, sheetRows } from "../host/excel/area";
import { HostError } from "../host/excel/host-error";
import { keyOf } from "./areas";
import type { EngineName, EngineSheet } from "./engine-sheet";
import { withReason } from "./error-reasons";
import { outsideText } from "./formula-text";

/** As many cells as whole columns or rows of a formula may span: the engine walks through those that are filled. */
export const mostReadCells = 32 * sheetRows;
/** As many cells named one by one as the engine computes with in seconds; of `A1:A1048576` it walks through every one, filled or not. */
export const mostNamedCells = 2_000_000;
export const tooManyCells = `it computes with more than ${mostNamedCells} cells: name the rows that are filled, or whole columns as in A:C`;

const range = /(?<![\p{L}\p{N}_.$])[$A-Z\d]{1,12}:[$A-Z\d]{1,12}(?![\p{L}\p{N}_.(])/giu;
const turning = /\b(?:TRANSPOSE|MMULT|TOROW|TOCOL|WRAPROWS|WRAPCOLS)\(/iu;

interface Span {
  readonly rows: number;
  readonly columns: number;
  /** Whether both its ends are cells. */
  readonly isNamed: boolean;
}

/** How many cells the widest range of a formula spans. */
export function widestRange(formula: string): number {
  return Math.max(0, ...spansOf(formula).map(({ rows, columns }) => rows * columns));
}

/** How many cells a formula computes with that it names one by one: a column beside a row makes a table of both, once for each range. */
export function namedCells(formula: string): number {
  const spans = spansOf(formula).filter(({ isNamed }) => isNamed);
  const [rows, columns] = [spans.map((span) => span.rows), spans.map((span) => span.columns)];
  const [longest = 0, next = 0] = [...rows, ...columns].sort((one, other) => other - one);
  const table = turning.test(formula) ? longest * next : Math.max(0, ...rows) * Math.max(0, ...columns);
  // To walk through one range takes half of what it takes to compute with two.
  return spans.length === 1 ? table / 2 : table * spans.length;
}

function spansOf(formula: string): Span[] {
  const spans: Span[] = [];
  outsideText(formula, (code) => {
    for (const [found] of code.matchAll(range)) spans.push(...spanOf(found));
    return code;
  });
  return spans;
}

/** None for what is no range of a sheet: the engine has its own word for it. */
function spanOf(address: string): Span[] {
  try {
    const area = parseArea(address, "");
    if (area === undefined) return [];
    return [{ rows: area.rowCount, columns: area.columnCount, isNamed: /^\$?[A-Z]+\$?\d+:\$?[A-Z]+\$?\d+$/iu.test(address) }];
  } catch (problem) {
    if (problem instanceof HostError) return [];
    throw problem;
  }
}

/** The formulas that would keep the engine busy for minutes, each with the reason for which it is not computed. */
export function outOfReach(sheets: readonly EngineSheet[], names: readonly EngineName[]): ReadonlyMap<string, ErrorValue> {
  const refused = new Map<string, ErrorValue>();
  for (const [sheet, { cells }] of sheets.entries()) {
    for (const { address, formula = "" } of cells) {
      const reason = reasonFor(withNames(formula, names));
      if (reason !== undefined) refused.set(keyOf(sheet, address), withReason("#VALUE!", reason));
    }
  }
  return refused;
}

/** A formula with what its names stand for beside it. */
function withNames(formula: string, names: readonly EngineName[]): string {
  const named = names.filter(({ name }) => formula.toLowerCase().includes(name.toLowerCase()));
  return [formula, ...named.map(({ refersTo }) => refersTo)].join(" ");
}

function reasonFor(formula: string): string | undefined {
  if (widestRange(formula) > mostReadCells) return `it reads a range of more than ${mostReadCells} cells: name the rows that are filled`;
  return namedCells(formula) > mostNamedCells ? tooManyCells : undefined;
}
