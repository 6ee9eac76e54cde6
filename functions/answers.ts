import { type Judgement, Refusal } from "../src/index";
import { type Argument, type Cells, shapeOf } from "./cells";
import { type Answer, asError, outgoing } from "./outgoing";
import { type AnswerAt, type Formula, quickColumn } from "./quick-column";

export { type Answer } from "./outgoing";

/**
 * Answers cell by cell. Equal shapes pair up and a single cell stretches along a range. A blank in a required argument
 * makes that answer blank; a Refusal makes it an error with its reason; no NaN, Infinity, null or undefined ever
 * leaves.
 */
export function eachCell<T extends any[]>(
  formula: (...values: T) => Answer,
  ...args: { [K in keyof T]: Argument<T[K]> }
): Cells {
  return whole(() => {
    const parts = args as Argument<unknown>[];
    const [rows, columns] = commonShape(parts);
    const readers = parts.map(readerAt);
    const careful: AnswerAt = (row, column) => answerAt(formula as Formula, readers, row, column);
    if (columns === 1) return quickColumn(formula as Formula, parts, rows, careful) ?? column(rows, careful);
    return Array.from({ length: rows }, (_, row) => Array.from({ length: columns }, (__, each) => careful(row, each)));
  });
}

type ReadAt = (row: number, column: number) => unknown;

function column(rows: number, answer: AnswerAt): Cells {
  const answers = new Array<unknown[]>(rows);
  for (let row = 0; row < rows; row++) answers[row] = [answer(row, 0)];
  return answers;
}

function answerAt(formula: Formula, readers: readonly ReadAt[], row: number, column: number): unknown {
  try {
    const values: unknown[] = [];
    for (const readAt of readers) {
      const value = readAt(row, column);
      if (value === undefined) return "";
      values.push(value);
    }
    return outgoing(formula(...values));
  } catch (problem) {
    return asError(problem);
  }
}

/** A reader of one argument at a place in the common shape; a single cell is read once. */
function readerAt({ cells, read, otherwise }: Argument<unknown>): ReadAt {
  if (cells === null || cells === undefined) return () => otherwise;
  if (!isSingle(cells)) return (row, column) => read(cells[row]?.[column]) ?? otherwise;
  let known = false;
  let value: unknown;
  return () => {
    if (!known) value = read(cells[0]?.[0]) ?? otherwise;
    known = true;
    return value;
  };
}

const isSingle = (cells: Cells): boolean => cells.length === 1 && cells[0]?.length === 1;

function commonShape(parts: readonly Argument<unknown>[]): [rows: number, columns: number] {
  const given = parts.filter((part): part is Argument<unknown> & { cells: Cells } => part.cells != null);
  const [first, ...others] = given.filter(({ cells }) => !isSingle(cells));
  if (first === undefined) return [1, 1];
  for (const other of others) {
    if (shapeOf(other.cells) === shapeOf(first.cells)) continue;
    throw new Refusal("impossible", {
      quantity: `${other.called} of ${shapeOf(other.cells)} beside ${first.called} of ${shapeOf(first.cells)} cells`,
      allowed: "ranges of the same shape, or a single cell",
    });
  }
  return [first.cells.length, first.cells[0]?.length ?? 0];
}

/** Runs a whole call: a Refusal that concerns all of it becomes the host's error with the reason as its message. */
export function whole(call: () => Cells): Cells {
  try {
    return call();
  } catch (problem) {
    throw asError(problem);
  }
}

/** A table that spills: every cell checked on its way out. */
export const table = (rows: readonly (readonly Answer[])[]): Cells => rows.map((row) => row.map(outgoing));

/** One answer for the whole call. */
export const single = (answer: Answer): Cells => [[outgoing(answer)]];

/** A judgement in words; with `explain` its reasons stand in the cell to the right. */
export const judged = ({ answer, reasons }: Judgement<string>, explain: boolean): Cells =>
  explain ? [[answer, reasons.join("; ")]] : [[answer]];
