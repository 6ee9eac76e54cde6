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

export const benches: readonly Bench[] = [
  {
    name: "one spilled SALTRATIO over 100,000 rows against a bare loop",
    run() {
      const { host } = loadBundle();
      const saltRatio = host.associatedFunction("SALTRATIO");
      const [runoff, input] = [reading(7), reading(3)];
      const [bare, ours] = medianMilliseconds(() => bareLoop(runoff, input), () => saltRatio(runoff, input));
      return { figure: ours / bare, unit: "times the bare loop", aim: 1.5, detail: `${ours.toFixed(2)} ms against ${bare.toFixed(2)} ms` };
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
