/**
 * Comparisons with a limit, made at the meter's resolution: 2.4 / 1.6 is 1.4999999999999998 in floating point and still
 * equals 1.5 to anyone holding a meter.
 *
 * Formula:  above = value - limit > half a step; below = limit - value > half a step
 * Source:   common practice
 */
export const isAbove = (value: number, limit: number, resolution: number): boolean => value - limit > resolution / 2;

/** The mirror of `isAbove`. */
export const isBelow = (value: number, limit: number, resolution: number): boolean => limit - value > resolution / 2;

/** Where a value stands against a pair of limits, both of which still belong to the inside. */
export function standing(
  value: number,
  [low, high]: readonly [number, number],
  resolution: number,
): "low" | "inside" | "high" {
  if (isBelow(value, low, resolution)) return "low";
  if (isAbove(value, high, resolution)) return "high";
  return "inside";
}
