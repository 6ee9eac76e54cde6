import { type CellProblem, type ColumnReading } from "../reading";
import { type Draft } from "./draft";

/** Fields of which a multiple tells something; a pH or a temperature has none. */
export type Multiple = "inputEc" | "runoffEc" | "inputLitres" | "runoffLitres";

/** Two kinds of figures this far apart are in two units, whatever happened in the pot. Common practice. */
const unitTimes = 100;

/**
 * The smaller of two groups of figures with a gap of a hundred times between them; the later one where they are as
 * many.
 */
export function inAnotherUnit(rows: readonly Draft[], field: Multiple, { column, unit }: ColumnReading): CellProblem[] {
  if (!mayHoldTwoUnits(rows, field)) return [];
  const filled = rows.filter((row) => (row[field] ?? 0) > 0);
  const sorted = Float64Array.from(filled, (row) => Number(row[field])).sort();
  const at = sorted.findIndex((value, place) => place > 0 && value >= (sorted[place - 1] ?? 0) * unitTimes);
  const limit = sorted[at];
  if (limit === undefined) return [];
  const [low, high] = [
    filled.filter((row) => Number(row[field]) < limit),
    filled.filter((row) => Number(row[field]) >= limit),
  ];
  const isHighOdd =
    high.length < low.length || (high.length === low.length && (high[0]?.row ?? 0) > (low[0]?.row ?? 0));
  const [odd, usual] = isHighOdd ? [high, low] : [low, high];
  const like = threeFigures(Number(usual[Math.floor(usual.length / 2)]?.[field]));
  return odd.map((draft) => {
    const value = threeFigures(Number(draft[field]));
    draft[field] = undefined;
    return {
      row: draft.row,
      column,
      used: false,
      reason: `${value} among readings near ${like} ${engineUnit(unit)}: in another unit? It is not converted`,
    };
  });
}

/** Whether the largest figure is a hundred times the least: seldom, and nothing else needs to be sorted. */
function mayHoldTwoUnits(rows: readonly Draft[], field: Multiple): boolean {
  let [least, greatest] = [Infinity, 0];
  for (const row of rows) {
    const value = row[field] ?? 0;
    if (value > 0 && value < least) least = value;
    if (value > greatest) greatest = value;
  }
  return greatest >= least * unitTimes;
}

const engineUnit = (unit: ColumnReading["unit"]): string =>
  ["L", "mL", "gal", "qt", "fl oz"].includes(String(unit)) ? "L" : "mS/cm";

/** A figure as it is told: three digits are enough to find it. */
export const threeFigures = (value: number): number => Number(value.toPrecision(3));
