/// <reference types="office-js" />
import { describe, expect, it } from "vitest";
import type { Fault } from "../../../workbench/host/excel/switches";
import { codeOf, smallPng, strictHost } from "./strict-host";

const log = [["Date", "In", "Out"], [46000, 1.5, 3], [46001, 1.5, 3.3]];

describe("a failure switched on", () => {
  it("cell being edited: InvalidOperationInCellEditMode at the sync", async () => {
    const { run, switches } = strictHost(log);
    switches.cellEditing = true;
    expect(await codeOf(() => run((context) => context.sync()))).toBe("InvalidOperationInCellEditMode");
  });

  it("cell being edited: with delayForCellEdit the sync waits until editing ends", async () => {
    const { run, switches } = strictHost(log);
    switches.cellEditing = true;
    setTimeout(() => { switches.cellEditing = false; }, 40);
    const address = await run({ delayForCellEdit: true }, async (context) => {
      const range = context.workbook.getSelectedRange().load("address");
      await context.sync();
      return range.address;
    });
    expect(address).toBe("Log!A1");
    expect(switches.cellEditing).toBe(false);
  });

  it("protected sheet: reading goes on, every write is AccessDenied", async () => {
    const { run, records, sheetId } = strictHost(log);
    records.sheet(sheetId).protected = true;
    const writes: ((sheet: Excel.Worksheet) => void)[] = [
      (sheet) => { sheet.getRange("E1").values = [[1]]; },
      (sheet) => { sheet.getRange("E1").numberFormat = [["0.0"]]; },
      (sheet) => { sheet.getRange("E1").format.fill.color = "#FF0000"; },
      (sheet) => { sheet.shapes.addImage(smallPng); },
      (sheet) => { sheet.getRange("A1:C3").clear(); },
      (sheet) => { sheet.getRange("E1").conditionalFormats.add("CellValue"); },
    ];
    for (const write of writes) {
      expect(await codeOf(() => run((context) => {
        write(context.workbook.worksheets.getActiveWorksheet());
        return context.sync();
      }))).toBe("AccessDenied");
    }
    expect(await codeOf(() => run((context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange("A1").load("values");
      return context.sync();
    }))).toBe("none");
  });

  it("ExcelApi 1.12 missing: spill ranges are ApiNotFound, and isSetSupported says so; 1.9 stays", async () => {
    const { run, switches, Office } = strictHost(log);
    switches.missingApi = "ExcelApi 1.12";
    expect(await codeOf(() => run((context) => {
      context.workbook.getSelectedRange().getSpillingToRangeOrNullObject();
      return context.sync();
    }))).toBe("ApiNotFound");
    const supported = (version: string) => Office.context.requirements.isSetSupported("ExcelApi", version);
    expect(["1.9", "1.11", "1.12", "1.13"].map(supported)).toEqual([true, true, false, false]);
  });

  it("nothing missing: ExcelApi 1.9 and 1.12 are there, 99.1 and unknown sets are not", () => {
    const { Office } = strictHost();
    const { requirements } = Office.context;
    expect(requirements.isSetSupported("ExcelApi", "1.12")).toBe(true);
    expect(requirements.isSetSupported("SharedRuntime", "1.1")).toBe(true);
    expect(requirements.isSetSupported("ExcelApi", "99.1")).toBe(false);
    expect(requirements.isSetSupported("Telepathy", "1.1")).toBe(false);
  });

  it("any sync can be made to fail, before anything of it, after all of it, or at its second write, the first standing", async () => {
    const written = async (fault: Fault): Promise<unknown> => {
      const { run, store, sheetId, switches } = strictHost();
      switches.onSync = ({ writes }) => (writes === 2 ? fault : undefined);
      const code = await codeOf(() => run(async (context) => {
        const sheet = context.workbook.worksheets.getActiveWorksheet().load("name");
        await context.sync();
        for (const address of ["A1", "A2"]) sheet.getRange(address).values = [[1]];
        await context.sync();
      }));
      return [code, store.values({ sheetId, row: 0, column: 0, rowCount: 2, columnCount: 1 }).flat()];
    };
    expect(await written({ at: "before" })).toEqual(["GeneralException", ["", ""]]);
    expect(await written({ at: "after", code: "InvalidOperation" })).toEqual(["InvalidOperation", [1, 1]]);
    expect(await written({ at: "write", write: 1 })).toEqual(["GeneralException", [1, ""]]);
  });

  it("a person can type between two syncs: the second sync reads what they typed", async () => {
    const { run, store, sheetId, switches } = strictHost(log);
    switches.onSync = ({ number }) => {
      if (number === 1) store.type({ sheetId, row: 1, column: 1, rowCount: 1, columnCount: 1 }, 1.9);
      return undefined;
    };
    await run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Log").getRange("B2").load("values");
      await context.sync();
      expect(cell.values).toEqual([[1.5]]);
      cell.load("values");
      await context.sync();
      expect(cell.values).toEqual([[1.9]]);
    });
  });

  it("late answers: a formula of the add-in shows #BUSY! until it has answered, and the sheet is told as calculated", async () => {
    const { run, store, sheetId, switches } = strictHost([["", 3]], { compute: () => [[2]] });
    switches.answersLate = 20;
    const cells = { sheetId, row: 0, column: 2, rowCount: 1, columnCount: 2 };
    const calculated = new Promise<unknown>((resolve) => {
      void run(async (context) => {
        context.workbook.worksheets.onCalculated.add(({ worksheetId }) => {
          resolve(worksheetId);
          return Promise.resolve();
        });
        await context.sync();
        context.workbook.worksheets.getItem("Log").getRange("C1:D1").formulas = [["=RUNOFF.PPM(B1,500)", "=B1*2"]];
        await context.sync();
        expect(store.values(cells)).toEqual([["#BUSY!", 2]]);
      });
    });
    expect(await calculated).toBe(sheetId);
    expect(store.values(cells)).toEqual([[2, 2]]);
  });

  it("slow sync: takes the 60 ms asked for", async () => {
    const { run, switches } = strictHost(log);
    switches.syncDelay = 60;
    const start = performance.now();
    await run(() => Promise.resolve());
    expect(performance.now() - start).toBeGreaterThanOrEqual(55);
  });

  it("too much at once: 6 cells where 5 may be handed over is ResponsePayloadSizeLimitExceeded", async () => {
    const { run, switches } = strictHost(log);
    switches.cellsPerSync = 5;
    const read = (address: string) => codeOf(() => run((context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange(address).load("values");
      return context.sync();
    }));
    expect([await read("A1:E1"), await read("A1:C2")]).toEqual(["none", "ResponsePayloadSizeLimitExceeded"]);
  });
});

