/** One step of both running sums. */
export interface CusumStep {
  readonly high: number;
  readonly low: number;
}

/**
 * Tabular CUSUM: how far the values have run off above and below a target, small steps added up.
 *
 * Feeds the drift alarm, which sees a slow slide that no single reading shows.
 *
 * Formula:  high_i = max(0, high_(i-1) + x_i - target - k); low_i = max(0, low_(i-1) + target - k - x_i); both start at
 *           0
 * Source:   [nist-handbook] 6.3.2.3
 *
 * @param slack k, in the unit of the values: what each value may be off without adding
 * @example cusum([10, 11, 12], 10, 0.5) // [{high: 0, low: 0}, {high: 0.5, low: 0}, {high: 2, low: 0}]
 */
export function cusum(values: readonly number[], target: number, slack: number): readonly CusumStep[] {
  let step: CusumStep = { high: 0, low: 0 };
  return values.map((value) => {
    step = {
      high: Math.max(0, step.high + value - target - slack),
      low: Math.max(0, step.low + target - slack - value),
    };
    return step;
  });
}
