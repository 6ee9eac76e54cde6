import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { distFolder, loadBundle } from "../../workbench/host/load-bundle";
import { type Bench, leastMilliseconds, medianMilliseconds } from "./measure";

const rows = 100_000;
/** All rows of a sheet below its header. */
const wholeColumn = 1_048_575;
const reading = (step: number): number[][] => Array.from({ length: rows }, (_, row) => [1 + ((row * step) % 37) / 10]);

/** What a programmer would write by hand for the same answer, without one check. */
function bareLoop(runoff: readonly (readonly number[])[], input: readonly (readonly number[])[]): number[][] {
  const answers = new Array<number[]>(runoff.length);
  for (let row = 0; row < runoff.length; row++) answers[row] = [(runoff[row]?.[0] ?? NaN) / (input[row]?.[0] ?? NaN)];
  return answers;
}

const limits = [[5.5, 6.5, 1, 3.5]];

/** The same words for the same rows by bare comparisons with the four limits, without one check of a reading's kind. */
function bareFlags(columns: readonly (readonly (readonly number[])[])[]): string[][] {
  const [inputPh = [], inputEc = [], runoffPh = [], runoffEc = []] = columns;
  const answers = new Array<string[]>(rows);
  for (let row = 0; row < rows; row++) {
    const [phIn = 0, ecIn = 0] = [inputPh[row]?.[0], inputEc[row]?.[0]];
    const [ph = 0, ec = 0] = [runoffPh[row]?.[0], runoffEc[row]?.[0]];
    const flags: string[] = [];
    if (!(phIn >= 3 && phIn <= 10 && ph >= 3 && ph <= 10 && ecIn >= 0.01 && ecIn <= 20 && ec >= 0.1 && ec <= 20)) flags.push("check reading");
    if (5.5 - ph > 0.005) flags.push("runoff pH low");
    else if (ph - 6.5 > 0.005) flags.push("runoff pH high");
    if (1 - ec > 0.005) flags.push("runoff EC low");
    else if (ec - 3.5 > 0.005) flags.push("runoff EC high");
    if (ec - 3.5 > 0.005 && ecIn >= 0.5 && ec / ecIn - 1.5 > 0.005) flags.push("salt ratio high");
    if (5.5 - phIn > 0.005) flags.push("input pH low");
    else if (phIn - 6.5 > 0.005) flags.push("input pH high");
    if (ecIn - 3.5 > 0.005) flags.push("input EC high");
    answers[row] = [flags.length === 0 ? "in band" : flags.join("; ")];
  }
  return answers;
}

export const benches: readonly Bench[] = [
  {
    name: "one spilled ROWFLAG over 100,000 rows against a bare loop with the same words",
    run() {
      const rowFlag = loadBundle().host.associatedFunction("ROWFLAG");
      const columns = [[5, 7], [1, 3], [5, 11], [1, 13]].map(([least = 0, step = 0]) => reading(step).map(([each = 0]) => [least + each - 1]));
      const [inputPh = [], inputEc = [], runoffPh = [], runoffEc = []] = columns;
      const answer = rowFlag(inputPh, inputEc, runoffPh, runoffEc, limits, null) as string[][];
      if (bareFlags(columns).some(([words], row) => words !== answer[row]?.[0])) throw new Error("the flags differ");
      const [bare, ours] = medianMilliseconds(() => bareFlags(columns), () => rowFlag(inputPh, inputEc, runoffPh, runoffEc, limits, null), 15);
      return { figure: ours / bare, unit: "times the bare loop", aim: 3, detail: `${ours.toFixed(1)} ms against ${bare.toFixed(1)} ms` };
    },
  },
  {
    name: "one spilled SALTRATIO over 100,000 rows against a bare loop",
    run() {
      const { host } = loadBundle();
      const saltRatio = host.associatedFunction("SALTRATIO");
      const [runoff, input] = [reading(7), reading(3)];
      const [bare, ours] = medianMilliseconds(() => bareLoop(runoff, input), () => saltRatio(runoff, input));
      return { figure: ours / bare, unit: "times the bare loop", aim: 1.2, detail: `${ours.toFixed(2)} ms against ${bare.toFixed(2)} ms` };
    },
  },
  {
    name: "one call of SALTRATIO over 1,048,575 rows",
    run() {
      const saltRatio = loadBundle().host.associatedFunction("SALTRATIO");
      const column = (low: number): number[][] => Array.from({ length: wholeColumn }, (_, row) => [low + (row % 37) / 10]);
      const [runoff, input] = [column(2), column(1)];
      const start = performance.now();
      const answer = saltRatio(runoff, input) as unknown[];
      const figure = performance.now() - start;
      if (answer.length !== wholeColumn) throw new Error("not every row was answered");
      const megabytes = process.memoryUsage().rss / 1e6;
      return { figure, unit: "ms", aim: 1000, detail: `${megabytes.toFixed(0)} MB held by the process after it, the cells themselves among them` };
    },
  },
  {
    name: "growth of WHICHFIRST from 50,000 to 100,000 rows of 500 pots",
    run() {
      const whichFirst = loadBundle().host.associatedFunction("WHICHFIRST");
      const call = (length: number) => {
        const column = (cell: (row: number) => unknown): unknown[][] => Array.from({ length }, (_, row) => [cell(row)]);
        const vessels = column((row) => `Pot ${row % 500}`);
        const dates = column((row) => 40_000 + Math.floor(row / 500));
        const series = [5.8, 1.8, 6, 2.4].map((low) => column((row) => low + (row % 7) / 20));
        return () => whichFirst(vessels, dates, ...series, [["coir"]], null, null, null);
      };
      const [less, more] = leastMilliseconds(call(50_000), call(100_000), 5);
      return { figure: more / less, unit: "times the time for 2 times the rows", aim: 2.3, detail: `${less.toFixed(0)} to ${more.toFixed(0)} ms, least of 5; linear is 2` };
    },
  },
  {
    name: "functions.js gzipped",
    run() {
      const script = readFileSync(path.join(distFolder, "functions.js"));
      const { length } = loadBundle().metadata.functions;
      const [figure, unpacked] = [gzipSync(script).length / 1000, (script.length / 1000).toFixed(0)];
      return { figure, unit: "kB", aim: 24, detail: `${unpacked} kB as it is, ${length} functions; DIAGNOSE and WHICHFIRST carry the whole judgement with its words, for a cell answers at once and waits for no second script` };
    },
  },
];
