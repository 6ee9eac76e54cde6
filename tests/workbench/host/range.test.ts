/// <reference types="office-js" />
import { describe, expect, it } from "vitest";
import { codeOf, strictHost } from "./strict-host";

const log = [["Date", "In", "Out"], [46000, 1.5, 3], [46001, 1.5, 3.3]];

/** Loads one property of a range of the sheet "Log". */
async function read<Name extends keyof Excel.Range>(
  host: ReturnType<typeof strictHost>,
  find: (sheet: Excel.Worksheet) => Excel.Range,
  name: Name,
): Promise<Excel.Range[Name]> {
  return host.run(async (context) => {
    const range = find(context.workbook.worksheets.getItem("Log"));
    range.load(name);
    await context.sync();
    return range[name];
  });
}

describe("finding a range", () => {
  const host = strictHost(log);
  it.each<[string, (sheet: Excel.Worksheet) => Excel.Range, string]>([
    ["by address", (sheet) => sheet.getRange("B2:C3"), "Log!B2:C3"],
    ["by address with dollars", (sheet) => sheet.getRange("$B$2"), "Log!B2"],
    ["by whole columns", (sheet) => sheet.getRange("A:B"), "Log!A:B"],
    ["by whole rows", (sheet) => sheet.getRange("2:3"), "Log!2:3"],
    ["by indexes", (sheet) => sheet.getRangeByIndexes(1, 0, 2, 3), "Log!A2:C3"],
    ["by cell", (sheet) => sheet.getCell(2, 27), "Log!AB3"],
    ["as what is used", (sheet) => sheet.getUsedRange(), "Log!A1:C3"],
    ["offset", (sheet) => sheet.getRange("A1:B2").getOffsetRange(1, 2), "Log!C2:D3"],
    ["resized", (sheet) => sheet.getRange("A1:B2").getResizedRange(1, -1), "Log!A1:A3"],
    ["as row 1 of it", (sheet) => sheet.getRange("A1:C3").getRow(1), "Log!A2:C2"],
    ["as column 2 of it", (sheet) => sheet.getRange("A1:C3").getColumn(2), "Log!C1:C3"],
    ["as a cell of it", (sheet) => sheet.getRange("B2:C3").getCell(0, 1), "Log!C2"],
    ["as entire column", (sheet) => sheet.getRange("B2:C3").getEntireColumn(), "Log!B:C"],
    ["as the filled part of a column", (sheet) => sheet.getRange("B:B").getUsedRange(true), "Log!B1:B3"],
    ["as what two share", (sheet) => sheet.getRange("A1:B2").getIntersection("B2:D9"), "Log!B2"],
    ["as the block around a cell", (sheet) => sheet.getRange("B2").getSurroundingRegion(), "Log!A1:C3"],
  ])("%s", async (_, find, address) => {
    expect(await read(host, find, "address")).toBe(address);
  });

  it.each(["A0", "1", "B", "A1:B", "XFE1", "A1048577", "not a cell", "A1:B2,C3"])("%s is InvalidArgument", async (address) => {
    expect(await codeOf(() => read(host, (sheet) => sheet.getRange(address), "address"))).toBe("InvalidArgument");
  });

  it("puts a sheet name with a blank or a quote into quotes", async () => {
    const named = strictHost();
    named.store.renameSheet(named.sheetId, "Bench 1's log");
    const address = await named.run(async (context) => {
      const cell = context.workbook.worksheets.getActiveWorksheet().getRange("A1").load("address");
      await context.sync();
      return cell.address;
    });
    expect(address).toBe("'Bench 1''s log'!A1");
  });

  it("the surrounding region stops at a blank row and a blank column, and takes a corner that touches", async () => {
    const spread = strictHost([["Title"], [], ["a", "b", "", "far"], ["c", "d"], ["", "", "corner"]]);
    expect(await read(spread, (sheet) => sheet.getRange("A3").getSurroundingRegion(), "address")).toBe("Log!A3:D5");
  });

  it("the surrounding region of one cell in 20,000 rows is all of them", async () => {
    const long = strictHost(Array.from({ length: 20_000 }, (_, i) => [46000 + i, 1.5, 3]));
    expect(await read(long, (sheet) => sheet.getRange("B9000").getSurroundingRegion(), "address")).toBe("Log!A1:C20000");
  });

  it("outside the sheet is InvalidArgument: one row above row 1", async () => {
    expect(await codeOf(() => read(host, (sheet) => sheet.getRange("A1").getOffsetRange(-1, 0), "address"))).toBe("InvalidArgument");
  });
});

