import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../browser";
import { climbing, longLog } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";
import type { Place, Scene } from "./stand-in";

let pane: PaneAlone;

const wholeColumns: readonly Place[] = [[0, 0, 1_048_576, 6]];
const rowsRead = async (scene: Scene): Promise<string> => {
  const page = await pane.open(scene);
  try {
    return await page.locator("#rows-read").innerText();
  } finally {
    await page.close();
  }
};

describe.skipIf(!hasBrowser)("which rows the pane reads, and from where", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it.each<[string, Partial<Scene>, string]>([
    ["rows 3 to 6", { selected: [[2, 0, 4, 6]] }, "Log, rows 3 to 6, columns A to F: 4 rows read."],
    ["one cell inside the log: all 12 rows", { selected: [[4, 2, 1, 1]] }, "Log, rows 1 to 13, columns A to F (the whole log around the cell): 12 rows read."],
    ["whole columns", { selected: wholeColumns }, "Log, rows 1 to 13, columns A to F: 12 rows read."],
    ["two areas", { selected: [[1, 0, 3, 6], [8, 0, 2, 6]] }, "Log, rows 2 to 4, 9 to 10, columns A to F: 5 rows read."],
    ["a cell of a Table", { selected: [[3, 1, 1, 1]], table: { name: "Bench", place: [0, 0, 13, 6] } }, "Log, rows 1 to 13, Table Bench (the whole log around the cell): 12 rows read."],
    ["rows that a filter hides are counted, not read", { selected: [[1, 0, 12, 6]], hiddenRows: [4, 5] }, "Log, rows 2 to 4, 7 to 13, columns A to F: 10 rows read, 2 hidden, not read."],
  ])("%s", async (_, scene, words) => {
    expect(await rowsRead({ cells: climbing(), ...scene })).toBe(words);
  });

  it("a blank row and a total are counted apart: 12 rows read, 1 set aside, 1 blank", async () => {
    const cells = [...climbing(), [], ["Total", 18, 43.8]];
    expect(await rowsRead({ cells, selected: wholeColumns })).toContain("12 rows read, 1 set aside, 1 blank.");
  });

  it("a button under a pressed finger stays, whatever the sheet does meanwhile; after the press the pane catches up", async () => {
    const page = await pane.open({ cells: climbing(), selected: [[1, 0, 12, 6]] });
    const button = page.locator("#read");
    await button.evaluate((node) => { node.dataset["mark"] = "same"; });
    await button.hover();
    await page.mouse.down();
    await page.evaluate(() => { window.sheet.type(2, 2, 9.9); });
    await page.waitForTimeout(1000);
    expect(await button.getAttribute("data-mark")).toBe("same");
    await page.mouse.up();
    await expect.poll(() => button.getAttribute("data-mark")).toBeNull();
    await page.close();
  });

  it("follows the selection only when asked to, and then by itself", async () => {
    const page = await pane.open({ cells: climbing(), selected: [[1, 0, 4, 6]] });
    const read = page.locator("#rows-read");
    await expect.poll(() => read.innerText()).toContain("rows 2 to 5");
    await page.evaluate(() => { window.sheet.select([[5, 0, 4, 6]]); });
    await page.waitForTimeout(600);
    expect(await read.innerText()).toContain("rows 2 to 5");
    await page.check("#follow");
    await expect.poll(() => read.innerText()).toContain("rows 6 to 9");
    await page.evaluate(() => { window.sheet.select([[9, 0, 3, 6]]); });
    await expect.poll(() => read.innerText()).toContain("rows 10 to 12");
    await page.uncheck("#follow");
    await page.evaluate(() => { window.sheet.select([[1, 0, 2, 6]]); });
    await page.waitForTimeout(600);
    expect(await read.innerText()).toContain("rows 10 to 12");
    await page.close();
  });

  it("draws anew when a reading is corrected, without being asked to follow: 2.3 typed as 9.9 shows at its point", async () => {
    const page = await pane.open({ cells: climbing(), selected: [[3, 0, 1, 1]] });
    await page.locator("#timeline").focus();
    for (const key of ["Home", "ArrowRight"]) await page.keyboard.press(key);
    await expect.poll(() => page.locator("#point").innerText()).toContain("2 Mar 2026; EC in 1.50, runoff 2.30 mS/cm");
    await page.evaluate(() => { window.sheet.type(2, 2, 9.9); });
    await expect.poll(() => page.locator("#point").innerText()).toContain("runoff 9.90 mS/cm");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("timeline");
    await page.close();
  });

  it("a row typed under the log is read with it: 13 rows", async () => {
    const page = await pane.open({ cells: climbing(), selected: [[3, 0, 1, 1]] });
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("12 rows read");
    await page.evaluate(() => { for (const [column, value] of [46_094, 1.5, 5.9, 5.8, 6].entries()) window.sheet.type(13, column, value); });
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("13 rows read");
    await page.close();
  });

  it("while a cell is being typed into the pane waits in silence, and reads when it is done", async () => {
    const page = await pane.open({ cells: climbing(), selected: [[3, 0, 1, 1]] });
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("12 rows read");
    await page.evaluate(() => {
      window.sheet.type(13, 0, 46_094);
      window.sheet.type(13, 2, 5.9);
      window.sheet.store.records.switches.cellEditing = true;
    });
    await page.waitForTimeout(700);
    expect(await page.locator("#said").innerText()).toBe("");
    await page.evaluate(() => { window.sheet.store.records.switches.cellEditing = false; });
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("13 rows read");
    await page.close();
  });

  it("50,000 rows of 12 columns: says that it reads, and how many, before each long stretch of work", async () => {
    const page = await pane.open({ cells: climbing() });
    await page.locator("#rows-read").waitFor();
    const cells = longLog(50_000);
    await page.evaluate((given) => {
      const { store, id } = window.sheet;
      store.records.eventsEnabled = false;
      store.write({ sheetId: id, row: 0, column: 0, rowCount: given.length, columnCount: 12 }, given);
      const said: string[] = [];
      const line = document.getElementById("said") ?? document.body;
      new MutationObserver(() => { said.push(line.textContent); }).observe(line, { childList: true });
      Object.assign(window, { saidLines: said });
    }, cells);
    await page.click("#read");
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("50000 rows read");
    await expect.poll(() => page.locator("#said").innerText()).toBe("");
    const lines = await page.evaluate(() => (window as unknown as { saidLines: string[] }).saidLines);
    expect(lines).toEqual(["Reading ...", "Reading 50001 rows ...", ""]);
    await page.close();
  });

  it("nothing failed on any of these pages, and nothing left this machine", () => {
    expect(pane.failures).toEqual([]);
    expect(pane.outside).toEqual([]);
  });
});
