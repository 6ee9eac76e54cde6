/** While a step is looked for, a rest smaller than this share of it is what rounding leaves. */
const restOfRounding = 1e-3;
/**
 * In the end every value has to stand this near to a whole number of steps: a millionth of a pen's step, of a logger's
 * pause.
 */
const nearEnough = 1e-6;
/**
 * As many steps from the first value to the last: products of two such counts are still exact in a number's 53 bits.
 */
const mostSteps = 2 ** 26;

/**
 * The one step that all values are whole numbers of apart: 0.1 for a pen that shows one decimal, 1/288 day for a logger
 * that reads every five minutes. `undefined` where there is none that coarse, or all values are equal.
 *
 * Feeds the median of slopes: counted in steps, equal slopes are equal and not almost so.
 *
 * Formula:  the greatest common divisor of the distances from the first value, by Euclid's algorithm with rests rounded
 *           off
 * Source:   [knuth-1997] 4.5.2
 *
 * @param sorted rising
 * @example commonStep(Float64Array.of(1, 5, 7)) // 2
 */
export function commonStep(sorted: Float64Array): number | undefined {
  const first = sorted[0] ?? NaN;
  const range = (sorted.at(-1) ?? NaN) - first;
  let step = NaN;
  for (const value of sorted) {
    if (value > first) step = step > 0 ? common(value - first, step) : value - first;
    if (step * mostSteps < range) return undefined;
  }
  const isOnStep = (value: number): boolean =>
    Math.abs((value - first) / step - Math.round((value - first) / step)) <= nearEnough;
  return step > 0 && sorted.every(isOnStep) ? step : undefined;
}

/** The step that goes into both, told as finely as the longer of the two allows. */
function common(distance: number, step: number): number {
  const count = Math.round(distance / step);
  let [larger, smaller] = [step, Math.abs(distance - count * step)];
  if (smaller <= restOfRounding * step) return distance / count;
  while (smaller > restOfRounding * larger) {
    [larger, smaller] = [smaller, Math.abs(larger - Math.round(larger / smaller) * smaller)];
  }
  return step / Math.round(step / larger);
}
