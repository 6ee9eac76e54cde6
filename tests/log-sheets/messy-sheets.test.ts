import { describe, expect, it } from "vitest";
import { messySheets } from "./messy-sheet";
import { type Outcome } from "./outcome";
import { outcomeOf } from "./tally";

const sheets = messySheets();

const silent = ({ columns, rows }: Outcome): number =>
  [...columns, ...rows].filter((one) => one === "wrong in silence").length;
const lost = ({ rows }: Outcome): number => rows.filter((one) => one === "lost").length;

describe.each(sheets)("messy log sheet $name", (sheet) => {
  it(`reads or asks as its keeper would, 0 wrong in silence, 0 lost: ${sheet.why}`, () => {
    const outcome = outcomeOf(sheet);
    expect(outcome.faults).toEqual([]);
    expect({ silent: silent(outcome), lost: lost(outcome) }).toEqual({ silent: 0, lost: 0 });
  });
});

it("no two messy sheets have one name, and each has a reason", () => {
  expect(new Set(sheets.map(({ name }) => name)).size).toBe(sheets.length);
  expect(sheets.filter(({ why }) => why.length < 15)).toEqual([]);
});

it("holds at least 280 messy sheets", () => {
  expect(sheets.length).toBeGreaterThanOrEqual(280);
});
