/// <reference types="office-js" />
import type { Frame } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "./browser";
import { openWorkbench, type OpenWorkbench } from "./open-workbench";

let workbench: OpenWorkbench;
let pane: Frame;

/** Runs commands in the pane's frame, as the pane does; they may use nothing from around them. */
async function run<Answer>(batch: (context: Excel.RequestContext) => Promise<Answer>): Promise<Answer> {
  const text = batch.toString();
  return pane.evaluate(`Excel.run({ mergeUndoGroup: true }, ${text}).catch((problem) => { throw new Error(problem.code + ": " + problem.message); })`);
}

describe.skipIf(!hasBrowser)("the host object over the grid", () => {
  beforeAll(async () => {
    workbench = await openWorkbench("?sample=salt-buildup.xlsx");
    ({ pane } = workbench);
  });

  afterAll(async () => {
    await workbench.close();
  });

  it("reads what the sample file holds: dates as serials with their format, text, numbers, a formula and its value", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      const row = sheet.getRange("A2:D2").load("values, text, numberFormat, numberFormatCategories");
      const ratio = sheet.getRange("K2").load("formulas, values");
      await context.sync();
      return [row.values, row.text, row.numberFormatCategories, ratio.values, String(ratio.formulas[0]?.[0]).slice(0, 18)];
    })).toEqual([
      [[46027, "Pepper 2", 1.96, 1.78]],
      [["2026-01-05", "Pepper 2", "1.96", "1.78"]],
      [["Date", "General", "Number", "Number"]],
      [[expect.closeTo(1.78 / 1.96, 12)]],
      "=RUNOFF.SALTRATIO(",
    ]);
  });

  it("writes a value and a formula that is computed within the same sync", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("T2:T3").values = [[3], [1.5]];
      const formula = sheet.getRange("U2");
      formula.formulas = [["=RUNOFF.SALTRATIO(T2,T3)"]];
      formula.load("values, formulas, text");
      await context.sync();
      return [formula.values, formula.formulas, formula.text];
    })).toEqual([[[2]], [["=RUNOFF.SALTRATIO(T2,T3)"]], [["2"]]]);
  });

  it("finds the range that a formula spills into, and cells of it hold values", async () => {
    expect(await run(async (context) => {
      const cell = context.workbook.worksheets.getItem("Log").getRange("W2");
      cell.formulas = [["=RUNOFF.SALTRATIO(D2:D6,C2:C6)"]];
      const spill = cell.getSpillingToRangeOrNullObject().load("address, values");
      const inside = cell.getOffsetRange(2, 0).getSpillParentOrNullObject().load("address");
      const none = context.workbook.worksheets.getItem("Log").getRange("A2").getSpillingToRangeOrNullObject();
      await context.sync();
      return [spill.address, spill.values.length, typeof spill.values[4]?.[0], inside.address, none.isNullObject];
    })).toEqual(["Log!W2:W6", 5, "number", "Log!W2", true]);
  });

  it("an apostrophe keeps text that looks like a formula; clearing takes values and spills away", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("T5").values = [["'=1+1"]];
      const text = sheet.getRange("T5").load("values, formulas");
      await context.sync();
      sheet.getRange("T2:W6").clear();
      const cleared = sheet.getRange("T2:W6").load("values");
      await context.sync();
      return [text.values, text.formulas, cleared.values.flat().every((value) => value === "")];
    })).toEqual([[["=1+1"]], [["=1+1"]], true]);
  });

  it("number formats, fill, font and column width come back as they were written", async () => {
    expect(await run(async (context) => {
      const range = context.workbook.worksheets.getItem("Log").getRange("T2:T3");
      range.values = [[1.234], [5.678]];
      range.numberFormat = [["0.00"], ["0.0"]];
      range.format.fill.color = "#FFE0B2";
      range.format.font.bold = true;
      range.format.horizontalAlignment = "Center";
      range.format.columnWidth = 90;
      range.load("text, numberFormat, width");
      range.load("format/fill/color, format/font/bold, format/horizontalAlignment, format/columnWidth");
      await context.sync();
      const { fill, font, horizontalAlignment, columnWidth } = range.format;
      return [range.text, range.numberFormat, fill.color, font.bold, horizontalAlignment, columnWidth, range.width];
    })).toEqual([[["1.23"], ["5.7"]], [["0.00"], ["0.0"]], "#FFE0B2", true, "Center", 90, 90]);
  });

  it("finds the sample's Table from a cell in it, and the rows hidden are out of the visible view", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      const tables = sheet.getRange("C9").getTables(false).load("items/name");
      sheet.getRange("3:4").rowHidden = true;
      const view = sheet.getRange("A2:A6").getVisibleView().load("rowCount, values");
      const shown = sheet.getRange("3:4");
      await context.sync();
      shown.rowHidden = false;
      const again = sheet.getRange("A2:A6").getVisibleView().load("rowCount");
      await context.sync();
      return [tables.items.map(({ name }) => name), view.rowCount, view.values, again.rowCount];
    })).toEqual([["BenchLog"], 3, [[46027], [46030], [46031]], 5]);
  });

  it("adds a sheet, writes to it, activates it, and deletes it", async () => {
    expect(await run(async (context) => {
      const { worksheets } = context.workbook;
      const sheet = worksheets.add("Plan of the flush");
      sheet.getRange("A1:B1").values = [["Step", "Litres"]];
      sheet.activate();
      const active = worksheets.getActiveWorksheet().load("name");
      const used = sheet.getUsedRange().load("address");
      await context.sync();
      const answer = [active.name, used.address];
      sheet.delete();
      const gone = worksheets.getItemOrNullObject("Plan of the flush");
      worksheets.getItem("Log").activate();
      await context.sync();
      return [...answer, gone.isNullObject];
    })).toEqual(["Plan of the flush", "'Plan of the flush'!A1:B1", true]);
  });

  it("selects cells, tells of it, and tells who changed a cell", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      const heard: string[] = [];
      const onSelection = context.workbook.onSelectionChanged.add(() => Promise.resolve(void heard.push("selection")));
      const onChange = sheet.onChanged.add(({ address, triggerSource }) => Promise.resolve(void heard.push(`${address} ${triggerSource}`)));
      await context.sync();
      sheet.getRange("B4:C6").select();
      sheet.getRange("T9").values = [[1]];
      const selected = context.workbook.getSelectedRange().load("address");
      await context.sync();
      await new Promise((resolve) => setTimeout(resolve, 50));
      onSelection.remove();
      onChange.remove();
      await context.sync();
      sheet.getRange("T9").clear();
      await context.sync();
      return [selected.address, heard.includes("selection"), heard.filter((each) => each !== "selection")];
    })).toEqual(["Log!B4:C6", true, ["T9 ThisLocalAddin"]]);
  });

  it("a whole column reads as unbounded, its used part as the log's rows", async () => {
    expect(await run(async (context) => {
      const column = context.workbook.worksheets.getItem("Log").getRange("C:C").load("address, values, rowCount");
      const used = column.getUsedRange(true).load("address");
      await context.sync();
      return [column.address, column.values, column.rowCount, used.address];
    })).toEqual(["Log!C:C", null, 1_048_576, "Log!C1:C73"]);
  });

  it("all that one Excel.run wrote is one step of undo", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Log");
      sheet.getRange("T20").values = [[1]];
      sheet.getRange("T21").values = [[2]];
      const both = sheet.getRange("T20:T21").load("values");
      await context.sync();
      return both.values;
    })).toEqual([[1], [2]]);
    await pane.page().locator("#grid canvas[id^='univer-sheet-main-canvas']").click({ position: { x: 300, y: 200 } });
    await pane.page().keyboard.press("Control+z");
    await expect.poll(() => run(async (context) => {
      const range = context.workbook.worksheets.getItem("Log").getRange("T20:T21").load("values");
      await context.sync();
      return range.values;
    })).toEqual([[""], [""]]);
  });
});
