export interface BenchResult {
  readonly figure: number;
  /** "times the bare loop", "kB gzipped", "ms". */
  readonly unit: string;
  readonly aim: number;
  readonly detail: string;
}

export interface Bench {
  readonly name: string;
  run(): BenchResult | Promise<BenchResult>;
}

/** Median milliseconds of two tasks run in turns, so that both meet the same machine. */
export function medianMilliseconds(first: () => unknown, second: () => unknown, rounds = 41): [first: number, second: number] {
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds + 5; round++) {
    [first, second].forEach((task, which) => {
      const start = performance.now();
      task();
      if (round >= 5) times[which as 0 | 1].push(performance.now() - start);
    });
  }
  return [median(times[0]), median(times[1])];
}

const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
