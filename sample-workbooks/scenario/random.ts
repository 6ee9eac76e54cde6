/** A repeatable stream of numbers from a seed, so that the same script always writes the same log. */
export interface Noise {
  /** Even in [0, 1). */
  readonly even: () => number;
  /** Bell-shaped around 0 with about this spread; by adding even numbers, so that every machine gives the same digits. */
  readonly around0: (spread: number) => number;
}

/** A 32-bit mixing generator: integer arithmetic only, hence the same on every machine. */
export function noise(seed: number): Noise {
  let state = seed >>> 0;
  const even = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  // The sum of four even numbers has the variance 4/12; dividing by its root makes the spread 1.
  const around0 = (spread: number): number => ((even() + even() + even() + even() - 2) / Math.sqrt(1 / 3)) * spread;
  return { even, around0 };
}
