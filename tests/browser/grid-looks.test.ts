/// <reference types="office-js" />
import type { Frame, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "./browser";
import { openWorkbench, type OpenWorkbench } from "./open-workbench";

let workbench: OpenWorkbench;
let page: Page;
let pane: Frame;

async function run<Answer>(batch: (context: Excel.RequestContext) => Promise<Answer>): Promise<Answer> {
  return pane.evaluate(`Excel.run(${batch.toString()}).catch((problem) => { throw new Error(problem.code + ": " + problem.message); })`);
}

interface Style {
  readonly bl?: number;
  readonly bg?: { readonly rgb: string };
  readonly cl?: { readonly rgb: string };
  readonly bd?: Readonly<Record<string, unknown>>;
}

/** The style that the grid draws a cell in: its own, its table's and what conditions add. */
function drawn(sheet: string, cell: string): Promise<Style> {
  return page.evaluate(`(() => {
    const sheet = window.runoffLedgerWorkbench.store.grid.api.getActiveWorkbook().getSheetByName("${sheet}");
    const range = sheet.getRange("${cell}");
    const { s } = sheet.getSheet().getCell(range.getRow(), range.getColumn()) ?? {};
    return (typeof s === "string" ? sheet.getWorkbook().getStyles().get(s) : s) ?? {};
  })()`);
}

const inGrid = (expression: string): Promise<unknown> =>
  page.evaluate(`(() => { const book = window.runoffLedgerWorkbench.store.grid.api.getActiveWorkbook(); return ${expression}; })()`);

describe.skipIf(!hasBrowser)("what the grid shows beside values", () => {
  beforeAll(async () => {
    workbench = await openWorkbench("?sample=salt-buildup.xlsx");
    ({ page, pane } = workbench);
  });

  afterAll(async () => {
    await workbench.close();
  });

  it("a marked flag of the sample is bold on a fill with a line at every edge, a flag in band is not", async () => {
    await expect.poll(() => drawn("Log", "N41")).toMatchObject({ bl: 1, bg: { rgb: "#FBE6DC" }, cl: { rgb: "#7A2E12" } });
    expect(Object.keys((await drawn("Log", "N41")).bd ?? {}).sort()).toEqual(["b", "l", "r", "t"]);
    expect((await drawn("Log", "N53")).bl).not.toBe(1);
  });

  it("the sample's header row stays in sight, its Date column is wide enough for 11.5 digits, the boxed cells are filled", async () => {
    expect(await inGrid('book.getSheetByName("Log").getFrozenRows()')).toBe(1);
    expect(await inGrid('book.getSheetByName("Log").getColumnWidth(0)')).toBeGreaterThanOrEqual(11.5 * 7);
    expect((await drawn("Bench", "B7")).bg).toEqual({ rgb: "#FFF8E1" });
  });

  it("where the sample has a chart, a box says its title and of which cells Excel draws it", async () => {
    await inGrid('book.getSheetByName("Bench").activate()');
    const box = page.locator("#pictures .chart");
    await expect.poll(() => box.allInnerTexts()).toEqual([expect.stringMatching(/^EC of feed and runoff\s+Excel draws a line chart of Log!C2:D73 here$/)]);
  });

  it("the hint of a limited cell shows when it is selected", async () => {
    await run(async (context) => { context.workbook.worksheets.getItem("Bench").getRange("B7").select(); await context.sync(); });
    await expect.poll(() => page.locator("#pictures .prompt").allInnerTexts()).toEqual(["runoff EC over feed EC, 1 to 10"]);
  });

  it("formats that the add-in adds are drawn: text that contains, a value above 2.2, a formula of its own", async () => {
    await run(async (context) => {
      const sheet = context.workbook.worksheets.add("Formats");
      sheet.getRange("A1:A4").values = [["check reading"], ["fine"], [2.1], [2.3]];
      const text = sheet.getRange("A1:A2").conditionalFormats.add("ContainsText");
      text.textComparison.format.font.bold = true;
      text.textComparison.format.borders.getItem("EdgeBottom").style = "Continuous";
      text.textComparison.rule = { operator: "Contains", text: "check" };
      const value = sheet.getRange("A3:A4").conditionalFormats.add("CellValue");
      value.cellValue.format.font.color = "#0000FF";
      value.cellValue.rule = { formula1: "=2.2", operator: "GreaterThan" };
      const own = sheet.getRange("A3:A4").conditionalFormats.add("Custom");
      own.custom.format.fill.color = "#AACCFF";
      own.custom.rule.formula = "=A3<2.2";
      await context.sync();
    });
    await expect.poll(() => drawn("Formats", "A1")).toMatchObject({ bl: 1, bd: { b: expect.anything() as unknown } });
    await expect.poll(() => drawn("Formats", "A4")).toMatchObject({ cl: { rgb: "#0000FF" } });
    await expect.poll(() => drawn("Formats", "A3")).toMatchObject({ bg: { rgb: "#AACCFF" } });
    expect([(await drawn("Formats", "A2")).bl, (await drawn("Formats", "A3")).cl, (await drawn("Formats", "A4")).bg]).toEqual([undefined, undefined, undefined]);
  });

  it("formulas know the tables, names and spills that the add-in makes: 2 + 5 + 3 = 10, 1 + 2 + 3 = 6, and 15 when the spill grows to 5", async () => {
    expect(await run(async (context) => {
      const sheet = context.workbook.worksheets.add("Tables");
      sheet.getRange("A1:B4").values = [["EC [in]", "EC out"], [1, 2], [2, 5], [2, 3]];
      sheet.tables.add(sheet.getRange("A1:B4"), true).name = "Feeds";
      await context.sync();
      context.workbook.names.add("HowMany", sheet.getRange("D1"));
      sheet.getRange("D1").values = [[3]];
      sheet.getRange("F1").formulas = [["=SEQUENCE(HowMany)"]];
      const asked = sheet.getRange("D2:D4");
      asked.formulas = [["=SUM(Feeds[EC out])"], ["=Feeds[@[EC out]]/Feeds[@[EC '[in']]]"], ["=SUM(F1#)"]];
      asked.load("values, formulas");
      await context.sync();
      sheet.getRange("D1").values = [[5]];
      const again = sheet.getRange("D4").load("values");
      await context.sync();
      return [asked.values, asked.formulas, again.values];
    })).toEqual([[[10], [2.5], [6]], [["=SUM(Feeds[EC out])"], ["=Feeds[@[EC out]]/Feeds[@[EC '[in']]]"], ["=SUM(F1#)"]], [[15]]]);
    expect(await drawn("Tables", "A1")).toMatchObject({ bl: 1 });
    expect((await drawn("Tables", "A3")).bg).toBeDefined();
  });

  it("a list and a frozen row that the add-in sets reach the grid", async () => {
    await run(async (context) => {
      const sheet = context.workbook.worksheets.getItem("Tables");
      sheet.getRange("H1").dataValidation.rule = { list: { inCellDropDown: true, source: "coir,peat" } };
      sheet.freezePanes.freezeRows(2);
      await context.sync();
    });
    expect(await inGrid('book.getSheetByName("Tables").getFrozenRows()')).toBe(2);
    expect(await inGrid('book.getSheetByName("Tables").getRange("H1").getDataValidation()?.rule.formula1')).toBe("coir,peat");
  });

  it("asked for nothing that is not on this machine, and nothing failed on the page", () => {
    expect(workbench.outside).toEqual([]);
    expect(workbench.failures).toEqual([]);
  });
});
