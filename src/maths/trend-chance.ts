import { type Dated } from "./dated";
import { inversionChances } from "./inversion-chances";
import { normalTail } from "./normal-tail";

/** Up to here the chance is counted exactly, as R's cor.test does below 50. */
const largestExact = 50;
/** With equal days and equal values together only full enumeration is exact: 8! is 40,320 orders. */
const largestEnumerated = 8;

/** The numbers of the variance of S: k(k-1)(2k+5) / 18, and products of triples over 9 n(n-1)(n-2). [kendall-1975] */
const [spreadOffset, spreadDivisor, triplesDivisor] = [5, 18, 9] as const;

type Ties = readonly [days: readonly number[], values: readonly number[]];

/**
 * The chance, 0 to 1, that shuffled values reach a Mann-Kendall S of this size or more.
 *
 * Formula:  ties in days only, or in values only, up to 50 readings: exact, by the chances of inversions; ties in both,
 *           up to 8: exact, by all orders; else the tail beyond z = (S - 1) / sqrt(var S)
 * Source:   [kendall-1975]
 *
 * @param s at least 0
 * @param ties the sizes of the groups of equal days and of equal values
 */
export function chanceOfTrend(s: number, ordered: readonly Dated[], ties: Ties): number {
  const count = ordered.length;
  const [days, values] = ties;
  if (days.length > 0 && values.length > 0) {
    return count <= largestEnumerated ? chanceByAllOrders(s, ordered) : chanceByNormal(s, count, ties);
  }
  return count <= largestExact ? chanceByInversions(s, count, [...days, ...values]) : chanceByNormal(s, count, ties);
}

function chanceByInversions(s: number, count: number, ties: readonly number[]): number {
  const chances = inversionChances(count, ties);
  const most = (chances.length - 1 - s) / 2;
  return Math.min(1, chances.slice(0, Math.floor(most) + 1).reduce((sum, chance) => sum + chance, 0));
}

/**
 * Formula:  var S = (v0 - vt - vu) / 18 + sum t(t-1)(t-2) sum u(u-1)(u-2) / (9 n(n-1)(n-2)) + sum t(t-1) sum u(u-1) /
 *           (2 n(n-1)); v0 = n(n-1)(2n+5), vt = sum t(t-1)(2t+5), vu likewise
 */
function chanceByNormal(s: number, n: number, [days, values]: Ties): number {
  const sum = (sizes: readonly number[], f: (size: number) => number): number =>
    sizes.reduce((total, size) => total + f(size), 0);
  const spread = (k: number): number => k * (k - 1) * (2 * k + spreadOffset);
  const pairs = (k: number): number => k * (k - 1);
  const triples = (k: number): number => k * (k - 1) * (k - 2);
  const variance =
    (spread(n) - sum(days, spread) - sum(values, spread)) / spreadDivisor +
    (sum(days, triples) * sum(values, triples)) / (triplesDivisor * triples(n)) +
    (sum(days, pairs) * sum(values, pairs)) / (2 * pairs(n));
  return variance > 0 ? normalTail((s - 1) / Math.sqrt(variance)) : 1;
}

function chanceByAllOrders(s: number, ordered: readonly Dated[]): number {
  const values = ordered.map(({ value }) => value);
  let [orders, reached] = [0, 0];
  const place = (chosen: readonly number[], rest: readonly number[], soFar: number): void => {
    if (rest.length === 0) {
      orders++;
      if (soFar >= s) reached++;
    }
    const day = ordered[chosen.length]?.day ?? 0;
    for (const [skip, value] of rest.entries()) {
      const added = chosen.reduce(
        (sum, before, at) => (ordered[at]?.day === day ? sum : sum + Math.sign(value - before)),
        0,
      );
      place([...chosen, value], rest.filter((_, at) => at !== skip), soFar + added);
    }
  };
  place([], values, 0);
  return reached / orders;
}
