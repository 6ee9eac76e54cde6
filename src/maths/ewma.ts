/**
 * Exponentially weighted moving average: the level of the values so far, the latest weighing most.
 *
 * Feeds the words of the drift alarm: where the readings stand now, with one odd reading toned down.
 *
 * Formula:  e_i = w x_i + (1 - w) e_(i-1); e_0 = start
 * Source:   [nist-handbook] 6.3.2.4
 *
 * @param weight w, above 0 to 1; 0.2 to 0.3 is usual
 * @returns one level a value, in the unit of the values
 * @example ewma([52, 47], 50, 0.3) // [50.6, 49.52]
 */
export function ewma(values: readonly number[], start: number, weight: number): readonly number[] {
  let level = start;
  return values.map((value) => {
    level = weight * value + (1 - weight) * level;
    return level;
  });
}
