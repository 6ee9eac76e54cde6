/** Which tests are to notice a change: first those that read the source, then those that run the built functions. */
export interface TestsOf {
  readonly source: readonly string[];
  readonly built: readonly string[];
}

const examples = "tests/docs/src-examples.test.ts";
const built = ["tests/check-values.test.ts", "tests/functions/"];
const part = (name: string, ...laws: readonly string[]): TestsOf =>
  ({ source: [`tests/src/${name}/`, examples, ...laws.map((law) => `tests/laws/${law}.test.ts`)], built });

const log = ["tests/src/log/", "tests/src/cells/", "tests/log-sheets/", "tests/laws/log-rows.test.ts"];

/** The first folder that a file stands in decides. */
const table: Readonly<Record<string, TestsOf>> = {
  "src/log/": { source: log, built: [] },
  "src/cells/": { source: [...log, "tests/laws/log-computed.test.ts", "tests/taskpane/formulas/"], built },
  "src/maths/": part("maths", "trend"),
  "src/readings/": part("readings", "readings-and-mixes"),
  "src/bands/": { source: ["tests/src/bands/", "tests/docs/band-table.test.ts", examples], built },
  "src/environment/": part("environment"),
  "src/mix/": part("mix", "readings-and-mixes"),
  "src/diagnosis/": {
    source: ["tests/src/diagnosis/", "tests/cases/", examples],
    built: [...built, "tests/laws/verdict.test.ts"],
  },
  "src/flush/": part("flush", "flush"),
  "src/recovery/": part("recovery", "trend"),
  "src/": { source: ["tests/src/", examples], built },
};

export function testsOf(file: string): TestsOf {
  const [, tests] = Object.entries(table).find(([folder]) => file.startsWith(folder)) ?? [];
  if (tests === undefined) throw new Error(`no tests are known for ${file}`);
  return tests;
}
