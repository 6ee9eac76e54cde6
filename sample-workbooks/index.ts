import { computeBook } from "../workbench/engine/compute";
import { loadBundle } from "../workbench/host/load-bundle";
import { csvOf } from "./csv";
import { crisisWorkbook } from "./workbooks/crisis";
import { flushSheetWorkbook } from "./workbooks/flush-sheet";
import { healthyBenchWorkbook } from "./workbooks/healthy-bench";
import { manyVesselsWorkbook } from "./workbooks/many-vessels-messy";
import { mixSheetWorkbook } from "./workbooks/mix-sheet";
import { phLockoutWorkbook } from "./workbooks/ph-lockout";
import { saltBuildupWorkbook } from "./workbooks/salt-buildup";
import { bookOf, withCachedValues } from "./xlsx/cached-values";
import { type PackageOptions, workbookBytes } from "./xlsx/package";
import { type WorkbookSpec } from "./xlsx/spec";

/** Every sample workbook by its file's name without the ending. */
export const sampleWorkbooks: Readonly<Record<string, WorkbookSpec>> = {
  crisis: crisisWorkbook,
  "healthy-bench": healthyBenchWorkbook,
  "salt-buildup": saltBuildupWorkbook,
  "ph-lockout": phLockoutWorkbook,
  "many-vessels-messy": manyVesselsWorkbook,
  "mix-sheet": mixSheetWorkbook,
  "flush-sheet": flushSheetWorkbook,
};

/** The samples whose first sheet is also written as a plain .csv. */
const alsoCsv = new Set(["salt-buildup"]);

/** Every sample file by name, with the true values of its formulas beside them. */
export async function sampleFiles(options: PackageOptions = {}): Promise<Map<string, Uint8Array>> {
  const { host, metadata } = loadBundle();
  const files = new Map<string, Uint8Array>();
  for (const [name, workbook] of Object.entries(sampleWorkbooks)) {
    const computed = await computeBook(bookOf(workbook), host, metadata, { blank: "zero" });
    files.set(`${name}.xlsx`, workbookBytes(withCachedValues(workbook, computed), options));
    const [log] = workbook.sheets;
    if (log !== undefined && alsoCsv.has(name)) files.set(`${name}.csv`, new TextEncoder().encode(csvOf(log)));
  }
  return files;
}
