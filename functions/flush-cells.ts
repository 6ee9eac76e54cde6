import {
  type Dose,
  type FlushLeft,
  type FlushPlan,
  type FlushReading,
  type Litres,
  litres,
  type Percent,
  Refusal,
  type Share,
} from "../src/index";
import { type Answer, single, table } from "./answers";
import { amount, type Argument, type Cells, reading, series } from "./cells";

/** The rows of a flush. Readings come as they stand, because the stop check itself says which cannot be believed. */
export function flushReadings(
  runoffEc: Cells,
  others: { runoffPh?: Cells; litresPoured: Cells | undefined },
): FlushReading[] {
  const asWritten = (value: number): number => value;
  const ecs = series(reading(runoffEc, asWritten, "runoff EC"));
  const phs = besides(ecs, others.runoffPh, reading(others.runoffPh, asWritten, "runoff pH"));
  const portions = besides(ecs, others.litresPoured, amount<Litres>(others.litresPoured, litres, "litres poured"));
  return ecs.map((ec, row) => ({ ph: phs[row], ec, litres: portions[row] }));
}

/** A series that must be as long as the EC readings, unless it was left out. */
function besides<T>(
  ecs: readonly unknown[],
  cells: Cells | null | undefined,
  argument: Argument<T>,
): (T | undefined)[] {
  const values = series(argument);
  if (cells === null || cells === undefined || values.length === ecs.length) return values;
  throw new Refusal("impossible", {
    quantity: `${argument.called} of ${values.length} beside runoff EC of ${ecs.length} cells`,
    allowed: "of the same length",
  });
}

/** A value that a call cannot do without. */
export function needed<T>(value: T | undefined, quantity: string, next?: string): T {
  if (value !== undefined) return value;
  throw new Refusal("missing", { quantity, next });
}

/** Blank while something is missing, so that a prepared sheet stays quiet; `explain` says what is missing. */
export function orBlank(explain: boolean, call: () => Cells): Cells {
  try {
    return call();
  } catch (problem) {
    if (!(problem instanceof Refusal && problem.code === "missing")) throw problem;
    return explain ? [["", problem.message]] : single(undefined);
  }
}

export function percentStrength(value: number, called: string): Percent {
  if (value > 0 && value <= 100) return value as Percent;
  throw new Refusal("impossible", {
    quantity: called,
    given: value,
    unit: "%",
    allowed: "above 0, up to 100 % by mass, from the bottle",
  });
}

export function portionShare(value: number, called: string): Share {
  if (value > 0 && value <= 1) return value as Share;
  throw new Refusal("impossible", { quantity: called, given: value, allowed: "above 0, up to 1" });
}

/** Answers with their reasons to the right, row by row. */
export const besideEach = (answers: Cells, reasons: Cells): Cells =>
  answers.map((row, at) => [...row, ...(reasons[at] ?? [])]);

export const doseCells = ({ measured, reasons }: Dose, explain: boolean): Cells =>
  withReasons(measured, reasons, explain);

export const leftCells = ({ litres, reasons }: FlushLeft, explain: boolean): Cells =>
  withReasons(litres, reasons, explain);

const withReasons = (answer: Answer, reasons: readonly string[], explain: boolean): Cells =>
  table([explain ? [answer, reasons.join("; ")] : [answer]]);

/** The plan as it spills: a header, the portions, and a closing line where there is something to say. */
export function planCells({ portions, neededLitres, limitLitres, capped }: FlushPlan): Cells {
  const shown = (value: number): number => Number(value.toFixed(2));
  const closing: Answer[][] = [];
  if (capped) {
    const text = `stop here: over-flush limit ${shown(limitLitres)} L; by the model the target needs ${shown(neededLitres)} L`;
    closing.push([text, "", "", ""]);
  }
  if (portions.length === 0) closing.push(["nothing to pour: the runoff is at the target", "", "", ""]);
  return table([
    ["portion", "litres", "litres so far", "expected runoff EC"],
    ...portions.map(({ portion, litres, litresSoFar, expectedEc }) => [portion, litres, litresSoFar, expectedEc]),
    ...closing,
  ]);
}
