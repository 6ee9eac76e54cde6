import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
import { compatibilityPage, leastVersion } from "./compatibility-page";

// npm run compatibility             prints docs/compatibility.md
// npm run compatibility -- --write  writes it
const root = path.resolve(import.meta.dirname, "../..");
const { values } = parseArgs({ options: { write: { type: "boolean", default: false } } });
const page = await compatibilityPage(leastVersion(readFileSync(path.join(root, "manifest.xml"), "utf8")));
if (values.write) writeFileSync(path.join(root, "docs/compatibility.md"), page);
else process.stdout.write(page);
