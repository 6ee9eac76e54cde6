import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, test } from "vitest";

const root = path.resolve(import.meta.dirname, "../..");

test.each(["README.md", "docs/functions.md"])("the examples of %s say what stands between arguments where the decimal sign is a comma", (file) => {
  const text = readFileSync(path.join(root, file), "utf8").replaceAll("\n", " ");
  expect(text).toMatch(/decimal comma takes? `;` between arguments/);
});
