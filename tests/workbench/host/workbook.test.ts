/// <reference types="office-js" />
import { describe, expect, it, vi } from "vitest";
import { codeOf, smallPng, strictHost } from "./strict-host";

const log = [["Date", "In", "Out"], [46000, 1.5, 3], [46001, 1.5, 3.3]];

describe("worksheets", () => {
  it("are found by name whatever the case, and listed", async () => {
    const { run } = strictHost(log);
    await run(async (context) => {
      const { worksheets } = context.workbook;
      worksheets.add("Flush plan");
      worksheets.load("items/name");
      const found = worksheets.getItem("LOG").load("name");
      await context.sync();
      expect(found.name).toBe("Log");
      expect(worksheets.items.map(({ name }) => name)).toEqual(["Log", "Flush plan"]);
    });
  });

  it.each([["Log", "ItemAlreadyExists"], ["a/b", "InvalidArgument"], ["", "InvalidArgument"], ["x".repeat(32), "InvalidArgument"]])(
    "a new sheet called %j is %s",
    async (name, code) => {
      const { run } = strictHost(log);
      expect(await codeOf(() => run((context) => {
        context.workbook.worksheets.add(name);
        return context.sync();
      }))).toBe(code);
    },
  );

  it("the only visible sheet cannot be deleted: InvalidOperation", async () => {
    const { run } = strictHost(log);
    expect(await codeOf(() => run((context) => {
      context.workbook.worksheets.getItem("Log").delete();
      return context.sync();
    }))).toBe("InvalidOperation");
  });
});

describe("tables", () => {
  it("are found from a cell inside them, with header, body and columns", async () => {
    const { run } = strictHost(log);
    await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.tables.add("A1:C3", true).name = "Readings";
      const tables = sheet.getRange("B2").getTables(false);
      tables.load("items/name");
      await context.sync();
      const [table] = tables.items;
      const header = table?.getHeaderRowRange().load("values");
      const body = table?.getDataBodyRange().load("address");
      const columns = table?.columns.load("items/name");
      await context.sync();
      expect([table?.name, header?.values, body?.address]).toEqual(["Readings", [["Date", "In", "Out"]], "Log!A2:C3"]);
      expect(columns?.items.map(({ name }) => name)).toEqual(["Date", "In", "Out"]);
    });
  });

  it("take a new column at the end and refuse one over filled cells", async () => {
    const { run, records } = strictHost([["In", "Out", ""], [1.5, 3, ""], [1.5, 3.3, ""]]);
    await run(async (context) => {
      const table = context.workbook.worksheets.getItem("Log").tables.add("A1:B3", true);
      table.columns.add(undefined, [["Ratio"], [2], [2.2]]);
      const range = table.getRange().load("address, values");
      await context.sync();
      expect([range.address, range.values]).toEqual(["Log!A1:C3", [["In", "Out", "Ratio"], [1.5, 3, 2], [1.5, 3.3, 2.2]]]);
    });
    const blocked = strictHost([["In", "Out", "mine"], [1.5, 3, 9]]);
    expect(await codeOf(() => blocked.run((context) => {
      context.workbook.worksheets.getItem("Log").tables.add("A1:B2", true).columns.add(undefined, [["Ratio"], [2]]);
      return context.sync();
    }))).toBe("InvalidOperation");
    expect(records.tables[0]?.columns).toEqual(["In", "Out", "Ratio"]);
  });

  it("take new rows below and are named once", async () => {
    const { run } = strictHost(log);
    await run(async (context) => {
      const table = context.workbook.worksheets.getItem("Log").tables.add("A1:C3", true);
      table.rows.add(undefined, [[46002, 1.5, 3.6]]);
      const body = table.getDataBodyRange().load("address");
      await context.sync();
      expect(body.address).toBe("Log!A2:C4");
    });
    expect(await codeOf(() => run((context) => {
      context.workbook.worksheets.getItem("Log").tables.add("B2:D4", true);
      return context.sync();
    }))).toBe("InvalidArgument");
  });
});

describe("names and settings", () => {
  it("a name leads to its range and cannot be given twice", async () => {
    const { run } = strictHost(log);
    await run(async (context) => {
      context.workbook.names.add("LimitRatio", context.workbook.worksheets.getItem("Log").getRange("C2"));
      const item = context.workbook.names.getItem("LimitRatio").load("formula");
      const range = item.getRange().load("address");
      const absent = context.workbook.names.getItemOrNullObject("LimitPh");
      await context.sync();
      expect([item.formula, range.address, absent.isNullObject]).toEqual(["=Log!$C$2", "Log!C2", true]);
    });
    expect(await codeOf(() => run((context) => {
      context.workbook.names.add("limitratio", "=1");
      return context.sync();
    }))).toBe("ItemAlreadyExists");
  });

  it("a setting comes back as it was when added, not as it was changed since", async () => {
    const { run } = strictHost();
    const medium = { of: "coir" };
    await run((context) => {
      context.workbook.settings.add("runoff-ledger", medium);
      return context.sync();
    });
    medium.of = "peat";
    await run(async (context) => {
      const setting = context.workbook.settings.getItemOrNullObject("runoff-ledger").load("value");
      await context.sync();
      expect(setting.value).toEqual({ of: "coir" });
    });
  });
});

