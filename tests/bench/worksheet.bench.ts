import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { distFolder, loadBundle } from "../../workbench/host/load-bundle";
import { type Bench, medianMilliseconds } from "./measure";

const rows = 100_000;
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
    if (ecIn >= 0.5 && ec / ecIn - 1.5 > 0.005) flags.push("salt ratio high");
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
    name: "functions.js gzipped",
    run() {
      const script = readFileSync(path.join(distFolder, "functions.js"));
      const { length } = loadBundle().metadata.functions;
      const [figure, unpacked] = [gzipSync(script).length / 1000, (script.length / 1000).toFixed(0)];
      return { figure, unit: "kB", aim: 12, detail: `${unpacked} kB as it is, ${length} functions; the aim was set for the first ones` };
    },
  },
];
