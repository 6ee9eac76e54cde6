/**
 * Told of one run of pairs in the wrong order: the places `run[start]` to `run[end - 1]` all stand before `after`,
 * although their values are greater.
 */
export type OnInversions = (run: Int32Array, start: number, end: number, after: number) => void;

export interface Inversions {
  /** How many pairs stand in the wrong order. */
  readonly count: number;
  /** The places by rising value, equal values as they stood. */
  readonly order: Int32Array;
}

/**
 * How many pairs stand in the wrong order: an earlier value strictly greater than a later one. Equal values are in
 * order.
 *
 * Feeds the Mann-Kendall statistic and the Theil-Sen slope, both sums over all pairs, in n log n instead of n squared.
 *
 * Formula:  merge sort from the bottom; each time a value of the right half comes first, it passes all that is left of
 *           the left half
 * Source:   [knight-1966]
 *
 * @param onInversions is told of every such pair
 * @example inversions(Float64Array.of(2, 3, 1)).count // 2
 */
export function inversions(values: Float64Array, onInversions?: OnInversions): Inversions {
  const { length } = values;
  let from: Ranked = { values: Float64Array.from(values), places: asTheyStand(length) };
  let to: Ranked = { values: new Float64Array(length), places: new Int32Array(length) };
  let count = 0;
  for (let width = 1; width < length; width *= 2) {
    for (let start = 0; start < length; start += 2 * width) {
      const middle = Math.min(start + width, length);
      count += merge(from, to, start, middle, Math.min(middle + width, length), onInversions);
    }
    [from, to] = [to, from];
  }
  return { count, order: from.places };
}

/** The places 0, 1, 2 of so many values. */
export function asTheyStand(length: number): Int32Array {
  const places = new Int32Array(length);
  for (let place = 0; place < length; place++) places[place] = place;
  return places;
}

/** Values and where they stood, side by side: read one after the other, which is what a processor is quick at. */
interface Ranked {
  readonly values: Float64Array;
  readonly places: Int32Array;
}

function merge(
  from: Ranked,
  to: Ranked,
  start: number,
  middle: number,
  end: number,
  onInversions?: OnInversions,
): number {
  let left = start;
  let right = middle;
  let count = 0;
  for (let place = start; place < end; place++) {
    const takeRight = left >= middle || (right < end && (from.values[right] ?? 0) < (from.values[left] ?? 0));
    if (takeRight && left < middle) {
      count += middle - left;
      onInversions?.(from.places, left, middle, from.places[right] ?? 0);
    }
    const taken = takeRight ? right++ : left++;
    to.values[place] = from.values[taken] ?? 0;
    to.places[place] = from.places[taken] ?? 0;
  }
  return count;
}
