import { Refusal } from "../refusal";

/**
 * Mean and standard deviation of a sample.
 *
 * Formula:  mean = sum(x) / n; scatter = sqrt(sum (x - mean)^2 / (n - 1))
 * Source:   [nist-handbook] 1.3.5.6
 *
 * @throws {Refusal} `not-enough-readings` with fewer than two values
 * @example meanAndScatter([1, 2, 3]) // { mean: 2, scatter: 1 }
 */
export function meanAndScatter(values: readonly number[]): { readonly mean: number; readonly scatter: number } {
  const { length } = values;
  if (length < 2) throw new Refusal("not-enough-readings", { quantity: "scatter", given: length, allowed: "2" });
  const mean = values.reduce((sum, value) => sum + value, 0) / length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return { mean, scatter: Math.sqrt(squares / (length - 1)) };
}