describe("writing values", () => {
  it.each([
    ["two rows into one", [["x"], ["y"]]],
    ["a row too long", [["x", "y"]]],
    ["a ragged matrix", [[]]],
    ["an object", [[{ v: 1 }]]],
  ])("%s is InvalidArgument", async (_, values) => {
    const host = strictHost(log);
    expect(await codeOf(() => host.run((context) => {
      context.workbook.worksheets.getItem("Log").getRange("E1").values = values as unknown[][];
      return context.sync();
    }))).toBe("InvalidArgument");
    expect(await read(host, (sheet) => sheet.getRange("E1:F2"), "values")).toEqual([["", ""], ["", ""]]);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, undefined])("%s travels as null: the cell stays as it is, and nothing is said", async (value) => {
    const host = strictHost(log);
    expect(await codeOf(() => host.run((context) => {
      context.workbook.worksheets.getItem("Log").getRange("B2").values = [[value]];
      return context.sync();
    }))).toBe("none");
    expect(await read(host, (sheet) => sheet.getRange("B2"), "values")).toEqual([[1.5]]);
  });

  it.each([
    ["2.4 as text becomes a number", "2.4", 2.4, "General"],
    ["2.4 in a text cell stays text", "2.4", "2.4", "@"],
    ["an apostrophe keeps text and is not shown", "'=1+1", "=1+1", "General"],
    ["true becomes a truth value", "true", true, "General"],
    ["2,4 stays text", "2,4", "2,4", "General"],
    ["1e3 becomes 1000", "1e3", 1000, "General"],
  ])("%s", async (_, typed, held, format) => {
    const host = strictHost();
    await host.run((context) => {
      const cell = context.workbook.worksheets.getItem("Log").getRange("A1");
      cell.numberFormat = [[format]];
      cell.values = [[typed]];
      return context.sync();
    });
    expect(await read(host, (sheet) => sheet.getRange("A1"), "values")).toEqual([[held]]);
  });

  it("null leaves a cell as it is; one value fills the range", async () => {
    const host = strictHost(log);
    await host.run((context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("A2:C2").values = [[null, 1.6, null]];
      (sheet.getRange("E1:F2") as { values: unknown }).values = 0;
      return context.sync();
    });
    expect(await read(host, (sheet) => sheet.getRange("A2:C2"), "values")).toEqual([[46000, 1.6, 3]]);
    expect(await read(host, (sheet) => sheet.getRange("E1:F2"), "values")).toEqual([[0, 0], [0, 0]]);
  });

  it("whole columns cannot be written: InvalidArgument", async () => {
    const host = strictHost(log);
    expect(await codeOf(() => host.run((context) => {
      (context.workbook.worksheets.getItem("Log").getRange("A:A") as { values: unknown }).values = "";
      return context.sync();
    }))).toBe("InvalidArgument");
  });
});

describe("formulas", () => {
  const double = { compute: () => [[2], [2.2]] };
  it("are kept beside their values; a spill of two rows is found from its first cell", async () => {
    const host = strictHost(log, double);
    await host.run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Log").getRange("E2");
      cell.formulas = [["=RUNOFF.SALTRATIO(C2:C3,B2:B3)"]];
      const spill = cell.getSpillingToRangeOrNullObject().load("address, values");
      cell.load("formulas, values");
      await context.sync();
      expect([spill.address, spill.values]).toEqual(["Log!E2:E3", [[2], [2.2]]]);
      expect([cell.formulas, cell.values]).toEqual([[["=RUNOFF.SALTRATIO(C2:C3,B2:B3)"]], [[2]]]);
    });
    expect(await read(host, (sheet) => sheet.getRange("E3"), "formulas")).toEqual([[2.2]]);
  });

  it("that would cover a filled cell show #SPILL! and cover nothing", async () => {
    const host = strictHost([["", "x"], ["", "filled"]], double);
    await host.run((context) => {
      context.workbook.worksheets.getItem("Log").getRange("B1").formulas = [["=F()"]];
      return context.sync();
    });
    expect(await read(host, (sheet) => sheet.getRange("B1:B2"), "values")).toEqual([["#SPILL!"], ["filled"]]);
    expect(await read(host, (sheet) => sheet.getRange("B1:B2"), "valueTypes")).toEqual([["Error"], ["String"]]);
  });
});

describe("formats", () => {
  it("number formats are read, written and told apart", async () => {
    const host = strictHost(log);
    await host.run((context) => {
      context.workbook.worksheets.getItem("Log").getRange("A2:C2").numberFormat = [["yyyy-mm-dd", "0.00", "0%"]];
      return context.sync();
    });
    expect(await read(host, (sheet) => sheet.getRange("A2:C2"), "numberFormat")).toEqual([["yyyy-mm-dd", "0.00", "0%"]]);
    expect(await read(host, (sheet) => sheet.getRange("A1:C2"), "numberFormatCategories")).toEqual([
      ["General", "General", "General"],
      ["Date", "Number", "Percentage"],
    ]);
  });

  it("a look that cells do not share reads as null", async () => {
    const host = strictHost(log);
    await host.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("A1").format.font.bold = true;
      const [one, both] = [sheet.getRange("A1").format.font, sheet.getRange("A1:B1").format.font];
      one.load("bold");
      both.load("bold");
      await context.sync();
      expect([one.bold, both.bold]).toEqual([true, null]);
    });
  });

  it("where the first column is hidden its visible view is empty, and rowHidden tells of rows all the same", async () => {
    const host = strictHost(log);
    await host.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("A:A").columnHidden = true;
      const view = sheet.getRange("A1:A3").getVisibleView().load("rowCount, cellAddresses");
      const rows = sheet.getRange("A1:C3").load("rowHidden, columnHidden");
      await context.sync();
      expect([view.rowCount, view.cellAddresses, rows.rowHidden, rows.columnHidden]).toEqual([0, [], false, null]);
    });
  });

  it("hidden rows are left out of the visible view", async () => {
    const host = strictHost(log);
    await host.run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("2:2").rowHidden = true;
      const range = sheet.getRange("A1:C3").load("rowHidden");
      const view = range.getVisibleView().load("values, rowCount, cellAddresses");
      await context.sync();
      expect([range.rowHidden, view.rowCount]).toEqual([null, 2]);
      expect(view.values).toEqual([log[0], log[2]]);
      expect(view.cellAddresses[1]).toEqual(["Log!A3", "Log!B3", "Log!C3"]);
    });
  });

  it("a column of 48 points and rows of 15 place C3 at 96 across and 30 down", async () => {
    const host = strictHost(log);
    await host.run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Log").getRange("C3").load("left, top, width, height");
      await context.sync();
      expect([cell.left, cell.top, cell.width, cell.height]).toEqual([96, 30, 48, 15]);
    });
  });
});
