// node tools/run.js workbench/timeline.ts ARGS...: runs a program as one plain script, bundled anew when a file it is made from
// has changed. Compiling and finding hundreds of modules takes seconds at every start; looking at their dates takes milliseconds.
import { mkdirSync, readFileSync, renameSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";

const root = path.resolve(import.meta.dirname, "..");
const [entry, ...args] = process.argv.slice(2);
const bundle = path.join(root, ".cache", "programs", `${entry.replaceAll(/\W/g, "-")}.js`);
const madeFrom = `${bundle}on`;

const stamp = (file) => {
  const { mtimeMs, size } = statSync(path.join(root, file));
  return `${mtimeMs} ${size}`;
};

function isFresh() {
  try {
    return Object.entries(JSON.parse(readFileSync(madeFrom, "utf8"))).every(([file, seen]) => stamp(file) === seen);
  } catch {
    return false;
  }
}

/** Whole or not at all: another start may read it meanwhile. */
function write(file, content) {
  const beside = `${file}.${process.pid}`;
  writeFileSync(beside, content);
  renameSync(beside, file);
}

async function bundled() {
  const { build } = await import("esbuild");
  const { metafile, outputFiles } = await build({
    absWorkingDir: root,
    entryPoints: [entry],
    bundle: true,
    minify: true,
    platform: "node",
    target: "node20",
    format: "esm",
    // These start programs or open files that lie beside them.
    external: ["esbuild", "open"],
    legalComments: "none",
    logLevel: "warning",
    metafile: true,
    write: false,
    outfile: bundle,
  });
  const own = Object.keys(metafile.inputs).filter((file) => !file.startsWith("node_modules/"));
  const files = [...own, "package-lock.json", path.relative(root, import.meta.filename)];
  mkdirSync(path.dirname(bundle), { recursive: true });
  write(bundle, outputFiles[0].contents);
  write(madeFrom, JSON.stringify(Object.fromEntries(files.map((file) => [file, stamp(file)]))));
}

if (!isFresh()) await bundled();
process.argv = [process.argv[0], path.join(root, entry), ...args];
await import(pathToFileURL(bundle).href);
