import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { functionsPageFile, generatedFunctionsPage } from "../../tools/docs";

it("docs/functions.md is what `npm run docs` makes from the code", () => {
  const committed = readFileSync(functionsPageFile, "utf8");
  expect(committed).toContain("### SALTRATIO");
  expect(committed).toBe(generatedFunctionsPage());
});
