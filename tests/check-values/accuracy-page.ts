import { type CheckFile, standings } from "./check-file";
import { type Comparison } from "./compare";

/** Differences below this are rounding of the machine, not of a formula. */
const machineRounding = 1e-12;

/** docs/accuracy.md: how far every function stands from values that others have published. */
export function accuracyPage(comparisons: readonly Comparison[]): string {
  const files = [...new Set(comparisons.map(({ file }) => file))].sort(byFunctionThenName);
  const rows = files.map((file) => line(file, comparisons.filter((each) => each.file === file)));
  return [
    "# Accuracy",
    "",
    "Printed by `npm run accuracy -- --write` from `tests/check-values/`: the built functions against values from outside. The same",
    "comparison is the gate in `npm test`, with a tolerance of its own beside every value. The relative error is the share of the expected",
    "value (the plain difference where 0 is expected); answers in words are counted. Published values are themselves rounded: an error",
    "of the size of their last digit is theirs as much as ours.",
    "",
    ...Object.entries(standings).map(([standing, meaning]) => `- **${standing}**: ${meaning}.`),
    "",
    "| function | what | values | median error | largest error | against | standing |",
    "|---|---|--:|--:|--:|---|---|",
    ...rows,
    "",
    `${comparisons.length} values in ${files.length} sets.`,
    "",
  ].join("\n");
}

function line(file: CheckFile, comparisons: readonly Comparison[]): string {
  const numbers = comparisons.filter(({ row }) => typeof row.expected === "number").map(({ error }) => error);
  const same = comparisons.filter(({ error }) => error === 0).length;
  const errors = numbers.length === 0 ? [`${same} of ${comparisons.length} words`, ""] : [shown(median(numbers)), shown(Math.max(...numbers))];
  const against = file.page === "" ? file.source : `${file.source}, ${file.page}`;
  const cells = [file.function, file.about, String(comparisons.length), ...errors, against, file.standing];
  return `| ${cells.map((cell) => cell.replaceAll("|", "/")).join(" | ")} |`;
}

const byFunctionThenName = (a: CheckFile, b: CheckFile): number =>
  a.function === b.function ? (a.name < b.name ? -1 : 1) : a.function < b.function ? -1 : 1;

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? Number.NaN;
  return (lower + upper) / 2;
}

const shown = (share: number): string => (share < machineRounding ? "0" : `${Number((share * 100).toPrecision(2))} %`);
