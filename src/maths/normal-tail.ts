/** Below this the series converges quickly, above it the continued fraction. */
const seriesUpTo = 3;
const fractionSteps = 60;

/**
 * The chance that a standard normal value is z or more, 0 to 1.
 *
 * Formula:  z <= 3: 1/2 - f(z) (z + z^3/3 + z^5/(3 5) + ...); beyond: f(z) / (z + 1/(z + 2/(z + 3/(z + ...))))
 *           f(z) = exp(-z^2 / 2) / sqrt(2 pi)
 * Source:   [abramowitz-stegun-1964] 26.2.11 and 26.2.14
 *
 * @example normalTail(1.959964) // 0.025
 */
export function normalTail(z: number): number {
  if (z < 0) return 1 - normalTail(-z);
  const density = Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  if (z > seriesUpTo) {
    let below = z;
    for (let step = fractionSteps; step > 0; step--) below = z + step / below;
    return density / below;
  }
  let [sum, term, odd] = [0, z, 1];
  while (sum + term !== sum) {
    sum += term;
    odd += 2;
    term *= (z * z) / odd;
  }
  return 1 / 2 - density * sum;
}
