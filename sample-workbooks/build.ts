import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { buildIfStale } from "../workbench/build-if-stale";
import { addInOf } from "./add-in";
import { sampleFiles } from "./index";

/** `npm run samples`: writes every sample file anew. */
const { values } = parseArgs({
  options: {
    out: { type: "string", default: import.meta.dirname },
    /** For programs that do not know our functions: their answers as plain values. */
    preview: { type: "boolean", default: false },
    /** The workbooks ask the host to open the add-in's pane; works where it is sideloaded or centrally deployed. */
    "auto-open": { type: "boolean", default: false },
  },
});

await buildIfStale();
mkdirSync(values.out, { recursive: true });
const opens = values["auto-open"] ? addInOf(path.resolve(import.meta.dirname, "../manifest.xml")) : undefined;
for (const [name, bytes] of await sampleFiles({ variant: values.preview ? "preview" : "host", opens })) {
  writeFileSync(path.join(values.out, name), bytes);
  process.stdout.write(`${name} ${bytes.length} bytes\n`);
}
