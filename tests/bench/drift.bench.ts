import { type Dated, drift, recoveryTrend } from "../../src/index";
import { type Bench, leastMilliseconds } from "./measure";

/** A log that drifts by 0.0001 a day under noise, by the minimal standard generator, so that a run can be repeated. */
function driftingLog(length: number): Dated[] {
  let state = 42;
  const uniform = (): number => (state = (state * 48_271) % 2_147_483_647) / 2_147_483_647;
  return Array.from({ length }, (_, at) => ({ day: 40_000 + at + uniform() / 2, value: 2 + at / 10_000 + uniform() }));
}

/** The slopes of all pairs, listed and sorted. */
function naiveDrift(readings: readonly Dated[]): number {
  const slopes = new Float64Array((readings.length * (readings.length - 1)) / 2);
  let count = 0;
  for (const [at, { day, value }] of readings.entries()) {
    for (let later = at + 1; later < readings.length; later++) {
      const other = readings[later] ?? { day: NaN, value: NaN };
      slopes[count++] = (other.value - value) / (other.day - day);
    }
  }
  slopes.sort();
  return ((slopes[Math.floor((count - 1) / 2)] ?? NaN) + (slopes[Math.floor(count / 2)] ?? NaN)) / 2;
}

function milliseconds(task: () => unknown, rounds: number): number {
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now();
    task();
    return performance.now() - start;
  });
  return times.sort((a, b) => a - b)[Math.floor(rounds / 2)] ?? NaN;
}

/** As a pen shows it: in tenths, so that most readings are tied. */
const pen = (log: readonly Dated[]): Dated[] => log.map(({ day, value }) => ({ day, value: Math.round(value * 10) / 10 }));

const logs = { "no ties": driftingLog, "a pen's ties": (length: number) => pen(driftingLog(length)) } as const;

const trendOf = { DRIFT: drift, RECOVERYTREND: (log: readonly Dated[]) => recoveryTrend(log, 1, 2) } as const;

/** The two functions that look at every pair of readings, at three lengths; the exponent is the one of the last step. */
const sideBySide = Object.entries(trendOf).flatMap(([id, trend]) => Object.entries(logs).map(([kind, logOf]): Bench => ({
  name: `growth of ${id} over 1,000, 10,000 and 100,000 readings, ${kind}`,
  run() {
    const [short, middle, long] = [1000, 10_000, 100_000].map(logOf);
    const [least] = leastMilliseconds(() => trend(short ?? []), () => undefined, 7);
    const [less, more] = leastMilliseconds(() => trend(middle ?? []), () => trend(long ?? []), 7);
    const detail = `${[least, less, more].map((time) => time.toFixed(1)).join(" / ")} ms, least of 7`;
    return { figure: Math.log10(more / less), unit: "exponent", aim: 1.15, detail };
  },
})));

export const benches: readonly Bench[] = [
  ...sideBySide,
  {
    name: "DRIFT over 10,000 readings against the naive pairwise version",
    run() {
      const log = driftingLog(10_000);
      if (Math.abs(drift(log) - naiveDrift(log)) > 1e-12) throw new Error("the two drifts differ");
      const [ours, naive] = [milliseconds(() => drift(log), 9), milliseconds(() => naiveDrift(log), 1)];
      const detail = `${ours.toFixed(1)} ms against ${naive.toFixed(0)} ms, the same answer`;
      return { figure: ours / naive, unit: "of the naive time", aim: 0.1, detail };
    },
  },
  {
    name: "growth of DRIFT from 5,000 to 20,000 readings",
    run() {
      const [small, large] = [driftingLog(5000), driftingLog(20_000)];
      const [less, more] = leastMilliseconds(() => drift(small), () => drift(large), 21);
      const detail = `${less.toFixed(1)} to ${more.toFixed(1)} ms, least of 21; n log n is 4.65 times, n squared 16 times`;
      return { figure: more / less, unit: "times the time for 4 times the readings", aim: 6, detail };
    },
  },
];
