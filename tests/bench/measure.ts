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

type Pair = readonly [first: number, second: number];

/** Median milliseconds of two tasks run in turns, so that both meet the same machine. */
export function medianMilliseconds(first: () => unknown, second: () => unknown, rounds = 41): Pair {
  const [one, other] = timesInTurns([first, second], rounds);
  return [median(one), median(other)];
}

/** The least of them: what an algorithm takes when nothing else runs, for other work only ever adds. */
export function leastMilliseconds(first: () => unknown, second: () => unknown, rounds = 41): Pair {
  const [one, other] = timesInTurns([first, second], rounds);
  return [Math.min(...one), Math.min(...other)];
}

/** Rounds whose times are not kept: the engine is still warming up. */
const warmUps = 5;

function timesInTurns(tasks: readonly [() => unknown, () => unknown], rounds: number): [first: number[], second: number[]] {
  const times: [number[], number[]] = [[], []];
  for (let round = 0; round < rounds + warmUps; round++) {
    tasks.forEach((task, which) => {
      const start = performance.now();
      task();
      if (round >= warmUps) times[which as 0 | 1].push(performance.now() - start);
    });
  }
  return times;
}

export const median = (values: number[]): number => values.sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? NaN;
