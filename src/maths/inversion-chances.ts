/** The chance of each number of inversions, from 0 up, when a row of values is shuffled. */
export type Chances = Float64Array;

/**
 * How likely each number of inversions is in a shuffled row, of which some values are equal.
 *
 * Formula:  place the values group by group; a group of t equal values among m others makes Mann-Whitney's U inversions
 *           with them, independent of the groups before: the chances fold together
 * Source:   [kendall-1975]; the fold for ties is the q-multinomial [stanley-2011] 1.7.1
 *
 * @param count how many values
 * @param ties the sizes of the groups of equal values
 * @example inversionChances(3, []) // [1/6, 2/6, 2/6, 1/6]
 */
export function inversionChances(count: number, ties: readonly number[]): Chances {
  const tied = ties.reduce((sum, size) => sum + size, 0);
  const groups = [...ties, ...new Array<number>(count - tied).fill(1)];
  let chances: Chances = Float64Array.of(1);
  let placed = 0;
  for (const size of groups) {
    chances = folded(chances, crossings(placed, size));
    placed += size;
  }
  return chances;
}

/** The chances of a sum of two independent counts. */
function folded(a: Chances, b: Chances): Chances {
  const sums = new Float64Array(a.length + b.length - 1);
  for (const [i, chanceA] of a.entries()) {
    for (const [j, chanceB] of b.entries()) sums[i + j] = (sums[i + j] ?? 0) + chanceA * chanceB;
  }
  return sums;
}

/**
 * The chances of Mann-Whitney's U of m and t values.
 *
 * Formula:  P(m, t)[u] = t / (m + t) P(m, t - 1)[u - m] + m / (m + t) P(m - 1, t)[u]
 * Source:   [mann-whitney-1947]
 */
function crossings(m: number, t: number): Chances {
  let fewer: Chances[] = Array.from({ length: m + 1 }, () => Float64Array.of(1));
  for (let right = 1; right <= t; right++) {
    const row: Chances[] = [Float64Array.of(1)];
    for (let left = 1; left <= m; left++) {
      row.push(mixed(fewer[left], row[left - 1], left, right));
    }
    fewer = row;
  }
  return fewer[m] ?? Float64Array.of(1);
}

function mixed(
  lastIsRight: Chances | undefined,
  lastIsLeft: Chances | undefined,
  left: number,
  right: number,
): Chances {
  const chances = new Float64Array(left * right + 1);
  for (let u = 0; u < chances.length; u++) {
    const fromRight = (right * (lastIsRight?.[u - left] ?? 0)) / (left + right);
    chances[u] = fromRight + (left * (lastIsLeft?.[u] ?? 0)) / (left + right);
  }
  return chances;
}
