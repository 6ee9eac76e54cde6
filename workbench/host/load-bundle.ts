import { readFileSync } from "node:fs";
import path from "node:path";
import { runInThisContext } from "node:vm";
import { projectRoot } from "../project-root";
import { FunctionsHost, type FunctionsMetadata } from "./functions-host";

export const distFolder = path.join(projectRoot, "dist");

/** Loads the built functions bundle, unchanged, into a stand-in host, under plain Node. */
export function loadBundle(folder: string = distFolder): { host: FunctionsHost; metadata: FunctionsMetadata } {
  const metadata = JSON.parse(readFileSync(path.join(folder, "functions.json"), "utf8")) as FunctionsMetadata;
  const host = new FunctionsHost();
  const script = path.join(folder, "functions.js");
  Object.assign(globalThis, { CustomFunctions: host.runtime });
  runInThisContext(readFileSync(script, "utf8"), { filename: script });
  return { host, metadata };
}
