import { beforeAll, describe, expect, it } from "vitest";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { computedByLibreOffice, hasLibreOffice } from "../workbench/engine/libre-office";
import { plainFormulas } from "./plain-formulas";
import { type PlainCall, plainCalls, plainWorkbook } from "./plain-sheet";

const { host } = loadBundle();
const calls = plainCalls(plainFormulas);
const relative = 1e-9;

const found = hasLibreOffice();
if (!found) process.stderr.write("\nSKIPPED: no LibreOffice (soffice) on this machine: the functions are NOT held against plain formulas\n\n");

function ours({ id, args, at: [row, column] }: PlainCall): CellValue {
  const ranges = args.map((arg) => (typeof arg === "object" ? arg.map((cell) => [cell]) : [[arg]]));
  return host.call(id, ranges)[row - 1]?.[column - 1];
}

it("has LibreOffice wherever CI=true", () => {
  expect(found || process.env["CI"] !== "true").toBe(true);
});

describe.runIf(found)("what LibreOffice computes from plain formulas, to 1e-9", () => {
  let theirs: ReadonlyMap<string, { readonly value?: CellValue }>;
  beforeAll(async () => {
    theirs = (await readXlsx(await computedByLibreOffice(plainWorkbook(calls)))).sheets[0]?.cells ?? new Map();
  }, 180_000);

  it.each(calls.map((call) => [call.id, call.args.map((arg) => JSON.stringify(arg)).join(", "), call] as const))("%s(%s)", (_, __, call) => {
    const [answer, plain] = [ours(call), theirs.get(call.cell)?.value];
    if (typeof plain !== "number" || typeof answer !== "number") {
      expect(typeof plain).toMatch(/^(number|string)$/);
      expect(answer).toBe(plain);
      return;
    }
    expect(Math.abs(answer - plain)).toBeLessThanOrEqual(relative * Math.abs(plain));
  });
});
