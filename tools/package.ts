import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { zipSync } from "fflate";
import { buildIfStale } from "../workbench/build-if-stale";
import { packageFiles } from "./hosting/package-files";

// npm run package   makes runoff-ledger-VERSION.zip: the build, its licences, and a page that says how to install it
const root = path.resolve(import.meta.dirname, "..");
await buildIfStale();
const { version } = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")) as { version: string };
const name = `runoff-ledger-${version}.zip`;
const archive = zipSync(packageFiles(root), { level: 9 });
writeFileSync(path.join(root, name), archive);
process.stdout.write(`${name}: ${Math.round(archive.length / 1024)} KB\n`);
