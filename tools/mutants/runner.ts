import path from "node:path";
import { BaseSequencer, createVitest, type TestSpecification, type Vitest } from "vitest/node";
import { bundleWith } from "./bundle";
import { testsOf } from "./tests-of";

/** A process of its own, so that a mutant that never ends can be ended: takes a mutant, answers if a test fails. */
export interface Task { readonly file: string; readonly text: string }
export interface Answer { readonly killed: boolean }

const root = path.join(import.meta.dirname, "..", "..");
const built = path.join(root, ".cache", "mutants", String(process.pid));
let current: Task | undefined;

/** Runs the tests in the order in which they are named: the quick ones first, for one that fails is enough. */
class AsNamed extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const { source, built: later } = testsOf(current?.file ?? "src/");
    const rank = ({ moduleId }: TestSpecification): number =>
      [...source, ...later].findIndex((name) => moduleId.includes(name));
    return Promise.resolve([...files].sort((one, other) => rank(one) - rank(other)));
  }
}

const vitest = await createVitest("test", {
  root, watch: false, config: false, include: ["tests/**/*.test.ts"], reporters: [{}], bail: 1,
  testNamePattern: "^(?!.*a year of five-minute readings)",
  pool: "forks", isolate: false, maxWorkers: 1, sequence: { sequencer: AsNamed },
  testTimeout: 60_000, hookTimeout: 60_000,
}, {
  plugins: [{
    name: "mutant",
    enforce: "pre",
    transform: (code, id) => {
      if (current !== undefined && id === path.join(root, current.file)) return current.text;
      if (!id.endsWith("workbench/host/load-bundle.ts")) return undefined;
      return code.replace(`path.join(projectRoot, "dist")`, JSON.stringify(built));
    },
  }],
});

async function fails(of: Vitest, filters: readonly string[]): Promise<boolean> {
  const tests = await of.globTestSpecifications([...filters]);
  const { testModules, unhandledErrors } = await of.runTestSpecifications(tests);
  return unhandledErrors.length > 0 || testModules.some((module) => !module.ok());
}

async function isKilled(task: Task): Promise<boolean> {
  for (const { file } of [current ?? task, task]) vitest.invalidateFile(path.join(root, file));
  current = task;
  const tests = testsOf(task.file);
  if (await fails(vitest, tests.source)) return true;
  if (tests.built.length === 0) return false;
  await bundleWith(task.file, task.text, built);
  return fails(vitest, tests.built);
}

process.on("message", (task: Task) => {
  void isKilled(task).then((killed) => process.send?.({ killed } satisfies Answer));
});
process.send?.("ready");