describe("pictures, rules and validation", () => {
  it("a PNG of 2 by 1 pixels is placed 1.5 by 0.75 points large with an alt text; text that is no picture is InvalidArgument", async () => {
    const { run, records } = strictHost();
    const add = (base64: string) => codeOf(() => run((context) => {
      const shape = context.workbook.worksheets.getActiveWorksheet().shapes.addImage(base64);
      shape.altTextDescription = "Runoff EC falls after the flush.";
      shape.left = 200;
      return context.sync();
    }));
    expect(await add(smallPng)).toBe("none");
    expect(await add("<p>")).toBe("InvalidArgument");
    expect(records.shapes.map(({ width, height, left, altTextDescription }) => [width, height, left, altTextDescription])).toEqual([
      [1.5, 0.75, 200, "Runoff EC falls after the flush."],
    ]);
  });

  it("a new conditional format comes before those that are there, until its priority is set; clearAll takes all away", async () => {
    const { run, records } = strictHost(log);
    await run(async (context) => {
      const range = context.workbook.worksheets.getItem("Log").getRange("C2:C3");
      const above = range.conditionalFormats.add("CellValue");
      above.cellValue.rule = { formula1: "=2", operator: "GreaterThan" };
      above.cellValue.format.fill.color = "#FFCCCC";
      range.conditionalFormats.add("ContainsText").textComparison.rule = { operator: "Contains", text: "salt" };
      range.conditionalFormats.add("Custom").custom.rule.formula = "=$C2>2";
      await context.sync();
      const inOrder = (): unknown[] => records.conditionalFormats.map(({ type, rule, fill }) => [type, rule, fill]);
      const cellValue = ["CellValue", { formula1: "=2", operator: "GreaterThan" }, "#FFCCCC"];
      const text = ["ContainsText", { operator: "Contains", text: "salt" }, undefined];
      const custom = ["Custom", { formula: "=$C2>2" }, undefined];
      expect(inOrder()).toEqual([custom, text, cellValue]);
      above.priority = 0;
      await context.sync();
      expect(inOrder()).toEqual([cellValue, custom, text]);
      range.conditionalFormats.clearAll();
      await context.sync();
      expect(records.conditionalFormats).toEqual([]);
    });
  });

  it("a list for a cell is kept and read back", async () => {
    const { run } = strictHost();
    await run(async (context) => {
      const cell = context.workbook.worksheets.getActiveWorksheet().getRange("A1");
      cell.dataValidation.rule = { list: { inCellDropDown: true, source: "coir,peat" } };
      await context.sync();
      cell.dataValidation.load("rule, type");
      await context.sync();
      expect([cell.dataValidation.type, cell.dataValidation.rule]).toEqual(["List", { list: { inCellDropDown: true, source: "coir,peat" } }]);
    });
  });
});

describe("events", () => {
  const soon = () => new Promise((resolve) => setTimeout(resolve, 5));

  it("a changed cell is told with its address until the handler is removed", async () => {
    const { run, store, sheetId } = strictHost(log);
    const heard = vi.fn();
    const handler = await run(async (context) => {
      const added = context.workbook.worksheets.getItem("Log").onChanged.add((args) => Promise.resolve(heard(args.address, args.source)));
      await context.sync();
      return added;
    });
    store.type({ sheetId, row: 1, column: 2, rowCount: 1, columnCount: 1 }, 3.1);
    await soon();
    await run(handler.context, async (context) => {
      handler.remove();
      await context.sync();
    });
    store.type({ sheetId, row: 1, column: 2, rowCount: 1, columnCount: 1 }, 3.2);
    await soon();
    expect(heard.mock.calls).toEqual([["C2", "Local"]]);
  });

  it("nothing is told while enableEvents is off", async () => {
    const { run, store, sheetId } = strictHost(log);
    const heard = vi.fn();
    await run((context) => {
      context.workbook.onSelectionChanged.add(() => Promise.resolve(heard()));
      context.runtime.enableEvents = false;
      return context.sync();
    });
    store.select([{ sheetId, row: 1, column: 0, rowCount: 1, columnCount: 1 }]);
    await soon();
    expect(heard).not.toHaveBeenCalled();
    await run((context) => {
      context.runtime.enableEvents = true;
      return context.sync();
    });
    store.select([{ sheetId, row: 2, column: 0, rowCount: 1, columnCount: 1 }]);
    await vi.waitFor(() => { expect(heard).toHaveBeenCalledTimes(1); });
  });
});

describe("the date system", () => {
  it.each([[false, 36526], [true, 35064]])("1 January 2000 with 1904 dates %s is %d", async (date1904, serial) => {
    const { run, records } = strictHost();
    records.date1904 = date1904;
    await run(async (context) => {
      const result = context.workbook.functions.date(2000, 1, 1);
      result.load("value");
      await context.sync();
      expect(result.value).toBe(serial);
    });
  });
});

describe("Office", () => {
  it("is ready with the host's name, and keeps associated actions", async () => {
    const { Office } = strictHost();
    const heard = vi.fn();
    const info = await Office.onReady(heard);
    expect(info.host).toBe("Excel");
    expect(heard).toHaveBeenCalledTimes(1);
    expect(Office.context.officeTheme.bodyBackgroundColor).toBe("#FFFFFF");
  });
});
