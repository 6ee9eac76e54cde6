import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../browser";
import { crisis } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";

let pane: PaneAlone;

const words = (page: Page, id: string): Promise<string> => page.locator(`#${id}`).innerText();

/** Whether an element lies within what is seen of the pane, wholly. */
const inView = (page: Page, id: string): Promise<boolean> => page.evaluate((at) => {
  const box = document.getElementById(at)?.getBoundingClientRect();
  return box !== undefined && box.height > 0 && box.top >= 0 && box.bottom <= window.innerHeight + 1;
}, id);

/** The crisis log with its medium chosen, as a grower finds it: the verdict stands. */
async function opened(height = 620): Promise<Page> {
  const page = await pane.open({ cells: crisis(), selected: [[5, 3, 1, 1]] }, { width: 350, height });
  await page.selectOption("#medium", "coir");
  await page.locator("#next-thing").waitFor();
  return page;
}

/** Types a portion's two readings with the large keys and writes them. */
async function portion(page: Page, ec: string, ph: string): Promise<void> {
  for (const [field, figure] of [["flush-ec", ec], ["flush-ph", ph]] as const) {
    await page.click(`#${field}`);
    for (const key of figure) await page.locator(".key", { hasText: new RegExp(`^${key === "." ? "\\." : key}$`) }).click();
  }
  await page.click("#write-portion");
}

describe.skipIf(!hasBrowser)("from a burnt plant to litres, pH and a stop rule", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it("the crisis log says salt buildup with runoff EC 7.28, and one button stands out: the flush of this pot", async () => {
    const page = await opened();
    expect(await page.locator(".verdict").innerText()).toContain("Salt buildup");
    expect(await words(page, "figures")).toContain("7.28");
    expect(await words(page, "next-thing")).toBe("Plan the flush for this pot");
    expect(await page.locator("button.main").count()).toBe(1);
    await page.close();
  });

  it("four presses, two figures typed: litres, the pH to pour at and the stop rule are on screen, filled from the pot", async () => {
    const page = await opened();
    await page.click("#next-thing");
    await page.locator("#flush-container").waitFor();
    await page.click("#flush-container");
    await page.keyboard.type("10");
    await page.click("#flush-water");
    await page.keyboard.type("0.4");
    await page.click("#write-pot");
    await page.locator("#pour").waitFor();
    expect(await words(page, "pour")).toMatch(/^Pour next\s+1\.\d L at pH 5\.\d/);
    expect(await words(page, "stop-when")).toMatch(/^STOP at \d\.\d\d mS\/cm or less with pH 5\.5 to 6\.5/);
    for (const id of ["pour", "says", "stop-when"]) expect(await inView(page, id), id).toBe(true);
    const cells = await page.evaluate(() => {
      const { store } = window.sheet;
      const sheet = store.sheets().find(({ name }) => name === "Flush");
      if (sheet === undefined) return [];
      return store.values({ sheetId: sheet.id, row: 0, column: 0, rowCount: 30, columnCount: 2 });
    });
    const beside = new Map(cells.map(([label, value]) => [label, value]));
    expect(["Pot", "Medium", "Runoff EC before (mS/cm)", "Runoff pH before", "Feed at full strength, EC (mS/cm)", "Container (L)"].map((label) => beside.get(label)))
      .toEqual(["Pepper 2", "coir", 7.28, 5.9, 1.9, 10]);
    await page.close();
  });

  it("three portions by the large keys: go on, go on, stop; each is written into its own row", async () => {
    const page = await opened();
    await page.click("#next-thing");
    await page.locator("#flush-container").fill("10");
    await page.locator("#flush-water").fill("0.4");
    await page.click("#write-pot");
    const said: string[] = [];
    for (const [ec, ph] of [["5.2", "5.9"], ["4.0", "5.9"], ["3.0", "6.0"]] as const) {
      const before = await words(page, "write-portion");
      await portion(page, ec, ph);
      await expect.poll(() => words(page, "write-portion")).not.toBe(before);
      said.push(await page.locator("#says strong").innerText());
      expect(await inView(page, "said")).toBe(true);
    }
    expect(said).toEqual(["keep going", "keep going", "stop: in band"]);
    expect(await words(page, "pour")).toBe("Pour nothing now");
    expect(await page.locator("#washout path").count()).toBeGreaterThan(2);
    await page.close();
  });

  it("a figure that is none is refused beside the button, within view, and nothing is written", async () => {
    const page = await opened();
    await page.click("#next-thing");
    await page.locator("#flush-container").fill("ten");
    await page.locator("#flush-water").fill("0.4");
    await page.click("#write-pot");
    await expect.poll(() => words(page, "said")).toBe("Container (L): type a number.");
    expect(await inView(page, "said")).toBe(true);
    expect(await page.locator("#spoken").textContent()).toBe("Container (L): type a number.");
    expect(await page.inputValue("#flush-container")).toBe("ten");
    await page.close();
  });

  it("back to the log: its verdict stands again", async () => {
    const page = await opened();
    await page.click("#next-thing");
    await page.click("#back-to-log");
    await page.locator("#next-thing").waitFor();
    expect(await page.locator(".verdict").innerText()).toContain("Salt buildup");
    await page.close();
  });

  it("nothing failed on any of these pages, and nothing left this machine", () => {
    expect(pane.failures).toEqual([]);
    expect(pane.outside).toEqual([]);
  });
});
