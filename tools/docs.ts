import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { type FunctionsMetadata } from "../workbench/host/functions-host";
import { buildIfStale } from "./build-if-stale";
import { functionsPage, parts } from "./docs/functions-page";
import { docTags } from "./docs/tags";

const root = path.resolve(import.meta.dirname, "..");
export const functionsPageFile = path.join(root, "docs", "functions.md");

/** The text of docs/functions.md as the built metadata and the comments in functions/ make it now. */
export function generatedFunctionsPage(): string {
  const metadata = JSON.parse(readFileSync(path.join(root, "dist", "functions.json"), "utf8")) as FunctionsMetadata;
  return functionsPage(
    parts.map(({ part, question }) => {
      const tags = docTags(path.join(root, "functions", `${part}.ts`));
      const functions = tags.flatMap((tag) => {
        const found = metadata.functions.find(({ id }) => id === tag.id);
        return found === undefined ? [] : [{ ...found, ...tag }];
      });
      return { question, functions };
    }),
  );
}

if (process.argv[1] === import.meta.filename) {
  await buildIfStale();
  writeFileSync(functionsPageFile, generatedFunctionsPage());
  process.stdout.write("docs/functions.md is up to date\n");
}
