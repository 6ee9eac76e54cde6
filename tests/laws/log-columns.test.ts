import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type LogReading, type LogRow, readLog } from "../../src/index";
import { times } from "./times";

/** A plain log of two pots, one column each: its header, and its cell of a day and a pot. */
const columns: readonly (readonly [header: string, cell: (day: number, pot: number) => unknown])[] = [
  ["Date", (day) => `2024-04-${String(day + 10)}`],
  ["Pot", (_, pot) => `Pot ${pot}`],
  ["EC in (mS/cm)", (day) => 1.6 + (day % 3) / 10],
  ["pH in", (day) => 5.8 + (day % 2) / 10],
  ["Runoff EC (mS/cm)", (day, pot) => 2.2 + day / 10 + pot / 5],
  ["Runoff pH", (day) => 6.1 - (day % 3) / 10],
  ["Water given (L)", (_, pot) => 1.5 + pot / 10],
  ["Runoff (mL)", (day) => 300 + 10 * day],
  ["Room temp (°C)", (day) => 24 + (day % 2)],
  ["RH %", (day) => 55 + day],
  ["Leaf length", (day) => 12 + day],
  ["Week", (day) => 14 + Math.floor(day / 7)],
  ["Notes", (day) => (day === 3 ? "flushed" : "")],
];
const days = [...Array(9).keys()];

function gridOf(order: readonly number[], rename = (header: string): string => header): unknown[][] {
  const chosen = order.map((at) => columns[at] ?? ["", () => ""] as const);
  const rows = days.flatMap((day) => [1, 2].map((pot) => chosen.map(([, cell]) => cell(day, pot))));
  return [chosen.map(([header]) => rename(header)), ...rows];
}

const inOrder = columns.map((_, at) => at);
const plain = readLog({ cells: gridOf(inOrder) });
const withoutRow = (rows: readonly LogRow[]): unknown[] => rows.map((row) => ({ ...row, row: 0 }));
const meanings = ({ columns: read }: LogReading): string[] => read.map(({ header, quantity, unit }) => `${header}: ${quantity} ${String(unit)}`).sort();

describe("what a column of a log means", () => {
  it("the plain log is read without a question: 10 quantities, 18 rows", () => {
    expect(plain.questions).toEqual([]);
    expect(plain.columns.filter(({ read }) => read)).toHaveLength(11);
    expect(plain.rows).toHaveLength(18);
  });

  it("does not change with the order of the columns", () => {
    fc.assert(fc.property(fc.shuffledSubarray(inOrder, { minLength: inOrder.length }), (order) => {
      const read = readLog({ cells: gridOf(order) });
      expect(meanings(read)).toEqual(meanings(plain));
      expect(withoutRow(read.rows)).toEqual(withoutRow(plain.rows));
    }), times(60));
  });

  it("does not change with the names of columns that are not read", () => {
    const names = fc.constantFrom("Stretch cm", "Leaf count", "Node count", "Stage", "Lux", "Weight g", "Flow l/h", "Wind");
    fc.assert(fc.property(names, names, (one, other) => {
      const read = readLog({ cells: gridOf(inOrder, (header) => (header === "Leaf length" ? one : header === "Week" ? other : header)) });
      expect(withoutRow(read.rows)).toEqual(withoutRow(plain.rows));
      expect(read.questions).toEqual([]);
    }), times(40));
  });

  it("does not change with a title above or with blank rows anywhere", () => {
    const places = fc.array(fc.nat({ max: 18 }), { maxLength: 6 });
    fc.assert(fc.property(places, fc.boolean(), (blanks, titled) => {
      const cells = gridOf(inOrder);
      for (const at of [...blanks].sort((a, b) => b - a)) cells.splice(at + 1, 0, []);
      const read = readLog({ cells: titled ? [["Bench 3, coir, spring"], [], ...cells] : cells });
      expect(meanings(read)).toEqual(meanings(plain));
      expect(withoutRow(read.rows)).toEqual(withoutRow(plain.rows));
    }), times(60));
  });
});

/** The columns of quantities whose figures cannot stand for one another. */
const swappable = ["EC in (mS/cm)", "Runoff pH", "Room temp (°C)", "RH %", "Runoff (mL)"].map((header) =>
  columns.findIndex(([name]) => name === header));

describe("two cells that changed places between columns of different quantity", () => {
  it("are noticed: at least one of the two is said, left out or asked about, at any row", () => {
    const pair = fc.shuffledSubarray(swappable, { minLength: 2, maxLength: 2 });
    fc.assert(fc.property(pair, fc.integer({ min: 1, max: 18 }), ([one = 0, other = 0], row) => {
      const cells = gridOf(inOrder);
      const line = cells[row] ?? [];
      [line[one], line[other]] = [line[other], line[one]];
      const { problems, questions } = readLog({ cells });
      const said = problems.some((problem) => problem.row === row && [one, other].includes(problem.column));
      const asked = questions.some((question) => [one, other].some((column) => question.columns.includes(column)));
      expect(said || asked, `${String(columns[one]?.[0])} and ${String(columns[other]?.[0])} in row ${row}`).toBe(true);
    }), times(300));
  });
});
