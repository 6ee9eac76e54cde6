import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

/** How far a value can be trusted, strongest first. */
export const standings = {
  published: "read in the source itself",
  reproduced: "read in a secondary copy of the source",
  computed: "computed from a published formula or constant, apart from this program",
  "common-practice": "common practice, no source",
  memory: "from memory, source named, text not seen",
} as const;
export type Standing = keyof typeof standings;

export type Scalar = number | string | boolean;

/** One published fact: what goes into the function's arguments, and what must come out. */
export interface CheckRow {
  /** One item per argument: a value, a series of values (a column), or null for an argument left out. */
  readonly given: readonly (Scalar | null | readonly (Scalar | null)[])[];
  readonly expected: number | string;
  /** Largest allowed difference in the answer's unit; `relative` instead: as a share of the expected value. */
  readonly tolerance?: number;
  readonly relative?: number;
  /** Row and column of the answer that is meant, from 1; the first cell if left out. */
  readonly at?: readonly [row: number, column: number];
  readonly note?: string;
}

/** A file of facts from one source about one function. */
export interface CheckFile {
  readonly name: string;
  readonly about: string;
  readonly source: string;
  readonly page: string;
  readonly standing: Standing;
  readonly unit: string;
  readonly function: string;
  readonly rows: readonly CheckRow[];
}

/** Every check file of the project, by name; nothing is left out. */
export function checkFiles(folder: string = import.meta.dirname): CheckFile[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".json") && name !== "tsconfig.json")
    .sort()
    .map((name) => ({ ...(JSON.parse(readFileSync(path.join(folder, name), "utf8")) as CheckFile), name: path.basename(name, ".json") }));
}

/** A number that may be further off than this share of itself is no check. */
const widestTolerance = 0.1;

/** What is wrong with a check file, in words; empty when it can be trusted to check something. */
export function faultsOf(file: CheckFile, functions: readonly string[]): string[] {
  const texts = (["about", "source", "page", "unit"] as const).filter((field) => typeof file[field] !== "string");
  return [
    ...texts.map((field) => `no ${field}`),
    ...(file.source.trim() === "" ? ["an empty source"] : []),
    ...(/^\[[a-z0-9.-]+\]|^by hand\b|^common practice\b/.test(file.source.trim()) || file.source.trim() === "" ? [] : ["a source that begins with no key"]),
    ...(Object.hasOwn(standings, file.standing) ? [] : [`unknown standing "${file.standing}"`]),
    ...(functions.includes(file.function) ? [] : [`unknown function "${file.function}"`]),
    ...(Array.isArray(file.rows) && file.rows.length > 0 ? [] : ["no rows"]),
    ...file.rows.flatMap((row, index) => faultsOfRow(row).map((fault) => `row ${index + 1}: ${fault}`)),
  ];
}

function faultsOfRow({ given, expected, tolerance, relative }: CheckRow): string[] {
  if (!Array.isArray(given) || given.length === 0) return ["nothing given"];
  if (typeof expected === "string") return expected === "" ? ["an empty expectation"] : [];
  if (!Number.isFinite(expected)) return ["the expectation is no number"];
  const allowed = tolerance ?? (relative ?? Number.NaN) * Math.abs(expected);
  if (!(allowed > 0)) return ["no tolerance above 0"];
  return expected !== 0 && allowed > widestTolerance * Math.abs(expected) ? ["a tolerance above a tenth of the value"] : [];
}
