import { Refusal } from "../src/index";
import { content, numberIn } from "./cell-content";

export { CellError, content, numberIn } from "./cell-content";

/** A range as the host hands it over: rows of raw cells. */
export type Cells = unknown[][];

/** Reads one raw cell: its value, `undefined` for a blank, or a thrown Refusal. */
export type Read<T> = (cell: unknown) => T | undefined;

/** A range and the way to read its cells. */
export interface Argument<T> {
  readonly cells: Cells | null | undefined;
  readonly read: Read<T>;
  /** In words, for a refusal about its shape. */
  readonly called: string;
  /** What a blank or an argument left out stands for; without it a blank makes the answer blank. */
  readonly otherwise?: T | undefined;
  /** A plain number above the first and up to the second needs no further look. */
  readonly quick?: readonly [above: number, upTo: number] | undefined;
}

/**
 * A reading for which 0 means "not measured", because the desktop host hands a blank cell over as 0: EC, pH,
 * temperature.
 */
export function reading<T extends number>(
  cells: Cells | null | undefined,
  check: (value: number, called: string) => T,
  called: string,
  otherwise?: T,
): Argument<T> {
  const unit = unitOf(check);
  const read = (cell: unknown): T | undefined => {
    const value = numberIn(cell, called, unit);
    return value === undefined || value === 0 ? undefined : check(value, called);
  };
  return { cells, read, called, otherwise, quick: quickLimits(check, "0 may be a blank") };
}

/** The unit that a check carries with it. */
const unitOf = (check: object): string | undefined => (check as { unit?: string }).unit;

/** The limits that a check carries with it. */
function quickLimits(check: object, zero: "0 may be a blank" | "0 is a value"): Argument<unknown>["quick"] {
  const { physical } = check as { physical?: readonly [number, number] };
  if (physical === undefined) return undefined;
  const least = zero === "0 is a value" ? justBelowZero : 0;
  return [Math.max(least, physical[0]), physical[1]];
}

const justBelowZero = -Number.MIN_VALUE;

/** An amount for which 0 is a value: a volume that did not run off, a day count. */
export function amount<T extends number>(
  cells: Cells | null | undefined,
  check: (value: number, called: string) => T,
  called: string,
  otherwise?: T,
): Argument<T> {
  const unit = unitOf(check);
  const read = (cell: unknown): T | undefined => {
    const value = numberIn(cell, called, unit);
    return value === undefined ? undefined : check(value, called);
  };
  return { cells, read, called, otherwise, quick: quickLimits(check, "0 is a value") };
}

/**
 * The same argument where a blank is a fact of its own: it reaches the formula as `null` instead of making the answer
 * blank.
 */
export const ifTaken = <T>(argument: Argument<T>): Argument<T | null> => ({ ...argument, otherwise: null });

/** A word such as a unit or a medium. The number 0 is a blank cell of the desktop host, never a word. */
export function word(cells: Cells | null | undefined, called: string, otherwise?: string): Argument<string> {
  const read = (cell: unknown): string | undefined => {
    const value = content(cell);
    return value === undefined || value === 0 ? undefined : String(value);
  };
  return { cells, read, called, otherwise };
}

/** A word that names one of a few things: looked up once for each word that a column holds. */
export function choice<T>(
  cells: Cells | null | undefined, called: string, named: (text: string) => T, otherwise?: T,
): Argument<T> {
  const { read } = word(cells, called);
  const known = new Map<string, T>();
  const lookedUp = (text: string): T => {
    const found = known.get(text) ?? named(text);
    known.set(text, found);
    return found;
  };
  return {
    cells,
    called,
    otherwise,
    read: (cell) => {
      const text = read(cell);
      return text === undefined ? undefined : lookedUp(text);
    },
  };
}

/** TRUE or FALSE; 1, 0 and their words are taken too, as the host's own functions take them. */
export function flag(cells: Cells | null | undefined, called: string, otherwise: boolean): boolean {
  const value = one({ cells, read: content, called });
  if (value === undefined) return otherwise;
  if (typeof value === "boolean") return value;
  if (typeof value === "number") return value !== 0;
  if (/^(true|yes|1)$/i.test(value)) return true;
  if (/^(false|no|0)$/i.test(value)) return false;
  throw new Refusal("unknown-choice", { quantity: called, given: value, allowed: "TRUE or FALSE" });
}

/** One value from an argument of one cell: `undefined` when it is blank or left out and nothing stands for it. */
export function one<T>(argument: Argument<T>): T | undefined {
  const { cells, read, otherwise } = argument;
  if (cells === null || cells === undefined) return otherwise;
  if (cells.length > 1 || (cells[0]?.length ?? 0) > 1) {
    throw new Refusal("impossible", { quantity: argument.called, given: shapeOf(cells), allowed: "one cell" });
  }
  return read(cells[0]?.[0]) ?? otherwise;
}

/** Readings in order from one column or one row; blanks keep their place as `undefined`. */
export function series<T>(argument: Argument<T>): (T | undefined)[] {
  const { cells, read, called } = argument;
  if (cells === null || cells === undefined) return [];
  const across = cells.length === 1;
  if (!across && cells.some((row) => row.length !== 1)) {
    throw new Refusal("impossible", { quantity: called, given: shapeOf(cells), allowed: "one column or one row" });
  }
  return (across ? (cells[0] ?? []) : cells.map((row) => row[0])).map((cell) => read(cell));
}

export const shapeOf = (cells: Cells): string => `${cells.length} x ${cells[0]?.length ?? 0}`;
