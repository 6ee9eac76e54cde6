import { readdirSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { buildIfStale } from "../../workbench/build-if-stale";
import { type Bench } from "./measure";

/** Runs every *.bench.ts beside this file and prints one line each; figures are ratios within one run wherever they can be. */
await buildIfStale();
for (const name of readdirSync(import.meta.dirname).filter((file) => file.endsWith(".bench.ts")).sort()) {
  const { benches } = (await import(pathToFileURL(path.join(import.meta.dirname, name)).href)) as { benches: readonly Bench[] };
  for (const bench of benches) {
    const { figure, unit, aim, detail } = await bench.run();
    const verdict = figure <= aim ? "reached" : "MISSED";
    console.log(`${bench.name}: ${figure.toPrecision(3)} ${unit} (aim ${aim}, ${verdict}); ${detail}`);
  }
}