describe("the selection", () => {
  it("of two areas: getSelectedRange is InvalidSelection, getSelectedRanges gives both", async () => {
    const { run, store, sheetId } = strictHost(log);
    store.select([{ sheetId, row: 1, column: 0, rowCount: 1, columnCount: 3 }, { sheetId, row: 4, column: 0, rowCount: 2, columnCount: 3 }]);
    expect(await codeOf(() => run((context) => {
      context.workbook.getSelectedRange();
      return context.sync();
    }))).toBe("InvalidSelection");
    await run(async (context) => {
      const { areas } = context.workbook.getSelectedRanges();
      areas.load("items/address");
      await context.sync();
      expect(areas.items.map(({ address }) => address)).toEqual(["Log!A2:C2", "Log!A5:C6"]);
    });
  });

  it("of a picture: no range is selected, InvalidSelection", async () => {
    const { run, store } = strictHost(log);
    store.select([]);
    expect(await codeOf(() => run((context) => {
      context.workbook.getSelectedRanges();
      return context.sync();
    }))).toBe("InvalidSelection");
  });

  it("of whole columns: values are null, and the used part is cut out as A1:C3", async () => {
    const { run, store, sheetId } = strictHost(log);
    store.select([{ sheetId, row: 0, column: 0, rowCount: 1_048_576, columnCount: 4 }]);
    await run(async (context) => {
      const whole = context.workbook.getSelectedRange().load("address, values, cellCount");
      const used = context.workbook.getSelectedRanges().getUsedRangeAreasOrNullObject(true).load("address");
      await context.sync();
      expect([whole.address, whole.values, whole.cellCount]).toEqual(["Log!A:D", null, 4_194_304]);
      expect(used.address).toBe("Log!A1:C3");
    });
  });

  it("of blank cells only: the used areas are a null object", async () => {
    const { run, store, sheetId } = strictHost(log);
    store.select([{ sheetId, row: 10, column: 0, rowCount: 2, columnCount: 2 }]);
    await run(async (context) => {
      const used = context.workbook.getSelectedRanges().getUsedRangeAreasOrNullObject(true);
      await context.sync();
      expect(used.isNullObject).toBe(true);
    });
  });
});
