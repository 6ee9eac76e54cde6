import path from "node:path";
import { type EngineCell } from "../../workbench/engine/engine-sheet";
import { runEngine } from "../../workbench/engine/univer-engine";
import { univerFunctions } from "../../workbench/engine/univer-functions";
import { functionsThroughRuntime } from "../../workbench/host/client/load-client";
import { distFolder, loadBundle } from "../../workbench/host/load-bundle";
import { type Bench, median } from "./measure";

const rows = 10_000;
const runoffEc = (row: number): number => 2 + (row % 37) / 20;
const inputEc = (row: number): number => 1.2 + (row % 23) / 20;

/** Milliseconds in which the formula engine computes a log with these formulas in its third column; checked at the last row. */
async function computed(formulaAt: (row: number) => string | undefined): Promise<number> {
  const cells = Array.from({ length: rows }, (_, row): EngineCell[] => {
    const formula = formulaAt(row);
    return [
      { address: `A${row + 1}`, row, column: 0, value: runoffEc(row) },
      { address: `B${row + 1}`, row, column: 1, value: inputEc(row) },
      ...(formula === undefined ? [] : [{ address: `C${row + 1}`, row, column: 2, formula }]),
    ];
  }).flat();
  const { host, metadata } = loadBundle();
  const start = performance.now();
  const { valueAt } = await runEngine([{ name: "Log", cells }], [], univerFunctions(host, metadata, "RUNOFF", () => "zero"));
  const milliseconds = performance.now() - start;
  if (formulaAt(0) === undefined) return milliseconds;
  const [answer, expected] = [Number(valueAt(0, rows - 1, 2)), runoffEc(rows - 1) / inputEc(rows - 1)];
  if (!(Math.abs(answer - expected) < 1e-9)) throw new Error(`the last row is ${answer}, not ${expected}`);
  return milliseconds;
}

const ways = {
  none: (): undefined => undefined,
  spill: (row: number): string | undefined => (row === 0 ? `RUNOFF.SALTRATIO(A1:A${rows},B1:B${rows})` : undefined),
  single: (row: number): string => `RUNOFF.SALTRATIO(A${row + 1},B${row + 1})`,
  plain: (row: number): string => `A${row + 1}/B${row + 1}`,
} as const;

async function inTurns(): Promise<Record<keyof typeof ways, number>> {
  const times: Record<keyof typeof ways, number[]> = { none: [], spill: [], single: [], plain: [] };
  for (let round = 0; round < 6; round++) {
    for (const way of ["none", "spill", "single", "plain"] as const) {
      const time = await computed(ways[way]);
      if (round > 0) times[way].push(time);
    }
  }
  return { none: median(times.none), spill: median(times.spill), single: median(times.single), plain: median(times.plain) };
}

const logRows = 5000;
/** Seven columns that a log computes, each from columns of readings. */
const computedColumns: readonly (readonly [id: string, ...readings: (readonly [least: number, step: number])[]])[] = [
  ["SALTRATIO", [2, 0.05], [1.2, 0.05]], ["PHSHIFT", [5, 0.02], [5.5, 0.02]], ["LEACHFRACTION", [0.2, 0.01], [1, 0.05]], ["ECAT25", [1, 0.05], [18, 0.2]],
  ["PPM", [1, 0.05], [640, 0]], ["VPD", [20, 0.2], [45, 0.5]], ["UPTAKE", [2, 0.01], [0.2, 0.005], [24, 0]],
];

/** Milliseconds from the host's call to its answer, through its own runtime with its flush. */
async function throughRuntime(asSpills: boolean): Promise<number> {
  const runtime = functionsThroughRuntime(path.join(distFolder, "functions.js"));
  const cell = ([least, step]: readonly [number, number], row: number): number[] => [least + step * (row % 37)];
  const all = Array.from({ length: logRows }, (_, row) => row);
  const { functions } = loadBundle().metadata;
  const leftOut = (id: string, given: number): undefined[] =>
    new Array<undefined>((functions.find((each) => each.id === id)?.parameters.length ?? given) - given).fill(undefined);
  const calls = computedColumns.flatMap(([id, ...readings]) => {
    const callOver = (covered: readonly number[]) => ({
      id, args: [...readings.map((reading) => covered.map((row) => cell(reading, row))), ...leftOut(id, readings.length)],
    });
    return asSpills ? [callOver(all)] : all.map((row) => callOver([row]));
  });
  const start = performance.now();
  const answers = await runtime.call(calls);
  const milliseconds = performance.now() - start;
  const numbers = answers.flat(2).filter((answer) => typeof answer === "number").length;
  if (numbers !== logRows * computedColumns.length) throw new Error(`only ${numbers} rows were answered`);
  return milliseconds;
}

export const benches: readonly Bench[] = [
  {
    name: "10,000 rows in one engine: one spilled SALTRATIO against as many plain formulas",
    async run() {
      const { none, ...times } = await inTurns();
      const [spill, single, plain] = [times.spill - none, times.single - none, times.plain - none];
      const detail = `${spill.toFixed(0)} ms against ${plain.toFixed(0)}, as 10,000 single calls ${single.toFixed(0)}, each beyond the ${none.toFixed(0)} ms ` +
        "of the engine with the readings alone; median of 5";
      return { figure: spill / plain, unit: "of the plain formulas' time", aim: 0.2, detail };
    },
  },
  {
    name: "5,000 rows with seven computed columns through the host's own runtime: as spills against single cells",
    async run() {
      const times: [number[], number[]] = [[], []];
      for (let round = 0; round < 5; round++) {
        times[0].push(await throughRuntime(true));
        times[1].push(await throughRuntime(false));
      }
      const [spills, singles] = [median(times[0]), median(times[1])];
      const detail = `${spills.toFixed(0)} ms as 7 calls, ${singles.toFixed(0)} ms as 35,000, each with the runtime's wait of 50 ms; median of 5`;
      return { figure: spills / singles, unit: "of the single cells' time", aim: 0.2, detail };
    },
  },
];
