import path from "node:path";
import { describe, expect, it } from "vitest";
import { bandFor, judge, logInTime, readLog } from "../../src/index";
import { forPot, noChoices } from "../../taskpane/choices";
import { rootZoneOf } from "../../taskpane/root-zone";
import { readBook } from "../../workbench/files/read-book";
import { type CellValue, type Matrix } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";
import { logGrid } from "../../workbench/timeline/log-grid";

const { host } = loadBundle();
const samples = path.resolve(import.meta.dirname, "../../sample-workbooks");
const down = (values: readonly (number | undefined)[]): Matrix => values.map((value): CellValue[] => [value]);

/** Every prefix of the log is a day on which a grower may have asked. */
describe.each(["salt-buildup.csv", "healthy-bench.xlsx", "ph-lockout.xlsx"])("%s: on every day of the log", (file) => {
  it("the pane and DIAGNOSE in a cell give one verdict, and the pane the judgement with its course", async () => {
    const placed = logGrid(await readBook(path.join(samples, file)), undefined, undefined);
    const whole = readLog(placed.grid);
    const [header = 0] = whole.headerRows;
    const answers = new Set<string>();
    for (let last = header + 3; last < placed.grid.cells.length; last += 4) {
      const grid = { ...placed.grid, cells: placed.grid.cells.slice(0, last), rowNumbers: placed.grid.rowNumbers.slice(0, last) };
      const { rowNumbers, columnNumbers } = grid;
      const selection = { sheetId: "1", sheetName: "Log", grid, rowNumbers, columnNumbers, hiddenRows: 0, hiddenColumns: [], waiting: 0, headerRows: 0, tableName: undefined, wholeLog: true };
      const { judgement: inPane, vessel } = rootZoneOf(selection, { ...noChoices, ...forPot(noChoices, undefined, { medium: "coir" }) });
      const { rows: placedRows } = logInTime(readLog(grid).rows, vessel);
      const series = (["inputPh", "inputEc", "runoffPh", "runoffEc"] as const).map((name) => down(placedRows.map((row) => row[name])));
      const [inCell] = host.call("DIAGNOSE", [...series, [["coir"]]], "null");
      expect(inPane).toEqual(judge(placedRows, bandFor("coir")));
      expect(inCell?.[0]).toBe(inPane?.verdict);
      answers.add(String(inPane?.verdict));
    }
    expect(answers.size).toBeGreaterThan(file.startsWith("healthy") ? 0 : 1);
  });
});
