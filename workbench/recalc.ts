import path from "node:path";
import { setFlagsFromString } from "node:v8";
import { buildIfStale } from "./build-if-stale";
import { about, FileProblem, messageOf } from "./files/file-problem";
import { patchXlsx } from "./files/patch-xlsx";
import { readBytes } from "./files/read-book";
import { readXlsx } from "./files/read-xlsx";
import { writeWhole } from "./files/write-whole";
import { loadBundle } from "./host/load-bundle";
import { asJson, asTable } from "./recalc-report";
import { recalcRequest, UsageProblem, type RecalcRequest } from "./recalc-request";

/** What is no longer needed is collected when a half has been added, not when twice as much: a large workbook fits into 600 MB. */
setFlagsFromString("--heap-growing-percent=50");

const exitCodes = { failed: 1, notUsable: 2 } as const;

/** `npm run recalc`: opens a workbook, computes every formula with the built functions, and says or writes what came out. */
async function recalc({ file, out, blank, json }: RecalcRequest): Promise<void> {
  const name = path.basename(file);
  const bytes = await about(name, () => readBytes(file));
  const book = await about(name, () => readXlsx(bytes));
  await buildIfStale();
  const { host, metadata } = loadBundle();
  const { computeBook } = await import("./engine/compute");
  const computed = await about(name, () => computeBook(book, host, metadata, { blank }));
  if (out !== undefined) {
    const copy = await about(name, () => patchXlsx(bytes, computed));
    await writeWhole(out, copy.bytes);
    process.stderr.write(`${copy.changed} changed cells, the rest as it was: ${out}\n`);
  }
  process.stdout.write(json ? asJson(computed) : asTable(book, computed));
}

/** One clear line for whatever stops the work; standard output stays empty. */
function stop(problem: unknown): never {
  // The engine goes down into a formula as deep as it is nested.
  const isTooDeep = problem instanceof RangeError;
  const isExpected = problem instanceof FileProblem || problem instanceof UsageProblem || isTooDeep;
  process.stderr.write(`recalc: ${isTooDeep ? "formulas or names of it are nested deeper than can be computed" : messageOf(problem)}\n`);
  process.exit(isExpected ? exitCodes.notUsable : exitCodes.failed);
}

process.on("unhandledRejection", stop);
try {
  await recalc(await recalcRequest(process.argv.slice(2), process.env["INIT_CWD"] ?? process.cwd()));
} catch (problem) {
  stop(problem);
}
