/** Told of one run of places that all stand before `after` although their values are greater. */
export type OnInversions = (greaterBefore: Int32Array, after: number) => void;

/**
 * How many pairs stand in the wrong order: an earlier value strictly greater than a later one. Equal values are in order.
 *
 * Feeds the Mann-Kendall statistic and the Theil-Sen slope, both sums over all pairs, in n log n instead of n squared.
 *
 * Formula:  merge sort from the bottom; each time a value of the right half comes first, it passes all that is left of the
 *           left half
 * Source:   [knight-1966]
 *
 * @param onInversions is told of every such pair, as places in `values`; costs one step for each of them
 * @example inversions([2, 3, 1]) // 2
 */
export function inversions(values: Float64Array, onInversions?: OnInversions): number {
  const { length } = values;
  let from: Int32Array = Int32Array.from(values, (_, place) => place);
  let to: Int32Array = new Int32Array(length);
  let count = 0;
  for (let width = 1; width < length; width *= 2) {
    for (let start = 0; start < length; start += 2 * width) {
      const middle = Math.min(start + width, length);
      count += merge(values, from, to, [start, middle, Math.min(middle + width, length)], onInversions);
    }
    [from, to] = [to, from];
  }
  return count;
}

function merge(
  values: Float64Array,
  from: Int32Array,
  to: Int32Array,
  [start, middle, end]: readonly [start: number, middle: number, end: number],
  onInversions: OnInversions | undefined,
): number {
  let [left, right, count] = [start, middle, 0];
  for (let place = start; place < end; place++) {
    const leftPlace = from[left] ?? 0;
    const rightPlace = from[right] ?? 0;
    const takeRight = left >= middle || (right < end && (values[rightPlace] ?? 0) < (values[leftPlace] ?? 0));
    if (takeRight) {
      count += middle - left;
      if (left < middle) onInversions?.(from.subarray(left, middle), rightPlace);
    }
    to[place] = takeRight ? rightPlace : leftPlace;
    if (takeRight) right++;
    else left++;
  }
  return count;
}
