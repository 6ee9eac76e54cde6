import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import axe from "axe-core";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { meterSheet } from "../../../taskpane/templates/meter-sheet";
import { watchSheet } from "../../../taskpane/templates/watch-sheet";
import { hasBrowser } from "../browser";
import { climbing, inPpm, twoPots } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";
import { readMe, shownBy, underTitle } from "./sheets";
import type { Scene } from "./stand-in";

let pane: PaneAlone;

const axeSource = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const threeLogs = [
  { name: "Read me", cells: readMe },
  { name: "Basil in the long trough by the window", cells: climbing(9) },
  { name: "Tomato", cells: underTitle(climbing(10)) },
];
const messy = [...climbing(), ["Total", 18, 43.8]];

const watched = watchSheet({ name: "Pepper 2", day: 46_096.4, feedEc: 1.9 });
/** The first row for a look: pH in D, EC in E. */
const looks = watched.rows.findIndex((cells) => cells[1]?.value === "Date") + 2;

/** A book whose pages stand between its logs, and sheets that are none: what the pane tells of each, and the ways on. */
const books: readonly (readonly [of: string, shows: string, scene: () => Promise<Scene>])[] = [
  ["the list of a book's 3 logs", "#open-log", () => Promise.resolve({ cells: climbing(), others: threeLogs })],
  ["a Read me beside 2 logs", "#open-log", () => Promise.resolve({ cells: readMe, others: threeLogs })],
  ["an empty sheet beside one log", "#open-log", () =>
    Promise.resolve({ cells: [], others: [{ name: "Basil", cells: climbing(9) }] })],
  ["our own meter sheet", "#back-to-log", async () =>
    ({ cells: await shownBy(meterSheet()), others: [{ name: "Basil", cells: climbing(9) }] })],
  ["our own watch sheet with its days", "#read-days", async () =>
    ({ cells: await shownBy(watched, { [`D${looks}`]: 5.9, [`E${looks}`]: 2.6 }) })],
];

/** Everything that opens is opened, so that all of it is looked at. */
async function unfold(page: Page): Promise<void> {
  await page.selectOption("#medium", "coir");
  await page.locator(".verdict").waitFor();
  await page.click("#open-work");
  await page.locator("#new-mix").waitFor();
  await page.evaluate(() => { for (const fold of document.querySelectorAll("details")) fold.open = true; });
  await page.locator("#table").waitFor();
}

