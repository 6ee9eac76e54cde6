import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { afterAll, expect, test } from "vitest";
import { type FailedTrial, failuresOf, trials } from "./forced-failures";

/**
 * So many of a sync's writes fail in a common run. `npm run failures` tries up to 60 of each sync, which is every write of
 * all actions but a new sheet (some hundreds, one like another, of which it tries 60 spread evenly), and prints the figures.
 */
const mostWrites = process.env["MODE"] === "many-writes" ? 60 : 4;

const root = path.resolve(import.meta.dirname, "../../..");
const text = (file: string): string => readFileSync(path.join(root, file), "utf8");

test("everything of the pane that writes on a sheet is among the trials", () => {
  const files = readdirSync(path.join(root, "taskpane/sheet")).map((name) => name.replace(".ts", ""));
  const writers = files.filter((name) => text(`taskpane/sheet/${name}.ts`).includes("writingInExcel("));
  const called = text("tests/taskpane/sheet/forced-failures.ts");
  const onTheWay = files.map((name) => text(`taskpane/sheet/${name}.ts`)).join("");
  const missing = writers.filter((name) => !called.includes(`taskpane/sheet/${name}"`) && !onTheWay.includes(`"./${name}"`));
  expect(writers).toContain("write-entries");
  expect(missing).toEqual([]);
});

const tried: FailedTrial[] = [];

test.each(Object.keys(trials))("%s: whatever sync fails, the workbook is as before, or done, or it is said what stands; then the goal is reached", async (name) => {
  const failed = await failuresOf(name, mostWrites);
  tried.push(...failed);
  expect(failed.length).toBeGreaterThan(0);
  expect(failed.filter(({ outcome, reached }) => outcome === "untold" || !reached).slice(0, 5)).toEqual([]);
});

afterAll(() => {
  const count = (outcome: FailedTrial["outcome"]): number => tried.filter((each) => each.outcome === outcome).length;
  const figures = (["as before", "done", "told", "untold"] as const).map((outcome) => `${outcome} ${count(outcome)}`);
  process.stdout.write(`failures tried ${tried.length}: ${figures.join(", ")}; goal reached afterwards in ${tried.filter(({ reached }) => reached).length}\n`);
});
