import { build } from "esbuild";
import { copyFileSync, existsSync, mkdirSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const root = path.join(import.meta.dirname, "..", "..");

/** The lines that the build appends for the host: each worksheet function under its id. */
function associations(text: string): string {
  const functions = text.matchAll(/@customfunction (\w+)[\s\S]*?export function (\w+)/g);
  return [...functions].map(([, id, name]) => `CustomFunctions.associate("${id}", ${name});`).join("\n");
}

/** Builds the worksheet functions from the sources as they are but for one file, into `folder`. */
export async function bundleWith(file: string, text: string, folder: string): Promise<void> {
  const parts = readdirSync(path.join(root, "functions")).filter((name) => name.endsWith(".ts"));
  mkdirSync(folder, { recursive: true });
  const metadata = path.join(root, "dist", "functions.json");
  if (!existsSync(metadata)) return;
  copyFileSync(metadata, path.join(folder, "functions.json"));
  await build({
    stdin: { contents: parts.map((name) => `import "./functions/${name}";`).join("\n"), resolveDir: root },
    bundle: true, format: "iife", outfile: path.join(folder, "functions.js"), logLevel: "silent",
    plugins: [{
      name: "mutant",
      setup: (esbuild) => {
        esbuild.onLoad({ filter: /\.ts$/ }, ({ path: place }) => {
          const contents = place === path.join(root, file) ? text : readFileSync(place, "utf8");
          const isPart = path.dirname(place) === path.join(root, "functions");
          return { contents: isPart ? `${contents}\n${associations(contents)}` : contents, loader: "ts" };
        });
      },
    }],
  });
}
