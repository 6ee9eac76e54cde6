import { type CellValue, type FunctionsHost, type Matrix } from "../../workbench/host/functions-host";
import { type CheckFile, type CheckRow } from "./check-file";

/** How one answer of the built bundle stands against its published value. */
export interface Comparison {
  readonly file: CheckFile;
  readonly row: CheckRow;
  readonly answer: CellValue;
  /** Share of the expected value; the plain difference where 0 is expected; 0 or Infinity for words and errors. */
  readonly error: number;
  readonly within: boolean;
}

/** The one comparison: the gate and the accuracy page both rest on it. */
export function compare(host: FunctionsHost, file: CheckFile, row: CheckRow): Comparison {
  const [line, column] = row.at ?? [1, 1];
  const answer = host.call(file.function, row.given.map(asRange))[line - 1]?.[column - 1];
  return { file, row, answer, ...judge(row, answer) };
}

export const compareAll = (host: FunctionsHost, files: readonly CheckFile[]): Comparison[] =>
  files.flatMap((file) => file.rows.map((row) => compare(host, file, row)));

function judge({ expected, tolerance, relative }: CheckRow, answer: CellValue): { error: number; within: boolean } {
  if (typeof expected === "string") {
    const same = textOf(answer) === expected;
    return { error: same ? 0 : Infinity, within: same };
  }
  if (typeof answer !== "number") return { error: Infinity, within: false };
  const difference = Math.abs(answer - expected);
  const allowed = tolerance ?? (relative ?? 0) * Math.abs(expected);
  return { error: expected === 0 ? difference : difference / Math.abs(expected), within: difference <= allowed };
}

/** An error is expected by its code: "#VALUE!". */
const textOf = (answer: CellValue): CellValue => (typeof answer === "object" ? answer.error : answer);

function asRange(given: CheckRow["given"][number]): Matrix | undefined {
  if (given === null) return undefined;
  if (typeof given === "object") return given.map((cell) => [cell ?? undefined]);
  return [[given]];
}

/** The check as a fact: "ECAT25(1.305, 21) is 1.413 mS/cm within 0.0011". */
export function factOf({ function: id, unit }: CheckFile, { given, expected, tolerance, relative, note }: CheckRow): string {
  const call = `${id}(${given.map((item) => (typeof item === "object" && item !== null ? `{${item.join("; ")}}` : String(item ?? ""))).join(", ")})`;
  const allowed = tolerance === undefined ? `${(relative ?? 0) * 100} %` : String(tolerance);
  const answer = typeof expected === "string" ? `"${expected}"` : `${expected} ${unit} within ${allowed}`.replace("  ", " ");
  return `${call} is ${answer}${note === undefined || note === "" ? "" : ` (${note})`}`;
}
