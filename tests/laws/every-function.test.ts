import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type BlankDelivery, type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host, metadata } = loadBundle();

/** Whatever a sheet can hold, and what it should not. */
const cell: fc.Arbitrary<CellValue> = fc.oneof(
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
  .chain(([rows, columns]) => fc.array(fc.array(cell, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }));
const argument: fc.Arbitrary<Matrix | undefined> = fc.oneof({ weight: 6, arbitrary: matrix }, fc.constant(undefined));
const blank = fc.constantFrom<BlankDelivery>("zero", "null", "empty");

const isWhole = (value: unknown): boolean => {
  if (typeof value === "number") return Number.isFinite(value);
  return typeof value === "string" || typeof value === "boolean" || value instanceof host.runtime.Error;
};

describe("every worksheet function, given any cells whatever", () => {
  it("the bundle offers functions to test", () => {
    expect(metadata.functions.length).toBeGreaterThan(5);
  });

  it.each(metadata.functions.map(({ id, parameters }) => [id, parameters.length] as const))(
    "%s answers a rectangle of finite numbers, texts, truths and errors, or one error with a reason",
    (id, parameters) => {
      const call = fc.tuple(fc.array(argument, { minLength: parameters, maxLength: parameters }), blank);
      fc.assert(
        fc.property(call, ([args, delivery]) => {
          const answer = host.callRaw(id, args, delivery);
          if (!Array.isArray(answer)) return answer instanceof host.runtime.Error && Boolean(answer.message);
          const rows = answer as unknown[][];
          const width = rows[0]?.length ?? 0;
          return width > 0 && rows.every((row) => row.length === width && row.every(isWhole));
        }),
        { numRuns: 150 },
      );
    },
  );
});
