import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";

const read = (file: string): string => readFileSync(path.resolve(import.meta.dirname, "../..", file), "utf8");
const { dependencies } = JSON.parse(read("package.json")) as { readonly dependencies: Readonly<Record<string, string>> };

it("dist/licences.txt holds our licence and that of each package that ships, word for word, those below them too", () => {
  const licences = read("dist/licences.txt");
  expect(licences).toContain(read("LICENSE").trim());
  expect(Object.keys(dependencies).length).toBeGreaterThan(0);
  for (const name of [...Object.keys(dependencies), "d3-path", "d3-time", "d3-interpolate"]) {
    expect(licences).toContain(`\n${name}\n`);
    expect(licences).toContain(read(`node_modules/${name}/LICENSE`).trim());
  }
});
