import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { soundCalls } from "../functions/sound-calls";
import { anyCell, countFaults, faultsOf, randomCall } from "./random-calls";
import { times } from "./times";

const { host, metadata } = loadBundle();

describe("every worksheet function, given any cells whatever", () => {
  it("the bundle offers functions to test", () => {
    expect(metadata.functions.length).toBeGreaterThan(5);
  });

  it.each(metadata.functions.map(({ id, parameters }) => [id, parameters.length] as const))(
    "%s answers a rectangle of finite numbers, texts, truths and errors with a reason, never -0, null or undefined",
    (id, parameters) => {
      fc.assert(fc.property(randomCall(parameters), (call) => { expect(faultsOf(host, id, call)).toEqual([]); }), times(150));
    },
  );

  it("the count of random calls makes as many as asked, and counts a function's fault: one that throws, one that answers null", () => {
    expect(countFaults(host, metadata, 1000, 7)).toMatchObject({ calls: 1000, uncaught: 0, "-0": 0 });
    const broken = loadBundle().host;
    broken.runtime.associate("SALTRATIO", () => { throw new TypeError("oops"); });
    broken.runtime.associate("PHSHIFT", () => [[null, -0, NaN]]);
    const some = { functions: metadata.functions.filter(({ id }) => ["SALTRATIO", "PHSHIFT"].includes(id)) };
    expect(countFaults(broken, some, 20, 7)).toEqual({
      calls: 20, uncaught: 0, "not a rectangle": 0, "not finite": 10, "null or undefined": 10, "-0": 10, "an error without a reason": 10,
    });
  });
});

describe("a column of cells, as one call or as one call a row", () => {
  const good = fc.double({ min: 0.05, max: 14, noNaN: true });
  const cell = fc.oneof({ weight: 8, arbitrary: good }, { weight: 1, arbitrary: anyCell });
  const byCell = Object.entries(soundCalls).filter(([, args]) => args.some(({ takes }) => takes === "cells"));

  it.each(byCell)("%s answers the same", (id, args) => {
    const column = fc.array(fc.tuple(...args.map(() => cell)), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(column, (rows) => {
        const call = (from: number, to: number): CellValue[][] =>
          host.call(id, args.map(({ takes, good: sound }, n) => {
            const steady = [[typeof sound === "object" ? (sound as readonly CellValue[])[0] : sound]];
            return takes === "cells" ? rows.slice(from, to).map((row) => [row[n]]) : steady;
          }));
        const together = call(0, rows.length);
        const eachAlone = rows.map((_, row) => call(row, row + 1)[0]);
        if (together.length === rows.length) expect(together).toEqual(eachAlone);
        // A call that is refused as a whole is refused for a reason that no row is without.
        else expect(eachAlone.every((row) => typeof row?.[0] === "object")).toBe(true);
      }),
      times(60),
    );
  });
});
