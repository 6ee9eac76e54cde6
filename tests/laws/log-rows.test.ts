import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LogGrid, type LogReading, readLog } from "../../src/index";
import { times } from "./times";

const headers = [
  "Date", "Time", "Pot", "EC in", "EC in (mS/cm)", "pH in", "Runoff EC", "Runoff ppm", "Runoff pH", "Drain mL", "Temp", "RH", "Notes", "Week 1", "",
  "mS/cm", "Input", "Runoff", "Pot 1 EC", "Total",
];
const texts = [
  "", " ", "NA", "-", "1,8", "1.8 mS", "~6.2", ">5", "2024-04-01", "3/4/2024", "13/4/24", "9:40 PM", "Pot 3", "P-03", "Total", "flushed", "#N/A", "x".repeat(80),
  "\u0000", "=1+1", "20240518", "1e999", "__proto__", "constructor",
];
const cell = fc.oneof(
  fc.constantFrom<unknown>(...headers, ...texts, null, undefined, true, {}, []),
  fc.double(),
  fc.integer({ min: -5, max: 50_000 }),
  fc.constantFrom(0, 6.1, 1.8, 45_383, 45_384.5, 940, 20_240_518, Number.NaN, Number.POSITIVE_INFINITY),
  fc.string({ maxLength: 12 }),
);
const row = fc.oneof(
  fc.array(cell, { maxLength: 8 }),
  fc.array(fc.constantFrom<unknown>(...headers), { minLength: 2, maxLength: 8 }),
  fc.constant<unknown[]>([]),
);
const grid = fc.array(row, { maxLength: 25 });

function expectEveryRowOnce(cells: LogGrid["cells"], reading: LogReading): void {
  const named = [...reading.rows.map((used) => used.row), ...reading.setAside.map((aside) => aside.row), ...reading.headerRows];
  expect(new Set(named).size).toBe(named.length);
  expect(named.length + reading.blankRows).toBe(cells.length);
  const left = cells.map((_, at) => at).filter((at) => !named.includes(at));
  for (const at of left) expect(cells[at]?.every((blank) => blank === null || blank === undefined || (typeof blank === "string" && blank.trim() === ""))).toBe(true);
}

const numbersOf = (reading: LogReading): number[] => reading.rows.flatMap((used) => Object.values(used).filter((value) => typeof value === "number"));

describe("readLog on any grid at all", () => {
  it("uses, sets aside, counts as blank or as header every row exactly once", () => {
    fc.assert(fc.property(grid, fc.boolean(), (cells, date1904) => { expectEveryRowOnce(cells, readLog({ cells, date1904 })); }), times(500));
  });

  it("does so with any header row and any columns answered", () => {
    const quantity = fc.constantFrom("date", "time", "vessel", "input EC", "runoff EC", "runoff pH", "input volume", "air temperature", "notes", "other");
    const answers = fc.dictionary(fc.constantFrom("0", "1", "2", "3", "4", "9"), fc.record({ quantity }));
    fc.assert(
      fc.property(grid, fc.integer({ min: -1, max: 30 }), answers, (cells, headerRow, columns) => {
        expectEveryRowOnce(cells, readLog({ cells }, { headerRow, columns }));
      }),
      times(300),
    );
  });

  it("gives no NaN, no infinity, and no EC or pH of 0", () => {
    fc.assert(fc.property(grid, (cells) => {
      const reading = readLog({ cells }, { ppmScale: 500, ecUnit: "mS/cm", volumeUnit: "L", temperatureUnit: "C" });
      expect(numbersOf(reading).every(Number.isFinite)).toBe(true);
      for (const { inputEc, runoffEc, inputPh, runoffPh } of reading.rows) expect([inputEc, runoffEc, inputPh, runoffPh]).not.toContain(0);
    }), { ...times(500), examples: [[[["Date", "Drain mL", "Date", "Date", "Time", "Date", "Date"], [20_240_518, 0, 0, "", Number.POSITIVE_INFINITY]]]] });
  });

  it("says a reason for every row set aside and every problem, and reads the same grid the same way twice", () => {
    fc.assert(fc.property(grid, (cells) => {
      const reading = readLog({ cells });
      expect([...reading.setAside, ...reading.problems].every(({ reason }) => reason.trim() !== "")).toBe(true);
      expect(readLog({ cells })).toEqual(reading);
    }), times(200));
  });

  it("gives every problem on a row that is used", () => {
    fc.assert(fc.property(grid, (cells) => {
      const reading = readLog({ cells });
      const used = new Set(reading.rows.map((at) => at.row));
      expect(reading.problems.filter((problem) => !used.has(problem.row))).toEqual([]);
    }), times(300));
  });
});
