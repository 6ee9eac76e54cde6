import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { compatibilityPage, leastVersion } from "./compatibility-page";

const root = path.resolve(import.meta.dirname, "../..");
const read = (file: string): string => readFileSync(path.join(root, file), "utf8");

it("docs/compatibility.md says what each edition of Excel carries out, and nothing fails without words on any", async () => {
  const page = await compatibilityPage(leastVersion(read("manifest.xml")));
  expect(page).not.toContain("FAILS");
  expect(read("docs/compatibility.md")).toBe(page);
});
