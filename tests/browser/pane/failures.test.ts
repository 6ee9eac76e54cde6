import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { pageWords } from "../../../taskpane/words/page";
import { rowsWords } from "../../../taskpane/words/rows";
import { hasBrowser } from "../browser";
import { climbing } from "./logs";
import { type OpenOptions, type PaneAlone, paneAlone } from "./pane-alone";
import type { Scene } from "./stand-in";

let pane: PaneAlone;

const log = climbing();

describe.skipIf(!hasBrowser)("what is in the way is said in words", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it.each<[string, Scene, string]>([
    ["an empty sheet", { cells: [] }, rowsWords.emptySheet("Log")],
    [
      "blank cells selected beside a log",
      { cells: log, selected: [[40, 20, 3, 3]] },
      "There is nothing in the selected cells. Select rows of the log.",
    ],
    [
      "a picture selected, no cell",
      { cells: log, selected: [] },
      "Select cells of the log first: a few rows, whole columns, or one cell inside it.",
    ],
    [
      "a cell being typed into",
      { cells: log, switches: { cellEditing: true } },
      "A cell is being edited. Press Enter or Escape in the sheet, then try again.",
    ],
    [
      "more than the host hands over",
      { cells: log, switches: { cellsPerSync: 20 } },
      "That is more than can be read at once. Select fewer rows or columns.",
    ],
  ])("%s", async (_, scene, words) => {
    const page = await pane.open(scene);
    await expect.poll(() => page.locator("#said").innerText()).toBe(words);
    expect(await page.locator("#spoken[role=status]").textContent()).toBe(words);
    await page.close();
  });

  it("70,001 rows of 16 columns, more than a million cells, are not read: too large", async () => {
    const page = await pane.open({ cells: log });
    await page.locator("#rows-read").waitFor();
    await page.evaluate(() => {
      window.sheet.type(70_000, 15, 1);
      window.sheet.select([[0, 0, 1_048_576, 16]]);
    });
    await page.click("#read");
    await expect
      .poll(() => page.locator("#said").innerText())
      .toMatch(/^That is 1,120,016 cells; 1,000,000 can be read at once\. Select the rows of the last months/);
    await page.close();
  });

  it("once the cell is left, the same button reads", async () => {
    const page = await pane.open({ cells: log, switches: { cellEditing: true } });
    await expect.poll(() => page.locator("#said").innerText()).toContain("being edited");
    await page.evaluate(() => { window.sheet.store.records.switches.cellEditing = false; });
    await page.click("#read");
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("12 rows read");
    expect(await page.locator("#said").innerText()).toBe("");
    await page.close();
  });

  it("a protected sheet is read, but gets no picture: says to unprotect it, and nothing is placed", async () => {
    const page = await pane.open({ cells: log, selected: [[3, 0, 1, 1]], isProtected: true });
    await page.click("#place");
    await expect
      .poll(() => page.locator("#said").innerText())
      .toBe("This sheet is protected. Unprotect it (Review, Unprotect Sheet), then try again.");
    expect(await page.evaluate(() => window.sheet.store.records.shapes.length)).toBe(0);
    await page.close();
  });

  it("cells without a single reading: says so, gives the first reason, and opens the list of columns", async () => {
    const page = await pane.open({
      cells: [
        ["Name", "Phone"],
        ["a shop", "none"],
        ["a neighbour", "none"],
      ],
      selected: [[0, 0, 3, 2]],
    });
    await page.locator("#rows-read").waitFor();
    expect(await page.locator("#standing").innerText()).toMatch(
      /This does not look like a log: .*say which row is its header/,
    );
    expect(await page.locator("#standing h2").innerText()).toBe("Where things stand");
    await page.close();
  });

  it.each<[string, Scene, OpenOptions, RegExp, boolean]>([
    [
      "a host older than ExcelApi 1.9",
      { cells: log, switches: { missingApi: "ExcelApi 1.9" } },
      {},
      /^This version of Excel is too old for the pane: it needs Excel 2021/,
      false,
    ],
    [
      "the host's script missing",
      { cells: log },
      { missing: ["office.js"] },
      /^Excel's own script could not be loaded, so the sheet cannot be read\. When the network is back/,
      false,
    ],
    [
      "no worksheet functions in this host",
      { cells: log, switches: { missingApi: "CustomFunctionsRuntime 1.1" } },
      { missing: ["functions.js"] },
      /^This version of Excel does not run worksheet functions of add-ins\. The pane works/,
      true,
    ],
    [
      "functions.js not loaded",
      { cells: log },
      { missing: ["functions.js"] },
      /^The worksheet functions were not loaded: cells with RUNOFF formulas show #NAME\? or #BUSY!/,
      true,
    ],
  ])("%s", async (_, scene, options, words, works) => {
    const page = await pane.open(scene, options);
    await expect.poll(() => page.locator("#notice").innerText()).toMatch(words);
    if (works) await expect.poll(() => page.locator("#rows-read").innerText()).toContain("12 rows read");
    else expect(await page.locator("button").count()).toBe(0);
    await page.close();
  });

  it("the script that reads a log not loaded: told beside the press, and the same press reads once it can be", async () => {
    const page = await pane.open({ cells: log }, { missing: ["log.js"] });
    await expect.poll(() => page.locator("#said").innerText()).toBe(pageWords.notLoaded);
    expect(await page.locator(".bar:has(#read) + #said[data-tone=wait]").count()).toBe(1);
    expect(await page.locator("#spoken[role=status]").textContent()).toBe(pageWords.notLoaded);
    await page.unroute("**/log.js*");
    await page.click("#read");
    await expect.poll(() => page.locator("#rows-read").innerText()).toContain("12 rows read");
    expect(await page.locator("#said").innerText()).toBe("");
    await page.close();
  });

  it("where nothing is wrong no notice is shown", async () => {
    const page = await pane.open({ cells: log });
    await page.locator("#rows-read").waitFor();
    expect(await page.locator("#notice").isVisible()).toBe(false);
    await page.close();
  });
});
