import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { hasBrowser } from "../browser";
import { climbing } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";

let pane: PaneAlone;

const scene = { cells: climbing(), selected: [[3, 0, 1, 1]] } as const;
const selectedRow = (page: Page): Promise<unknown> => page.evaluate(() => window.sheet.store.selection().map(({ row, column, rowCount, columnCount }) => [row, column, rowCount, columnCount]));
const shapes = (page: Page) => page.evaluate(() => window.sheet.store.records.shapes.map(({ name, content, altTextDescription, left, top, width, height }) => ({ name, content, altTextDescription, left, top, width, height })));

describe.skipIf(!hasBrowser)("the timeline in the pane and on the sheet", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it("is read by keyboard: Home, arrows and End give date, values and row; Enter selects the row in the sheet", async () => {
    const page = await pane.open(scene);
    const slider = page.locator("#timeline");
    await slider.focus();
    const told: string[] = [];
    for (const key of ["Home", "ArrowRight", "ArrowLeft", "End", "PageDown", "ArrowRight"]) {
      await page.keyboard.press(key);
      told.push((await page.locator("#point").innerText()).split(";")[0] ?? "");
      expect(await slider.getAttribute("aria-valuetext")).toBe(await page.locator("#point").innerText());
    }
    expect(told).toEqual(["1 Mar 2026", "2 Mar 2026", "1 Mar 2026", "12 Mar 2026", "2 Mar 2026", "3 Mar 2026"]);
    expect(await page.locator("#point").innerText()).toContain("EC in 1.50, runoff 2.60 mS/cm; pH in 5.80, runoff 6.00; salt ratio 1.73");
    await page.keyboard.press("Enter");
    await expect.poll(() => selectedRow(page)).toEqual([[3, 0, 1, 6]]);
    await page.close();
  });

  it("Enter while following selects the row, and the pane keeps showing the whole log", async () => {
    const page = await pane.open(scene);
    await page.check("#follow");
    await page.locator("#timeline").focus();
    await page.keyboard.press("Home");
    await page.keyboard.press("Enter");
    await expect.poll(() => selectedRow(page)).toEqual([[1, 0, 1, 6]]);
    await page.waitForTimeout(700);
    expect(await page.locator("#rows-read").innerText()).toContain("12 rows read");
    await page.close();
  });

  it("is read by pointer: the left end is the first reading, the right end the last", async () => {
    const page = await pane.open(scene);
    const timeline = page.locator("#timeline");
    await timeline.hover({ position: { x: 40, y: 100 } });
    await expect.poll(() => page.locator("#point").innerText()).toMatch(/^1 Mar 2026/);
    const width = await timeline.evaluate(({ clientWidth }) => clientWidth);
    await timeline.hover({ position: { x: width - 14, y: 100 } });
    await expect.poll(() => page.locator("#point").innerText()).toMatch(/^12 Mar 2026/);
    expect(await page.locator(".cursor").isVisible()).toBe(true);
    await page.close();
  });

  it("stands as a table too: 12 rows with their figures; a press on a row's number selects it", async () => {
    const page = await pane.open(scene);
    await page.click("#table-fold summary");
    await expect.poll(() => page.locator("#table tbody tr").count()).toBe(12);
    const first = await page.locator("#table tbody tr").first().locator("th, td").allInnerTexts();
    expect(first.slice(0, 6)).toEqual(["2", "1 Mar 2026", "1.50", "2.00", "5.80", "6.00"]);
    await page.click("#table-5");
    await expect.poll(() => selectedRow(page)).toEqual([[4, 0, 1, 6]]);
    await page.close();
  });

  it("goes onto the sheet beside everything filled, with alt text, and a second time in place of the first", async () => {
    const page = await pane.open({ ...scene, cells: climbing().map((row, place) => (place === 4 ? [...row, "", "", "a note far right"] : row)) });
    await page.click("#place");
    await expect.poll(() => page.locator("#said").innerText()).toBe("Placed on Log at K1, beside everything that is filled.");
    const [shape, ...more] = await shapes(page);
    expect(more).toEqual([]);
    expect(shape?.content).toMatch(/^iVBORw0KGgo/);
    expect(shape?.altTextDescription).toMatch(/^12 readings from 1 Mar 2026 to 12 Mar 2026\. EC: /);
    // Nine columns of 48 points are filled; the picture begins a column further right.
    expect(shape?.left).toBeGreaterThanOrEqual(9 * 48);
    expect([shape?.width, shape?.top]).toEqual([640 * 0.75, 0]);
    await page.evaluate(() => { window.sheet.type(2, 2, 9.9); });
    await page.waitForTimeout(500);
    await page.click("#place");
    await expect.poll(async () => (await shapes(page))[0]?.content === shape?.content).toBe(false);
    expect((await shapes(page)).map(({ name }) => name)).toEqual(["Runoff Ledger timeline"]);
    await page.close();
  });

  it("nothing failed on any of these pages, and nothing left this machine", () => {
    expect(pane.failures).toEqual([]);
    expect(pane.outside).toEqual([]);
  });
});
