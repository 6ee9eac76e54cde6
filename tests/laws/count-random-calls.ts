import { buildIfStale } from "../../workbench/build-if-stale";
import { loadBundle } from "../../workbench/host/load-bundle";
import { countFaults } from "./random-calls";

// npm run random-calls -- 1000000   calls the built functions with random cells so often, and prints what was wrong with the answers
const calls = Number(process.argv[2] ?? 100_000);
if (!(Number.isInteger(calls) && calls > 0)) throw new Error("usage: npm run random-calls -- 1000000");
await buildIfStale();
const { host, metadata } = loadBundle();
const portion = 10_000;
const seeds = Array.from({ length: Math.ceil(calls / portion) }, (_, n) => n);
const total: Record<string, number> = {};
for (const n of seeds) {
  const counts = countFaults(host, metadata, Math.min(portion, calls - n * portion), 1000 * n);
  for (const [name, count] of Object.entries(counts)) total[name] = (total[name] ?? 0) + count;
}
for (const [name, count] of Object.entries(total)) console.log(`${name}: ${count}`);
process.exitCode = Object.entries(total).some(([name, count]) => name !== "calls" && count > 0) ? 1 : 0;
