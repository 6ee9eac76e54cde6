import { cpSync, rmSync } from "node:fs";
import path from "node:path";
import { build, type BuildOptions } from "esbuild";
import { ifStale } from "./build-if-stale";
import { projectRoot } from "./project-root";

const page = path.join(projectRoot, "workbench", "page");
const outdir = path.join(projectRoot, "workbench", "dist");
const inputs = ["book.ts", "build.ts", "engine", "files", "host", "page"].map((part) => `workbench/${part}`);

/** Bundles the workbench's page when it is absent or older than any file it is made from; says nothing on standard output. */
export function buildWorkbenchIfStale(): Promise<void> {
  return ifStale("workbench/dist", [...inputs, "package.json"], async () => {
    process.stderr.write("building the workbench ...\n");
    await bundle();
  });
}

const shared: BuildOptions = { bundle: true, minify: true, target: "es2022", outdir, legalComments: "none", logLevel: "warning" };

/** With esbuild, not with the add-in's webpack: the spreadsheet component is large, and a first start should not take a minute. */
async function bundle(): Promise<void> {
  rmSync(outdir, { recursive: true, force: true });
  await build({ ...shared, entryPoints: { workbench: path.join(page, "main.ts") }, format: "esm", splitting: true });
  const aroundLibrary = ["before-host-library.ts", "after-host-library.ts"].map((name) => path.join(page, name));
  await build({ ...shared, entryPoints: aroundLibrary, format: "iife" });
  cpSync(path.join(page, "index.html"), path.join(outdir, "index.html"));
}
