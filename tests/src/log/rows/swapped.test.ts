import { describe, expect, it } from "vitest";
import { readLog } from "../../../../src/index";

/** What becomes of an EC and a pH in one row among usual ones: the values read, and the columns left out. */
function pair(side: "in" | "runoff", ec: unknown, ph: unknown): unknown {
  const rows = [[1.8, 6], [1.8, 6], [ec, ph], [1.8, 6]].map((cells, at) => [45_778 + at, ...cells, 22]);
  const { rows: read, problems } = readLog({ cells: [["Date", `EC ${side}`, `pH ${side}`, "Air temp"], ...rows] });
  const row = read.find(({ row: at }) => at === 3);
  const values = side === "in" ? [row?.inputEc, row?.inputPh] : [row?.runoffEc, row?.runoffPh];
  return [...values, problems.filter(({ used }) => !used).map(({ row: at, column }) => `${at},${column}`).join(" ")];
}

describe.each(["in", "runoff"] as const)("an EC and a pH of the %s in each other's column", (side) => {
  it("are left out, and both cells say so once", () => {
    expect(pair(side, 6, 1.8)).toEqual([undefined, undefined, "3,1 3,2"]);
    expect(pair(side, 4.5, 2.9)).toEqual([undefined, undefined, "3,1 3,2"]);
    expect(pair(side, 7.5, 1.1)).toEqual([undefined, undefined, "3,1 3,2"]);
  });

  it("are kept where the EC is no usual pH, or the pH can be one", () => {
    expect(pair(side, 4.4, 1.8)).toEqual([4.4, 1.8, ""]);
    expect(pair(side, 7.6, 1.8)).toEqual([7.6, 1.8, ""]);
    expect(pair(side, 6, 3)).toEqual([6, 3, ""]);
  });
});

it("a row in which nothing else stands is set aside then, with the reason", () => {
  const cells = [["Date", "Runoff EC mS/cm", "Runoff pH"], [45_778, 1.8, 6], [45_779, 6, 1.8], [45_780, 1.8, 6]];
  const { setAside, rows } = readLog({ cells });
  expect(rows.map(({ row }) => row)).toEqual([1, 3]);
  expect(setAside).toEqual([
    { row: 2, column: 1, reason: "no reading: EC 6 and pH 1.8 look as if they had changed places: neither is used" },
  ]);
});

it("what is said of the other cells of the row stays said", () => {
  const rows = [[1.8, 6, 22], [6, 1.8, "~22"], [1.8, 6, 22]].map((cells, at) => [45_778 + at, ...cells]);
  const { problems } = readLog({ cells: [["Date", "Runoff EC mS/cm", "Runoff pH", "Air temp"], ...rows] });
  expect(problems.map(({ row, column, used }) => [row, column, used])).toEqual([[2, 1, false], [2, 2, false], [2, 3, true]]);
});

it("a pot's name and a figure that cannot be are nothing left in it", () => {
  const header = ["Date", "Pot", "EC in", "pH in", "Runoff pH"];
  const rows = [["2025-05-01", "A", 1.8, 6, 6], ["2025-05-02", "A", 6, 1.8, 61], ["2025-05-03", "A", 1.8, 6, 6]];
  expect(readLog({ cells: [header, ...rows] }).rows.map(({ row }) => row)).toEqual([1, 3]);
});
