import { type Judgement, Refusal } from "../src/index";
import { type Argument, CellError, type Cells, shapeOf } from "./cells";

/** What a formula may answer for one cell; `undefined` is a blank. */
export type Answer = number | string | boolean | undefined;

/**
 * Answers cell by cell. Equal shapes pair up and a single cell stretches along a range. A blank in a required argument
 * makes that answer blank; a Refusal makes it an error with its reason; no NaN, Infinity, null or undefined ever leaves.
 */
export function eachCell<T extends any[]>(
  formula: (...values: T) => Answer,
  ...args: { [K in keyof T]: Argument<T[K]> }
): Cells {
  return whole(() => {
    const parts = args as Argument<unknown>[];
    const [rows, columns] = commonShape(parts);
    const read = parts.map((part) => cellReader(part));
    const call = formula as (...values: unknown[]) => Answer;
    const answers: Cells = new Array<unknown[]>(rows);
    for (let row = 0; row < rows; row++) {
      const line: unknown[] = new Array<unknown>(columns);
      for (let column = 0; column < columns; column++) line[column] = oneAnswer(call, read, row, column);
      answers[row] = line;
    }
    return answers;
  });
}

type ReadAt = (row: number, column: number) => unknown;

function oneAnswer(call: (...values: unknown[]) => Answer, read: readonly ReadAt[], row: number, column: number): unknown {
  try {
    const values: unknown[] = [];
    for (const readAt of read) {
      const value = readAt(row, column);
      if (value === undefined) return "";
      values.push(value);
    }
    return outgoing(call(...values));
  } catch (problem) {
    return asError(problem);
  }
}

/** A reader of one argument at a place in the common shape; a single cell is read once. */
function cellReader({ cells, read, otherwise }: Argument<unknown>): ReadAt {
  if (cells === null || cells === undefined) return () => otherwise;
  if (isSingle(cells)) {
    let known = false;
    let value: unknown;
    return () => {
      if (!known) value = read(cells[0]?.[0]) ?? otherwise;
      known = true;
      return value;
    };
  }
  return (row, column) => read(cells[row]?.[column]) ?? otherwise;
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

/** The last gate: only a finite number, a text, a boolean or an error passes. */
function outgoing(answer: Answer): unknown {
  if (typeof answer === "number") {
    return Number.isFinite(answer) ? answer : error("#N/A", "this has no finite answer: check the readings");
  }
  return answer ?? "";
}

function error(code: string, message: string): CustomFunctions.Error {
  const known = code === "#N/A" ? CustomFunctions.ErrorCode.notAvailable : CustomFunctions.ErrorCode.invalidValue;
  return new CustomFunctions.Error(known, message);
}

/** Codes for which no answer can exist, rather than an input being wrong. */
const noAnswerExists = new Set(["outside-validity", "not-enough-readings"]);

export function asError(problem: unknown): CustomFunctions.Error {
  if (problem instanceof CustomFunctions.Error) return problem;
  if (problem instanceof Refusal) return error(noAnswerExists.has(problem.code) ? "#N/A" : "#VALUE!", problem.message);
  if (problem instanceof CellError) return error(problem.code, problem.message);
  return error("#VALUE!", "this formula met a fault of its own: please report it with the cells it was given");
}
