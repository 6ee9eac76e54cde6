import { createHash } from "node:crypto";
import { readdirSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { buildIfStale } from "../workbench/build-if-stale";
import { Judge } from "./mutants/judge";
import { type Mutant, mutantsOf } from "./mutants/mutate";
import { Tally } from "./mutants/tally";
import { testsOf } from "./mutants/tests-of";

/** Changes the sources a little, one place at a time, and says which changes no test notices. */
const { values, positionals } = parseArgs({
  options: { sample: { type: "string" }, seed: { type: "string", default: "1" } },
  allowPositionals: true,
});
const root = path.join(import.meta.dirname, "..");

function filesIn(place: string): string[] {
  if (!statSync(path.join(root, place)).isDirectory()) return [place];
  return readdirSync(path.join(root, place)).sort().flatMap((name) => filesIn(`${place}/${name}`));
}

/** Where a mutant stands in the draw of a seed: the same for as long as its line is the same. */
function draw({ file, line, from, to }: Mutant, seed: string): string {
  return createHash("sha1").update(`${seed} ${file}:${line} ${from} ${to}`).digest("hex");
}

const places = positionals.length > 0 ? positionals : ["src"];
const files = places.flatMap((place) => filesIn(place.replace(/\/$/, ""))).filter((name) => name.endsWith(".ts"));
const all = files.flatMap((file) => mutantsOf(file, readFileSync(path.join(root, file), "utf8")));
const drawn = all.map((mutant) => ({ mutant, at: draw(mutant, values.seed) }));
drawn.sort((one, other) => (one.at < other.at ? -1 : 1));
const tried = drawn.slice(0, Number(values.sample ?? all.length)).map(({ mutant }) => mutant);

if (tried.some(({ file }) => testsOf(file).built.length > 0)) await buildIfStale();
console.log(`${tried.length} of ${all.length} mutants in ${files.length} files`);
const judge = new Judge();
const tally = new Tally();
for (const mutant of tried) tally.add(mutant, await judge.fateOf(mutant));
judge.end();
tally.print();
