import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { madeDocuments } from "../../tools/docs";
import { root } from "../rules/project-files";

it.each(Object.entries(madeDocuments()))("%s is what `npm run docs` makes from the code", (file, made) => {
  expect(made).toContain("SALTRATIO");
  expect(readFileSync(path.join(root, file), "utf8")).toBe(made);
});
