import { type Argument, type Cells } from "./cells";
import { type Answer, asError, outgoing } from "./outgoing";

// How a column of a hundred thousand rows is answered at the speed of a bare loop. What it means stands in answers.ts;
// here only cells are let by that need no reading: plain numbers within the limits that an argument's check carries.

export type Formula = (...values: unknown[]) => Answer;
export type AnswerAt = (row: number, column: number) => unknown;

/** An argument of one cell a row, or one value for all rows. */
interface QuickArgument {
  readonly cells: Cells | undefined;
  readonly above: number;
  readonly upTo: number;
  readonly value: unknown;
}

/**
 * A column of answers; any row that is not plain is left to `careful`. `undefined` where an argument has no such
 * limits.
 */
export function quickColumn(
  formula: Formula,
  parts: readonly Argument<unknown>[],
  rows: number,
  careful: AnswerAt,
): Cells | undefined {
  const quick = parts.flatMap((part) => quickArgument(part, rows) ?? []);
  if (quick.length < parts.length) return undefined;
  const [first, second] = quick;
  const isPair = quick.length === 2 && first?.cells !== undefined && second?.cells !== undefined;
  return isPair ? pairColumn(formula, [first, second], rows, careful) : anyColumn(formula, quick, rows, careful);
}

function quickArgument(part: Argument<unknown>, rows: number): QuickArgument | undefined {
  const { cells, quick } = part;
  if (cells?.length === rows && rows > 1) {
    return quick === undefined ? undefined : { cells, above: quick[0], upTo: quick[1], value: undefined };
  }
  const value = readOnce(part);
  return value === undefined ? undefined : { cells: undefined, above: NaN, upTo: NaN, value };
}

/** The one value of all rows; `undefined` where it is blank or refused, which `careful` then says of each row. */
function readOnce({ cells, read, otherwise }: Argument<unknown>): unknown {
  if (cells === null || cells === undefined) return otherwise;
  try {
    return read(cells[0]?.[0]) ?? otherwise;
  } catch {
    return undefined;
  }
}

/** Two columns of readings, the commonest call of all. */
function pairColumn(
  formula: Formula,
  [first, second]: readonly [QuickArgument, QuickArgument],
  rows: number,
  careful: AnswerAt,
): Cells {
  const { above: aboveA, upTo: upToA, cells: cellsA } = first;
  const { above: aboveB, upTo: upToB, cells: cellsB } = second;
  const answers = new Array<unknown[]>(rows);
  for (let row = 0; row < rows; row++) {
    const a = cellsA?.[row]?.[0];
    const b = cellsB?.[row]?.[0];
    const plain =
      typeof a === "number" && a > aboveA && a <= upToA && typeof b === "number" && b > aboveB && b <= upToB;
    answers[row] = [plain ? pairAnswer(formula, a, b) : careful(row, 0)];
  }
  return answers;
}

function pairAnswer(formula: Formula, a: number, b: number): unknown {
  try {
    return outgoing(formula(a, b));
  } catch (problem) {
    return asError(problem);
  }
}

function anyColumn(formula: Formula, quick: readonly QuickArgument[], rows: number, careful: AnswerAt): Cells {
  const answers = new Array<unknown[]>(rows);
  const values = quick.map(({ value }) => value);
  for (let row = 0; row < rows; row++)
    answers[row] = [areFilled(values, quick, row) ? answered(formula, values) : careful(row, 0)];
  return answers;
}

/** Takes over the row's values; whether all of them are plain. */
function areFilled(values: unknown[], quick: readonly QuickArgument[], row: number): boolean {
  for (let at = 0; at < quick.length; at++) {
    const { cells, above, upTo } = quick[at] ?? {};
    if (cells === undefined) continue;
    const cell = cells[row]?.[0];
    if (!(typeof cell === "number" && cell > (above ?? NaN) && cell <= (upTo ?? NaN))) return false;
    values[at] = cell;
  }
  return true;
}

/** Spread arguments cost as much as the formula: the usual counts are spelled out. */
function answered(formula: Formula, values: readonly unknown[]): unknown {
  try {
    if (values.length === 1) return outgoing(formula(values[0]));
    if (values.length === 2) return outgoing(formula(values[0], values[1]));
    if (values.length === 3) return outgoing(formula(values[0], values[1], values[2]));
    if (values.length === 4) return outgoing(formula(values[0], values[1], values[2], values[3]));
    return outgoing(formula(...values));
  } catch (problem) {
    return asError(problem);
  }
}
