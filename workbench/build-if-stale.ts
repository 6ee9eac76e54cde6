import { execFile } from "node:child_process";
import { existsSync, readdirSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { promisify } from "node:util";
import { projectRoot as root } from "./project-root";

const inputs = ["src", "functions", "taskpane", "assets", "docs", "README.md", "manifest.xml", "tools/pages.js", "tools/licences.js", "LICENSE", "webpack.config.js", "package.json"];

/** Builds dist when it is absent or older than any file it is made from; says nothing on standard output. */
export function buildIfStale(): Promise<void> {
  return ifStale("dist", inputs, async () => {
    process.stderr.write("building the add-in ...\n");
    const webpack = path.join(root, "node_modules", "webpack-cli", "bin", "cli.js");
    await promisify(execFile)(process.execPath, [webpack, "--mode", "production"], { cwd: root });
  });
}

/** Runs a build when its folder is absent or older than any file or folder it is made from. */
export async function ifStale(folder: string, madeFrom: readonly string[], build: () => Promise<void>): Promise<void> {
  const built = path.join(root, folder, ".built");
  if (existsSync(built) && statSync(built).mtimeMs > Math.max(...madeFrom.map((input) => newest(path.join(root, input))))) return;
  await build();
  writeFileSync(built, "");
}

function newest(place: string): number {
  const { mtimeMs } = statSync(place);
  if (!statSync(place).isDirectory()) return mtimeMs;
  return Math.max(mtimeMs, ...readdirSync(place).map((name) => newest(path.join(place, name))));
}
