import { type CheckFile, standings } from "./check-file";
import { type Comparison } from "./compare";

/** Differences below this are rounding of the machine, not of a formula. */
const machineRounding = 1e-12;

/** docs/accuracy.md: how far every function stands from values that others have published. */
export function accuracyPage(comparisons: readonly Comparison[], functions: readonly string[]): string {
  const files = [...new Set(comparisons.map(({ file }) => file))].sort(byFunctionThenName);
  const rows = files.map((file) => line(file, comparisons.filter((each) => each.file === file)));
  return [
    "# Accuracy",
    "",
    "How far each function can be trusted: its answers held against figures that others have published, function by function.",
    "",
    "Back to the [README](../README.md).",
    "",
    "Printed by `npm run accuracy -- --write` from `tests/check-values/`: the built functions against values from outside. The same",
    "comparison is the gate in `npm test`, with a tolerance of its own beside every value. Errors are shares of the expected value; where 0",
    "is expected, the plain difference with its unit. Answers in words are counted. Published values are themselves rounded: an error of",
    "the size of their last digit is theirs as much as ours.",
    "",
    ...Object.entries(standings).map(([standing, meaning]) => `- **${standing}**: ${meaning}.`),
    "",
    "| function | what | values | median error | largest error | against | standing |",
    "|---|---|--:|--:|--:|---|---|",
    ...rows,
    "",
    `${comparisons.length} values in ${files.length} sets.`,
    "",
    `Without a published or reproduced value, because none was found or the rule is ours: ${withoutOutside(files, functions).join(", ")}. What holds`,
    "them: values computed apart from this program (above), the laws in `tests/laws/`, the plain formulas in `tests/independent/`, and for",
    "DIAGNOSE, WHICHFIRST and ROWFLAG the published pots in `tests/cases/`.",
    "",
  ].join("\n");
}

function withoutOutside(files: readonly CheckFile[], functions: readonly string[]): string[] {
  const outside = new Set(files.filter(({ standing }) => standing === "published" || standing === "reproduced").map((file) => file.function));
  return functions.filter((id) => !outside.has(id)).sort();
}

function line(file: CheckFile, comparisons: readonly Comparison[]): string {
  const errors = errorsShown(file, comparisons);
  const against = file.page === "" ? file.source : `${file.source}, ${file.page}`;
  const cells = [file.function, file.about, String(comparisons.length), ...errors, against, file.standing];
  return `| ${cells.map((cell) => cell.replaceAll("|", "/")).join(" | ")} |`;
}

/** Median and largest error; for words, how many of them are the same. */
function errorsShown({ unit }: CheckFile, comparisons: readonly Comparison[]): [median: string, largest: string] {
  const numbers = comparisons.filter(({ row }) => typeof row.expected === "number");
  if (numbers.length === 0) return [`${comparisons.filter(({ error }) => error === 0).length} of ${comparisons.length} words`, ""];
  const shown = numbers.every(({ row }) => row.expected === 0) ? differenceIn(unit) : share;
  const errors = numbers.map(({ error }) => error);
  return [shown(median(errors)), shown(Math.max(...errors))];
}

const byFunctionThenName = (a: CheckFile, b: CheckFile): number =>
  a.function === b.function ? (a.name < b.name ? -1 : 1) : a.function < b.function ? -1 : 1;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN;
  return (lower + upper) / 2;
}

const twoFigures = (value: number): string => (value < machineRounding ? "0" : String(Number(value.toPrecision(2))));

const share = (error: number): string => (error < machineRounding ? "0" : `${twoFigures(error * 100)} %`);

const differenceIn = (unit: string) => (error: number): string => `${twoFigures(error)} ${unit === "%" ? "percentage points" : unit}`.trim();
