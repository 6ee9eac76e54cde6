import { describe, expect, it } from "vitest";
import { type SheetSpec } from "../../sample-workbooks/xlsx/spec";
import { placeOf } from "../../sample-workbooks/xlsx/address";
import { sampleWorkbooks } from "../../sample-workbooks/index";
import { type LogAnswers, readLog } from "../../src/index";

/** The typed cells of a workbook's first sheet, as the pane would select them. */
function gridOf(name: string): { cells: unknown[][] } {
  const sheet: SheetSpec | undefined = sampleWorkbooks[name]?.sheets[0];
  const cells: unknown[][] = [];
  for (const [at, cell] of sheet?.cells ?? []) {
    const { row, column } = placeOf(at);
    (cells[row] ??= [])[column] = cell.value;
  }
  return { cells: Array.from(cells, (row) => Array.from((row as unknown[] | undefined) ?? [], (value: unknown) => value)) };
}

describe.each(["crisis", "healthy-bench", "salt-buildup", "ph-lockout"])("%s: the log reader", (name) => {
  const grid = gridOf(name);
  const read = readLog(grid);

  it("asks nothing, sets nothing aside and uses every row under the header", () => {
    expect(read.questions).toEqual([]);
    expect(read.setAside).toEqual([]);
    expect(read.rows).toHaveLength(grid.cells.length - 1);
    expect(read.vessels).toHaveLength(1);
  });

  it("reads the ten typed columns and none of the four computed ones", () => {
    const quantities = read.columns.map(({ quantity }) => quantity);
    expect(quantities.slice(0, 10)).toEqual(
      ["date", "vessel", "input EC", "runoff EC", "input pH", "runoff pH", "input volume", "runoff volume", "solution temperature", "notes"],
    );
    expect(quantities.slice(10)).toEqual(["other", "other", "other", "other"]);
  });
});

describe("salt-buildup: the log reader", () => {
  it("finds the flush of 22 February in the notes, once", () => {
    const flushes = readLog(gridOf("salt-buildup")).rows.filter(({ events }) => events.some(({ kind }) => kind === "flush"));
    expect(flushes.map(({ day }) => day)).toEqual([46075]);
  });
});

describe("many-vessels-messy: the log reader", () => {
  const grid = gridOf("many-vessels-messy");
  const answers: LogAnswers = { dateOrder: "day first", columns: { 9: { quantity: "solution temperature", unit: "F" } } };

  it("finds the ppm scale 500 under the header, and asks for the order of the dates and whose temperature it is", () => {
    const read = readLog(grid);
    expect([read.columns[3]?.unit, read.columns[5]?.unit]).toEqual(["ppm 500", "ppm 500"]);
    expect(read.questions.map(({ kind }) => kind).sort()).toEqual(["date order", "what is this column"]);
  });

  it("asks nothing more once these are answered", () => {
    expect(readLog(grid, answers).questions).toEqual([]);
  });

  it("counts each row of the sheet once: used, set aside, blank or header", () => {
    const { rows, setAside, blankRows, headerRows } = readLog(grid, answers);
    expect(rows.length + setAside.length + blankRows + headerRows.length).toBe(grid.cells.length);
  });

  it("takes 15 spellings for four pots", () => {
    expect(new Set(grid.cells.slice(4, -2).map((row) => row[2]).filter((name) => name !== undefined)).size).toBe(15);
    expect(readLog(grid, answers).vessels).toEqual(["Tomato 1", "Pepper 3", "Basil", "Strawberry 2"]);
  });

  it("uses no runoff EC from the eight cells that say ~700, >1500, 4, -, 2900 / 3010, ?, NaN or nothing as if it were a plain reading", () => {
    const { rows, problems } = readLog(grid, answers);
    const doubted = new Set(problems.filter(({ column }) => column === 5).map(({ row }) => row));
    const isPlain = (value: unknown): boolean => typeof value === "number" && value >= 50;
    const cells = rows.filter(({ row }) => !isPlain(grid.cells[row]?.[5]));
    expect(cells.length).toBe(8);
    for (const { row, runoffEc } of cells) expect(runoffEc === undefined || doubted.has(row)).toBe(true);
  });
});
