import { readFileSync } from "node:fs";
import path from "node:path";
import { expect, it } from "vitest";
import { loadBundle } from "../../workbench/host/load-bundle";
import { accuracyPage } from "../check-values/accuracy-page";
import { checkFiles } from "../check-values/check-file";
import { compareAll } from "../check-values/compare";

const { host } = loadBundle();

it("docs/accuracy.md is what `npm run accuracy` prints today; `npm run accuracy -- --write` renews it", () => {
  const committed = readFileSync(path.resolve(import.meta.dirname, "../../docs/accuracy.md"), "utf8");
  expect(committed).toBe(accuracyPage(compareAll(host, checkFiles()), host.ids));
});

it("the accuracy page: a difference of 0.05 % where 0 % is expected is 0.05 percentage points, not 5 %", () => {
  const file = { name: "x", about: "a", source: "b", page: "", standing: "memory", unit: "%", function: "ECMETER", rows: [] } as const;
  const page = accuracyPage([{ file, row: { given: [1], expected: 0, tolerance: 0.1 }, answer: 0.05, error: 0.05, within: true }], []);
  expect(page).toContain("| ECMETER | a | 1 | 0.05 percentage points | 0.05 percentage points | b | memory |");
});

it("the accuracy page: errors of 1, 2 and 9 % have a median of 2 % and a largest of 9 %", () => {
  const file = { name: "x", about: "a", source: "b", page: "", standing: "published", unit: "", function: "PPM", rows: [] } as const;
  const row = { given: [1], expected: 1, tolerance: 0.1 };
  const page = accuracyPage([0.09, 0.01, 0.02].map((error) => ({ file, row, answer: 1, error, within: true })), []);
  expect(page).toContain("| PPM | a | 3 | 2 % | 9 % | b | published |");
});
