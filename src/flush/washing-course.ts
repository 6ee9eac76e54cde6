import { isAbove, isBelow } from "../maths/compare";
import { type Ec25, quantities } from "../quantities";
import { meterTolerance } from "../readings/series-unit";

/** Where the runoff EC is going while water is poured. */
export type WashingCourse = "too few" | "falling" | "flat" | "rising";

/**
 * Whether the last readings of a flush still fall, from the readings that were taken, in order.
 *
 * Feeds the stop check and the litres left. Errs to measuring again: only a fall beyond the meter's tolerance is a
 * fall, and only three readings within it are flat.
 *
 * Formula:  against the previous reading first; where that says nothing, against the one before it
 * Source:   common practice
 *
 * @param ecs mS/cm at 25 C
 * @example washingCourse([5, 4.2, 3.6] as Ec25[]) // "falling"
 */
export function washingCourse(ecs: readonly Ec25[]): WashingCourse {
  if (!ecs.every(Number.isFinite)) return "too few";
  const [last, previous, before] = ecs.slice(-3).reverse();
  if (last === undefined || previous === undefined) return "too few";
  const step = change(last, previous);
  if (step !== "flat") return step;
  return before === undefined ? "too few" : change(last, before);
}

function change(last: Ec25, earlier: Ec25): "falling" | "flat" | "rising" {
  const tolerance = meterTolerance(earlier);
  const { resolution } = quantities.ec;
  if (isAbove(last, earlier + tolerance, resolution)) return "rising";
  if (isBelow(last, earlier - tolerance, resolution)) return "falling";
  return "flat";
}
