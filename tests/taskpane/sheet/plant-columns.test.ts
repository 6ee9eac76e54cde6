import { describe, expect, test } from "vitest";
import { plantColumns } from "../../../taskpane/formulas/plant-columns";
import { putColumns } from "../../../taskpane/sheet/add-columns";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, benchLog, filledCells, zoneAt } from "./bench-log";

const headers = ["New growth (0 to 3)", "Posture (0 to 3)", "Spread of symptoms (0 to 3)", "Roots (0 to 3)"];

const added = async (host: ReturnType<typeof bench>): Promise<Awaited<ReturnType<typeof putColumns>>> => {
  const zone = await zoneAt(host);
  return putColumns(zone, plantColumns(zone.reading));
};

describe("plant columns beside a log", () => {
  test("four heads and nothing below; each cell has its pick list, 200 rows further down too", async () => {
    const host = bench();
    const log = filledCells(host.store, host.sheetId);
    expect((await added(host)).words).toBe(`Put 4 columns on Log at H1:K4: ${headers.join(", ")}.`);
    expect(filledCells(host.store, host.sheetId)).toEqual({ ...log, "0,7": headers[0], "0,8": headers[1], "0,9": headers[2], "0,10": headers[3] });
    expect(host.records.validations.map(({ area }) => [area.row, area.column, area.rowCount, area.columnCount]))
      .toEqual([7, 8, 9, 10].map((column) => [1, column, 203, 1]));
    expect(host.records.validations[1]?.rule).toEqual({ list: { inCellDropDown: true, source: "0 upright,1 a little slack,2 limp,3 lying down" } });
  });

  test("what is chosen is read again: 2 limp is a posture of 2, and a column that is there is not added twice", async () => {
    const host = bench();
    await added(host);
    host.store.write(areaAt(host.sheetId, 3, 8), [["2 limp"]]);
    const { reading } = await zoneAt(host);
    expect(reading.rows[2]?.plant).toEqual({ posture: 2 });
    expect(plantColumns(reading)).toEqual([]);
  });

  test("of a log with a column of wilting only the other three are offered", async () => {
    const host = bench(benchLog.map((row, i) => [...row, i === 0 ? "Wilting 0-3" : 0]));
    expect(plantColumns((await zoneAt(host)).reading).map(({ header }) => header)).toEqual([headers[0], headers[2], headers[3]]);
  });

  test("take back leaves no head and no pick list; a rule of the person's own is left as it is", async () => {
    const host = bench();
    const { takeBack } = await added(host);
    await takeBack();
    expect(host.records.validations).toEqual([]);
    const own = { area: areaAt(host.sheetId, 1, 8), rule: { list: { inCellDropDown: true, source: "a,b" } }, prompt: {}, errorAlert: {} };
    host.records.validations.push(own);
    const again = await added(host);
    expect(host.records.validations).toEqual([own]);
    await again.takeBack();
    expect(host.records.validations).toEqual([own]);
  });

  test("in a Table they are columns of it", async () => {
    const host = bench();
    await host.run(async (context) => {
      context.workbook.tables.add(context.workbook.worksheets.getActiveWorksheet().getRange("A1:G4"), true).name = "Waterings";
      await context.sync();
    });
    expect((await added(host)).words).toMatch(/into the Table Waterings on Log, at H1:K4/);
    expect(host.records.validations.map(({ area }) => [area.row, area.rowCount])).toEqual(Array(4).fill([1, 3]));
  });
});