async function violations(page: Page): Promise<string[]> {
  // The page's policy keeps foreign scripts out of it, so axe comes in through the browser's own door.
  await page.evaluate(axeSource);
  const { violations: found } = await page.evaluate<axe.AxeResults>("axe.run()");
  return found.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 120)}`));
}

describe.skipIf(!hasBrowser)("the pane for every eye and hand", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it.each([
    ["light", false, "none"], ["dark", true, "none"], ["forced colours", false, "active"],
  ] as const)("%s: axe-core finds nothing to mend, with everything opened, and with a question asked", async (_, isDark, forcedColors) => {
    for (const cells of [messy, inPpm()]) {
      const page = await pane.open({ cells, isDark, selected: [[1, 0, 14, 6]] });
      await page.emulateMedia({ colorScheme: isDark ? "dark" : "light", forcedColors });
      await page.locator("#rows-read").waitFor();
      if (cells === messy) await unfold(page);
      expect(await violations(page)).toEqual([]);
      await page.close();
    }
  });

  it.each([["light", false], ["dark", true]] as const)("%s: axe-core finds nothing to mend in two pots side by side", async (_, isDark) => {
    const page = await pane.open({ cells: twoPots(), isDark, selected: [[1, 0, 1, 1]] });
    await page.selectOption("#medium", "coir");
    await page.click("#small-pots-fold-title");
    await page.locator("#small-pot-1").waitFor();
    expect(await violations(page)).toEqual([]);
    await page.close();
  });

  describe.each(books)("%s", (_, shows, scene) => {
    it.each([["light", false], ["dark", true]] as const)(
      "%s, 350 px wide: axe-core finds nothing to mend, and nothing sticks out",
      async (__, isDark) => {
        const page = await pane.open({ ...(await scene()), isDark }, { width: 350 });
        await page.locator(shows).waitFor();
        expect(await violations(page)).toEqual([]);
        expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(350);
        await page.close();
      },
    );
  });

  it.each([320, 450])("%i px wide: nothing sticks out, and the top right 34 by 32 pixels are left to the host", async (width) => {
    const page = await pane.open({ cells: messy, selected: [[1, 0, 13, 6]] }, { width });
    await unfold(page);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
    await page.evaluate(() => { window.scrollTo(0, 0); });
    const inCorner = await page.evaluate((right) => [...document.querySelectorAll("button, select, input, h1, p")]
      .filter((each) => { const box = each.getBoundingClientRect(); return box.width > 1 && box.top < 32 && box.right > right - 34; }).length, width);
    expect(inCorner).toBe(0);
    const heights = await page.locator("[id^=own-]").evaluateAll((all) => all.map((each) => each.getBoundingClientRect().top));
    expect([heights.length, new Set(heights).size], "the four limits stand in one row").toEqual([4, 1]);
    await page.close();
  });

  it("350 by 378, the pane on a small laptop: verdict and next step are seen without scrolling", async () => {
    const page = await pane.open({ cells: climbing(), selected: [[3, 0, 1, 1]] }, { width: 350, height: 378 });
    await page.selectOption("#medium", "coir");
    const top = async (): Promise<number> => (await page.locator(".step").first().boundingBox())?.y ?? Infinity;
    await expect.poll(async () => (await top()) + 20).toBeLessThan(378);
    await page.close();
  });

  it("every control can be pressed by a wet thumb: 30 pixels high or more", async () => {
    const page = await pane.open({ cells: messy, selected: [[1, 0, 13, 6]] });
    await unfold(page);
    const low = await page.evaluate(() => [...document.querySelectorAll("button, select, input[type=text], summary, .check")]
      .map((each) => [each.id || each.textContent, each.getBoundingClientRect().height] as const).filter(([, height]) => height < 30));
    expect(low).toEqual([]);
    await page.close();
  });

  it("by keyboard alone: from the top through choosing, opening, reading a point and placing the picture, the focus never lost", async () => {
    const page = await pane.open({ cells: messy, selected: [[3, 0, 1, 1]] });
    await page.locator("#medium").waitFor();
    const path: string[] = [];
    const tab = async (to: string): Promise<void> => {
      for (let step = 0; step < 40; step += 1) {
        await page.keyboard.press("Tab");
        const here = await page.evaluate(() => document.activeElement?.id ?? "");
        path.push(here);
        if (here === to) return;
      }
      throw new Error(`Tab never reaches ${to}: ${path.join(" ")}`);
    };
    await tab("read");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#said").innerText()).toBe("");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("read");
    await tab("medium");
    await page.keyboard.type("coir");
    await expect.poll(() => page.locator(".verdict").innerText()).toContain("Salt buildup");
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("medium");
    await tab("timeline");
    await page.keyboard.press("Home");
    expect(await page.locator("#point").innerText()).toMatch(/^1 Mar 2026/);
    await tab("place");
    await page.keyboard.press("Enter");
    await expect.poll(() => page.locator("#said").innerText()).toContain("Placed on Log");
    await tab("columns-fold-title");
    await page.keyboard.press("Enter");
    await page.locator("#column-A").waitFor();
    await tab("column-A");
    await tab("limits-fold-title");
    expect(path.filter((id) => id === ""), path.join(" ")).toEqual([]);
    await page.close();
  });

  it("nothing failed on any of these pages, and nothing left this machine", () => {
    expect(pane.failures).toEqual([]);
    expect(pane.outside).toEqual([]);
  });
});
