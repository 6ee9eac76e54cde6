import { isAbove, isBelow } from "../maths/compare";
import { type Ec25, quantities } from "../quantities";
import { meterTolerance } from "../readings/series-unit";

/** Where the runoff EC is going while water is poured. */
export type WashingCourse = "too few" | "falling" | "flat" | "rising";

/**
 * Whether the last readings of a flush still fall, from the readings that were taken, in order.
 *
 * Feeds the stop check and the litres left. Errs to less water: only a fall beyond the meter's tolerance is a fall, and
 * one of less than a twentieth over two portions is none.
 *
 * Formula:  against the previous reading first; where that says nothing, against the one before it
 * Source:   two readings, each within 3 % of its standard, are told apart from 5 % on [usgs-nfm]; the rest common
 *           practice
 *
 * @param ecs mS/cm at 25 C
 * @example washingCourse([5, 4.2, 3.6] as Ec25[]) // "falling"
 */
export function washingCourse(ecs: readonly Ec25[]): WashingCourse {
  if (!ecs.every(Number.isFinite)) return "too few";
  const [last, previous, before] = ecs.slice(-3).reverse();
  if (last === undefined || previous === undefined) return "too few";
  const step = change(last, previous);
  if (before === undefined) return step === "flat" ? "too few" : step;
  if (step === "rising" || (step === "flat" && change(last, before) === "rising")) return "rising";
  return isBelow(last, before * (1 - washingFall), quantities.ec.resolution) ? "falling" : "flat";
}

/** Two portions that take off less than this part do not wash. */
export const washingFall = 0.05;

function change(last: Ec25, earlier: Ec25): "falling" | "flat" | "rising" {
  const tolerance = meterTolerance(earlier);
  const { resolution } = quantities.ec;
  if (isAbove(last, earlier + tolerance, resolution)) return "rising";
  if (isBelow(last, earlier - tolerance, resolution)) return "falling";
  return "flat";
}
