import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { type FunctionsMetadata } from "../workbench/host/functions-host";
import { buildIfStale } from "../workbench/build-if-stale";
import { functionNamesFile } from "./docs/function-names";
import { type DocumentedPart, functionsPage, parts } from "./docs/functions-page";
import { withFunctionsTable } from "./docs/readme-table";
import { docTags } from "./docs/tags";

const root = path.resolve(import.meta.dirname, "..");
const read = (file: string): string => readFileSync(path.join(root, file), "utf8");

/** The functions of the build with what the comments in functions/ say of them, by part. */
function documented(): DocumentedPart[] {
  const metadata = JSON.parse(read("dist/functions.json")) as FunctionsMetadata;
  return parts.map(({ part, question }) => {
    const functions = docTags(path.join(root, "functions", `${part}.ts`)).flatMap((tags) => {
      const found = metadata.functions.find(({ id }) => id === tags.id);
      return found === undefined ? [] : [{ ...found, ...tags }];
    });
    return { question, functions };
  });
}

/** The documents that are made from the code, by file, as they should be now. */
export function madeDocuments(): Record<string, string> {
  const functions = documented();
  return {
    "docs/functions.md": functionsPage(functions),
    "README.md": withFunctionsTable(read("README.md"), functions),
    "taskpane/formulas/function-names.ts": functionNamesFile(functions.flatMap((part) => part.functions.map(({ id }) => id))),
  };
}

if (process.argv[1] === import.meta.filename) {
  await buildIfStale();
  for (const [file, text] of Object.entries(madeDocuments())) {
    if (read(file) !== text) writeFileSync(path.join(root, file), text);
  }
  process.stdout.write("docs/functions.md, the table in README.md and the pane's names of functions are up to date\n");
}
