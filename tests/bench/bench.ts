import { readdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { parseArgs } from "node:util";
import { buildIfStale } from "../../workbench/build-if-stale";
import { type Bench } from "./measure";
import { figureOf, type Measured, performancePage, verdictOf } from "./performance-page";

// npm run bench             runs every *.bench.ts beside this file and prints one line each
// npm run bench -- --write  writes docs/performance.md as well
// npm run bench -- recalc   runs those of recalc.bench.ts alone, and writes nothing
const { values, positionals } = parseArgs({ options: { write: { type: "boolean", default: false } }, allowPositionals: true });
const [only = ""] = positionals;
if (only !== "" && values.write) throw new Error("the page holds every bench: --write takes no name beside it");
await buildIfStale();
const measured: Measured[] = [];
for (const name of readdirSync(import.meta.dirname).filter((file) => file.endsWith(".bench.ts") && file.startsWith(only)).sort()) {
  const { benches } = (await import(pathToFileURL(path.join(import.meta.dirname, name)).href)) as { benches: readonly Bench[] };
  for (const bench of benches) {
    const result = await bench.run();
    measured.push({ name: bench.name, ...result });
    console.log(`${bench.name}: ${figureOf(result)} (aim ${result.aim}, ${verdictOf(result)}); ${result.detail}`);
  }
}
if (values.write) writeFileSync(path.resolve(import.meta.dirname, "../../docs/performance.md"), performancePage(measured));
