import { readFileSync } from "node:fs";
import path from "node:path";
import { BaseSequencer, createVitest, type TestModule, type TestSpecification } from "vitest/node";
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
  root, watch: false, config: false, include: ["tests/**/*.test.ts"], setupFiles: ["tests/seed.ts"], reporters: [{}],
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

/** What the tests came to, up to so many failures; the interface also hands over what earlier runs left behind. */
async function run(tests: readonly TestSpecification[], failures: number): Promise<TestModule[]> {
  vitest.config.bail = failures;
  const ids = new Set(tests.map(({ moduleId }) => moduleId));
  const { testModules } = await vitest.runTestSpecifications([...tests]);
  return testModules.filter(({ moduleId }) => ids.has(moduleId));
}

async function fail(tests: readonly TestSpecification[]): Promise<boolean> {
  const modules = await run(tests, 1);
  return modules.some((module) => !module.ok());
}

function put(task: Task): void {
  for (const { file } of [current ?? task, task]) vitest.invalidateFile(path.join(root, file));
  current = task;
}

const known = new Map<string, Promise<readonly TestSpecification[]>>();

/** The tests that hold without any change; one that fails by itself would count every mutant as killed. */
function soundTests(names: readonly string[], file: string): Promise<readonly TestSpecification[]> {
  const sound = known.get(names.join()) ?? findSound(names, file);
  known.set(names.join(), sound);
  return sound;
}

async function findSound(names: readonly string[], file: string): Promise<readonly TestSpecification[]> {
  const unchanged = { file, text: readFileSync(path.join(root, file), "utf8") };
  put(unchanged);
  await bundleWith(unchanged.file, unchanged.text, built);
  const tests = names.length === 0 ? [] : await vitest.globTestSpecifications([...names]);
  const modules = await run(tests, 0);
  return tests.map((test) => {
    const module = modules.find(({ moduleId }) => moduleId === test.moduleId);
    return module?.ok() === true ? test : passing(test, module);
  });
}

function passing(test: TestSpecification, module: TestModule | undefined): TestSpecification {
  const failed = [...(module?.children.allTests("failed") ?? [])];
  for (const { fullName } of failed) console.error(`left out, it fails without any change: ${fullName}`);
  const testIds = [...(module?.children.allTests("passed") ?? [])].map(({ id }) => id);
  return test.project.createSpecification(test.moduleId, { testIds });
}

async function isKilled(task: Task): Promise<boolean> {
  const names = testsOf(task.file);
  const source = await soundTests(names.source, task.file);
  const later = await soundTests(names.built, task.file);
  process.send?.("begun");
  put(task);
  if (await fail(source)) return true;
  if (later.length === 0) return false;
  await bundleWith(task.file, task.text, built);
  return fail(later);
}

process.on("message", (task: Task) => {
  void isKilled(task).then((killed) => process.send?.({ killed } satisfies Answer));
});
process.send?.("ready");
