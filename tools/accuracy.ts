import { writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { accuracyPage } from "../tests/check-values/accuracy-page";
import { checkFiles } from "../tests/check-values/check-file";
import { compareAll } from "../tests/check-values/compare";
import { loadBundle } from "../workbench/host/load-bundle";
import { buildIfStale } from "../workbench/build-if-stale";

// npm run accuracy             prints docs/accuracy.md
// npm run accuracy -- --write  writes it
const { values } = parseArgs({ options: { write: { type: "boolean", default: false } } });
await buildIfStale();
const { host } = loadBundle();
const page = accuracyPage(compareAll(host, checkFiles()), host.ids);
if (values.write) writeFileSync(path.resolve(import.meta.dirname, "../docs/accuracy.md"), page);
else process.stdout.write(page);
