/// <reference types="office-js" />
import { describe, expect, it } from "vitest";
import { codeOf, strictHost } from "./strict-host";

const log = [["Date", "In", "Out"], [46000, 1.5, 3], [46001, 1.5, 3.3]];

describe("a property", () => {
  it("throws PropertyNotLoaded before load", async () => {
    const { run } = strictHost(log);
    expect(await codeOf(() => run(async (context) => {
      const range = context.workbook.getSelectedRange();
      await context.sync();
      return range.address;
    }))).toBe("PropertyNotLoaded");
  });

  it("throws PropertyNotLoaded after load and before sync", async () => {
    const { run } = strictHost(log);
    expect(await codeOf(() => run((context) => {
      const range = context.workbook.getSelectedRange();
      range.load("address");
      return Promise.resolve(range.address);
    }))).toBe("PropertyNotLoaded");
  });

  it("throws PropertyNotLoaded when another property was loaded", async () => {
    const { run } = strictHost(log);
    expect(await codeOf(() => run(async (context) => {
      const range = context.workbook.getSelectedRange().load("address");
      await context.sync();
      return range.values;
    }))).toBe("PropertyNotLoaded");
  });

  it("that no table of the workbench holds is refused under its own name", async () => {
    const { run } = strictHost(log);
    expect(await codeOf(() => run(async (context) => {
      context.workbook.getSelectedRange().load("adress");
      await context.sync();
    }))).toBe("NotInWorkbench: Range.adress");
  });

  it.each([
    ["comma text", "address, rowCount"],
    ["array", ["address", "rowCount"]],
    ["object", { address: true, rowCount: true }],
  ])("loads by %s", async (_, option) => {
    const { run } = strictHost(log);
    await run(async (context) => {
      const range = context.workbook.worksheets.getItem("Log").getRange("A1:C2");
      range.load(option as string);
      await context.sync();
      expect([range.address, range.rowCount]).toEqual(["Log!A1:C2", 2]);
    });
  });

  it("of an inner object loads by its path and keeps its object", async () => {
    const { run } = strictHost(log);
    await run(async (context) => {
      const range = context.workbook.worksheets.getItem("Log").getRange("A1:C1");
      range.format.fill.color = "#FFEEDD";
      await context.sync();
      const again = context.workbook.worksheets.getItem("Log").getRange("A1");
      again.load("format/fill/color");
      await context.sync();
      expect(again.format.fill.color).toBe("#FFEEDD");
    });
  });

  it("set and read back before sync is what was set, and the sheet is untouched until sync", async () => {
    const { run, store, sheetId } = strictHost(log);
    const e1 = { sheetId, row: 0, column: 4, rowCount: 1, columnCount: 1 };
    await run(async (context) => {
      const range = context.workbook.worksheets.getActiveWorksheet().getRange("E1");
      range.values = [["Ratio"]];
      expect(range.values).toEqual([["Ratio"]]);
      expect(store.values(e1)).toEqual([[""]]);
      await context.sync();
      expect(store.values(e1)).toEqual([["Ratio"]]);
    });
  });

  it("is a snapshot: 3 as loaded, though the cell was changed to 4 since", async () => {
    const { run } = strictHost(log);
    await run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      const read = sheet.getRange("C2").load("values");
      sheet.getRange("C2").values = [[4]];
      await context.sync();
      expect(read.values).toEqual([[3]]);
    });
  });

  it("of a range is out of reach after its Excel.run, unless tracked", async () => {
    const { run } = strictHost(log);
    const use = (track: boolean) => codeOf(async () => {
      const range = await run((context) => {
        const made = context.workbook.getSelectedRange();
        return Promise.resolve(track ? made.track() : made);
      });
      range.load("address");
      await range.context.sync();
    });
    expect([await use(false), await use(true)]).toEqual(["InvalidObjectPath", "none"]);
  });
});

describe("the queue", () => {
  it("drops what follows a failure and keeps what went before", async () => {
    const { run, store, sheetId } = strictHost();
    const code = await codeOf(() => run(async (context) => {
      const sheet = context.workbook.worksheets.getActiveWorksheet();
      sheet.getRange("A1").values = [[1]];
      context.workbook.worksheets.getItem("Nowhere");
      sheet.getRange("A2").values = [[2]];
      await context.sync();
    }));
    expect(code).toBe("ItemNotFound");
    expect(store.values({ sheetId, row: 0, column: 0, rowCount: 2, columnCount: 1 })).toEqual([[1], [""]]);
  });

  it("is carried out at the end of Excel.run without a sync of one's own", async () => {
    const { run, store, sheetId } = strictHost();
    await run((context) => {
      context.workbook.worksheets.getActiveWorksheet().getRange("A1").values = [[7]];
      return Promise.resolve();
    });
    expect(store.values({ sheetId, row: 0, column: 0, rowCount: 1, columnCount: 1 })).toEqual([[7]]);
  });
});

describe("a null object", () => {
  it("says so after sync and not before", async () => {
    const { run } = strictHost();
    await run(async (context) => {
      const sheet = context.workbook.worksheets.getItemOrNullObject("Nowhere");
      expect(() => sheet.isNullObject).toThrow(/'isNullObject' is not available/);
      await context.sync();
      expect(sheet.isNullObject).toBe(true);
    });
  });

  it("gives null objects, and what is asked of it is not done: deleting a sheet that may be there needs no question before", async () => {
    const { run, store } = strictHost(log);
    await run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.getItemOrNullObject("Nowhere").delete();
      const range = worksheets.getItemOrNullObject("Nowhere").getRange("A1").load("values");
      await context.sync();
      expect(range.isNullObject).toBe(true);
    });
    expect(store.sheets()).toHaveLength(1);
  });
});
