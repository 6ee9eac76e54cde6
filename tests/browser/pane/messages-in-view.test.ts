import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../browser";
import { climbing, crisis } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";
import type { Scene } from "./stand-in";

let pane: PaneAlone;

/** What is said, once it is something, and whether all of it lies within what is seen, to a pixel. */
async function said(page: Page, matching: RegExp): Promise<{ readonly inView: boolean }> {
  await expect.poll(() => page.locator("#said").innerText()).toMatch(matching);
  return page.evaluate(() => {
    const { top, bottom } = document.getElementById("said")?.getBoundingClientRect() ?? { top: -1, bottom: Infinity };
    return { inView: top >= -1 && bottom <= window.innerHeight + 1 };
  });
}

/** The smallest pane there is, its medium chosen and the work on the sheet opened. */
async function opened(scene: Scene): Promise<Page> {
  const page = await pane.open(scene, { width: 320, height: 378 });
  await page.selectOption("#medium", "coir");
  await page.locator(".verdict").waitFor();
  await page.click("#open-work");
  await page.locator("#new-mix").waitFor();
  return page;
}

/** Each press with what it answers, in an order in which one makes way for the next; a new sheet is left for the log. */
const presses: readonly (readonly [id: string, says: RegExp, then?: "back"])[] = [
  ["add-columns", /^Put 2 columns on Log/],
  ["add-columns", /^Tick a column that is not there yet/],
  ["plant-columns", /^Put 4 columns on Log/],
  ["plant-columns", /^The log has columns for new growth/],
  ["extend", /reach the last row already/],
  ["turn-columns", /^No formula of Log is left/],
  ["mark", /^Marked|^Nothing|marks/],
  ["unmark", /marks|Removed/],
  ["new-mix", /^Made the sheet Mix/, "back"],
  ["new-watch", /^Made the sheet Watch/, "back"],
  ["new-meter", /^Made the sheet Meter/],
  ["take-back", /^Taken back: the sheet Meter is gone/],
  ["place", /^Placed on Log/],
];

describe.skipIf(!hasBrowser)("every message is seen when it appears, in a pane of 320 by 378", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it(`an answer stands in view after each of ${presses.length} presses down the pane`, async () => {
    const page = await opened({ cells: climbing(), selected: [[3, 0, 1, 1]] });
    for (const [id, says, then] of presses) {
      await page.click(`#${id}`);
      expect(await said(page, says), id).toEqual({ inView: true });
      if (then === "back") await page.click("#back-to-log");
    }
    await page.close();
  });

  it("a refusal stands in view too: a protected sheet takes neither columns nor marks", async () => {
    const page = await opened({ cells: climbing(), selected: [[3, 0, 1, 1]], isProtected: true });
    for (const id of ["add-columns", "plant-columns"]) {
      await page.click(`#${id}`);
      expect(await said(page, /protected/), id).toEqual({ inView: true });
    }
    await page.close();
  });

  it("the button under the verdict answers in view: with one reading far outside it goes to the row for the second", async () => {
    const page = await opened({ cells: [...climbing(1), [46_083, 1.5, 7.5, 5.8, 6, ""]], selected: [[1, 0, 1, 1]] });
    await page.click("#next-thing");
    expect(await said(page, /^Write the readings into row 4\./)).toEqual({ inView: true });
    expect(await page.evaluate(() => window.sheet.store.selection().map(({ row, column }) => [row, column]))).toEqual([
      [3, 0],
    ]);
    await page.close();
  });

  it("while the flush sheet is in view the step that made it can be taken back, and the log stands again", async () => {
    const page = await opened({ cells: crisis(), selected: [[5, 3, 1, 1]] });
    await page.click("#next-thing");
    await page.locator("#flush-container").waitFor();
    await page.click("#take-back");
    expect(await said(page, /^Taken back: the sheet Flush is gone/)).toEqual({ inView: true });
    await page.locator("#next-thing").waitFor();
    await page.close();
  });

  it("the answer to a portion stands by the next pour, in view, and over none of the keys", async () => {
    const page = await opened({ cells: crisis(), selected: [[5, 3, 1, 1]] });
    await page.click("#next-thing");
    await page.locator("#flush-container").fill("10");
    await page.locator("#flush-water").fill("0.4");
    await page.click("#write-pot");
    await page.locator("#flush-ec").fill("5.2");
    await page.locator("#flush-ph").fill("5.9");
    await page.click("#write-portion");
    expect(await said(page, /^Portion 1 is written on Flush\./)).toEqual({ inView: true });
    const covered = await page.evaluate(() => {
      const line = document.getElementById("said")?.getBoundingClientRect();
      return [...document.querySelectorAll(".key")].filter((key) => {
        const { top, bottom } = key.getBoundingClientRect();
        return line === undefined || (line.top < bottom && top < line.bottom);
      }).length;
    });
    expect(covered).toBe(0);
    await page.close();
  });

  it("nothing failed on any of these pages", () => {
    expect(pane.failures).toEqual([]);
  });
});
