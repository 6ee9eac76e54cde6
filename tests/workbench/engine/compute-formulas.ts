import { parseRange } from "hucre";
import { computeBook, type ComputeOptions } from "../../../workbench/engine/compute";
import type { CellValue, FunctionsHost, FunctionsMetadata } from "../../../workbench/host/functions-host";

/** Computes formulas, with or without their equals sign, each alone on an empty sheet of its own; answers the cells that each one fills. */
export async function computeFormulas(
  formulas: readonly string[],
  host: FunctionsHost,
  metadata: FunctionsMetadata,
  options: ComputeOptions = {},
): Promise<CellValue[][][]> {
  const sheets = formulas.map((formula, n) => ({ name: `Formula${n}`, cells: new Map([["A1", { formula: formula.replace(/^=/, "") }]]), tables: [] }));
  const computed = await computeBook({ sheets, names: [], date1904: false }, host, metadata, options);
  return computed.map(({ values, spills }) => {
    const { endCol } = parseRange(spills.get("A1") ?? "A1");
    const cells = [...values.values()];
    return Array.from({ length: cells.length / (endCol + 1) }, (_, row) => cells.slice(row * (endCol + 1), (row + 1) * (endCol + 1)));
  });
}
