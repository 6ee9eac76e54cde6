import { type Litres } from "../quantities";
import { type FlushReading, litresPoured } from "./flush-reading";

/** A single portion of more than this many pot volumes was typed in mL, or is no portion. Common practice. */
const mostPotVolumes = 5;

/** Portions of which each exceeds the one before by about the first are running totals: 2, 4, 6. Common practice. */
const fewestPortions = 3;
const stepTolerance = 0.25;

/** Why the litres of a flush cannot be portions in litres, in words; `undefined` when they can. */
export function doubtfulPortions(readings: readonly FlushReading[], containerLitres?: Litres): string | undefined {
  const portions = readings.map(({ litres }) => litres ?? 0).filter((litres) => litres > 0);
  const huge =
    containerLitres === undefined ? undefined : portions.find((litres) => litres > mostPotVolumes * containerLitres);
  if (huge !== undefined) {
    return `a portion of ${huge} L beside a pot of ${containerLitres} L: are these mL? Give both in litres`;
  }
  return areTotals(portions)
    ? `the litres look like running totals (${portions.join(", ")}): enter what was poured each time, not ${litresPoured(readings)} L in all`
    : undefined;
}

function areTotals(portions: readonly number[]): boolean {
  const [first] = portions;
  if (first === undefined || portions.length < fewestPortions) return false;
  return portions
    .slice(1)
    .every((litres, at) => Math.abs(litres - (portions[at] ?? 0) - first) <= stepTolerance * first);
}
