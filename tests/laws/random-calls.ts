import fc from "fast-check";
import { type BlankDelivery, type CellValue, type FunctionsHost, type FunctionsMetadata, type Matrix } from "../../workbench/host/functions-host";

/** Whatever a sheet can hold, and what it should not. */
export const anyCell: fc.Arbitrary<CellValue> = fc.oneof(
  { weight: 4, arbitrary: fc.double({ min: -1, max: 30, noNaN: true }) },
  { weight: 2, arbitrary: fc.constant(undefined) },
  fc.double(),
  fc.integer(),
  fc.string(),
  fc.boolean(),
  fc.constantFrom("1.8", "1,8", "n/a", "coir", "peat, heavy", "mS/cm", "uS/cm", "ph low", "500", "TRUE", "K", "sulfuric", "7.00"),
  fc.constantFrom({ error: "#N/A" }, { error: "#VALUE!" }, { error: "#DIV/0!" }),
);
const matrix = fc
  .tuple(fc.integer({ min: 1, max: 6 }), fc.integer({ min: 1, max: 3 }))
  .chain(([rows, columns]) => fc.array(fc.array(anyCell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }));
const argument: fc.Arbitrary<Matrix | undefined> = fc.oneof({ weight: 6, arbitrary: matrix }, fc.constant(undefined));

export type RandomCall = readonly [args: (Matrix | undefined)[], blank: BlankDelivery];

export const randomCall = (parameters: number): fc.Arbitrary<RandomCall> =>
  fc.tuple(fc.array(argument, { minLength: parameters, maxLength: parameters }), fc.constantFrom<BlankDelivery>("zero", "null", "empty"));

/** What may be wrong with an answer, whatever was asked. */
export const faults = ["uncaught", "not a rectangle", "not finite", "null or undefined", "-0", "an error without a reason"] as const;
export type Fault = (typeof faults)[number];

/** What is wrong with the answer of one call; the bare function is called as the bundle associated it, so that nothing is caught on the way. */
export function faultsOf(host: FunctionsHost, id: string, [args, blank]: RandomCall): Fault[] {
  const answer = host.callRaw(id, args, blank);
  if (!Array.isArray(answer)) return cellFaults(host, answer);
  const rows = answer as unknown[][];
  const width = rows[0]?.length ?? 0;
  const shape: Fault[] = width > 0 && rows.every((row) => row.length === width) ? [] : ["not a rectangle"];
  return [...shape, ...rows.flat().flatMap((cell) => cellFaults(host, cell))];
}

function cellFaults(host: FunctionsHost, cell: unknown): Fault[] {
  if (cell === null || cell === undefined) return ["null or undefined"];
  if (typeof cell === "number" && !Number.isFinite(cell)) return ["not finite"];
  if (Object.is(cell, -0)) return ["-0"];
  if (!(cell instanceof host.runtime.Error)) return typeof cell === "object" ? ["uncaught"] : [];
  // A fault of its own is caught at the last gate and says so; one that slips by is thrown, and the host object keeps no reason.
  if (cell.message?.includes("fault of its own") === true) return ["uncaught"];
  return cell.message ? [] : ["an error without a reason"];
}

/** So many random calls, spread evenly over all functions; the same seed makes the same calls. */
export function countFaults(host: FunctionsHost, metadata: FunctionsMetadata, calls: number, seed: number): Record<Fault | "calls", number> {
  const counts: Record<Fault | "calls", number> = Object.assign({ calls: 0 }, Object.fromEntries(faults.map((fault) => [fault, 0])) as Record<Fault, number>);
  for (const [n, { id, parameters }] of metadata.functions.entries()) {
    const share = Math.floor(((n + 1) * calls) / metadata.functions.length) - Math.floor((n * calls) / metadata.functions.length);
    for (const call of fc.sample(randomCall(parameters.length), { numRuns: share, seed: seed + n })) {
      counts.calls += 1;
      for (const fault of faultsOf(host, id, call)) counts[fault] += 1;
    }
  }
  return counts;
}
