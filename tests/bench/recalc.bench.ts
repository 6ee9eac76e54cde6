import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { type BookCell } from "../../workbench/book";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { hasLibreOffice, libreOfficeCommand } from "../workbench/engine/libre-office";
import { rawWorkbook } from "../workbench/files/raw-workbook";
import { type Bench, type BenchResult, median } from "./measure";
import { programRun, type ProgramRun } from "./program-run";

/** Rows of runoff EC, input EC and the salt ratio of the two: as our function writes it in a file, or as the plain formula. */
function ratios(rows: number, formula: (row: number) => string): Uint8Array {
  const line = (row: number): string => {
    const [runoff, input] = [2 + (row % 37) / 20, 1.2 + (row % 23) / 20].map((value) => value.toFixed(2));
    return `<row r="${row}"><c r="A${row}"><v>${runoff}</v></c><c r="B${row}"><v>${input}</v></c>${formula(row)}</row>`;
  };
  return rawWorkbook({ sheets: [{ name: "Log", rows: Array.from({ length: rows }, (_, n) => line(n + 1)).join("") }] });
}

const called = (row: number): string =>
  `<c r="C${row}" cm="1"><f t="array" ref="C${row}">_xldudf_RUNOFF_SALTRATIO(A${row},B${row})</f><v>0</v></c>`;
const plain = (row: number): string => `<c r="C${row}"><f>A${row}/B${row}</f><v>0</v></c>`;

interface Trial extends ProgramRun {
  readonly cells: ReadonlyMap<string, BookCell>;
}

const root = path.resolve(import.meta.dirname, "../..");

async function recalculated(folder: string, bytes: Uint8Array): Promise<Trial> {
  const [input, out] = [path.join(folder, "ours.xlsx"), path.join(folder, "computed.xlsx")];
  writeFileSync(input, bytes);
  rmSync(out, { force: true });
  const run = await programRun(process.execPath, [path.join(root, "tools/run.js"), "workbench/recalc.ts", input, "--out", out]);
  return { ...run, cells: await cellsIn(out) };
}

async function inLibreOffice(folder: string, bytes: Uint8Array): Promise<Trial> {
  const input = path.join(folder, "twin.xlsx");
  writeFileSync(input, bytes);
  const run = await programRun(...libreOfficeCommand(folder, input));
  return { ...run, cells: await cellsIn(path.join(folder, "out", "twin.xlsx")) };
}

async function cellsIn(file: string): Promise<Trial["cells"]> {
  return (await readXlsx(readFileSync(file))).sheets[0]?.cells ?? new Map<string, BookCell>();
}

async function inFolder<Answer>(work: (folder: string) => Promise<Answer>): Promise<Answer> {
  const folder = mkdtempSync(path.join(tmpdir(), "recalc-bench-"));
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

const formulas = 10_000;
const rounds = 3;

interface Figures {
  readonly milliseconds: readonly [ours: number, theirs: number];
  readonly megabytes: readonly [ours: number, theirs: number];
}

/** In turns, after one of each that is not counted; every answer has to agree. */
async function besideLibreOffice(formula: (row: number) => string): Promise<Figures> {
  return inFolder(async (folder) => {
    const trials: [ours: Trial, theirs: Trial][] = [];
    for (let round = 0; round <= rounds; round++) {
      const ours = await recalculated(folder, ratios(formulas, formula));
      trials.push([ours, await inLibreOffice(folder, ratios(formulas, plain))]);
    }
    for (const [{ cells }, twin] of trials) for (let row = 1; row <= formulas; row++) checkSame(cells, twin.cells, `C${row}`);
    const counted = trials.slice(1);
    const medianOf = (which: 0 | 1, what: keyof ProgramRun): number => median(counted.map((pair) => pair[which][what]));
    return {
      milliseconds: [medianOf(0, "milliseconds"), medianOf(1, "milliseconds")],
      megabytes: [medianOf(0, "megabytes"), medianOf(1, "megabytes")],
    };
  });
}

function checkSame(ours: Trial["cells"], theirs: Trial["cells"], address: string): void {
  const difference = Number(ours.get(address)?.value) - Number(theirs.get(address)?.value);
  if (!(Math.abs(difference) < 1e-9)) throw new Error(`${address} differs from LibreOffice's`);
}

function comparison(name: string, what: keyof Figures, aim: number, figures: () => Promise<Figures>): Bench {
  const unit = what === "milliseconds" ? "of its time" : "of its memory";
  return {
    name,
    async run(): Promise<BenchResult> {
      if (!hasLibreOffice()) return { figure: NaN, unit, aim, detail: "LibreOffice is not installed here" };
      const [ours, theirs] = (await figures())[what];
      const [shown, short] = what === "milliseconds" ? [(value: number) => (value / 1000).toFixed(2), "s"] : [(value: number) => value.toFixed(0), "MB"];
      return { figure: ours / theirs, unit, aim, detail: `${shown(ours)} against ${shown(theirs)} ${short}, start included, median of ${rounds}` };
    },
  };
}

/** Measured once for both of its benches. */
function once<Answer>(work: () => Promise<Answer>): () => Promise<Answer> {
  let answer: Promise<Answer> | undefined;
  return () => (answer ??= work());
}

const [withCalls, withPlain] = [called, plain].map((formula) => once(() => besideLibreOffice(formula)));
const large = once(() => inFolder(async (folder) => [
  await recalculated(folder, ratios(100_000, called)), await recalculated(folder, ratios(200_000, called)),
] as const));

const twins = [["of ours", withCalls], ["that are plain", withPlain]] as const;
const what = `recalc of ${formulas} formulas`;
export const benches: readonly Bench[] = [
  ...twins.flatMap(([kind, figures]) => (figures === undefined ? [] : [
    comparison(`${what} ${kind} against LibreOffice with the plain twin`, "milliseconds", 0.6, figures),
    comparison(`memory of ${what} ${kind} against LibreOffice`, "megabytes", 2, figures),
  ])),
  {
    name: "growth of recalc from 100,000 to 200,000 rows of three cells, one of them a call",
    async run() {
      const [less, more] = (await large()).map(({ milliseconds }) => milliseconds);
      const [from = NaN, to = NaN] = [less, more];
      return { figure: to / from, unit: "times the time for 2 times the rows", aim: 2.3, detail: `${(from / 1000).toFixed(1)} to ${(to / 1000).toFixed(1)} s, one run each` };
    },
  },
  {
    name: "memory of recalc with 200,000 rows of three cells",
    async run() {
      const [, { megabytes }] = await large();
      return { figure: megabytes, unit: "MB", aim: 600, detail: "the most that the process held" };
    },
  },
];
