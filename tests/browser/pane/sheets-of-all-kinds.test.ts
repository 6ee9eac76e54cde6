import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { flushSheet } from "../../../taskpane/templates/flush-sheet";
import { meterSheet } from "../../../taskpane/templates/meter-sheet";
import { mixSheet } from "../../../taskpane/templates/mix-sheet";
import { watchSheet } from "../../../taskpane/templates/watch-sheet";
import { hasBrowser } from "../browser";
import { climbing } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";
import { halfHourly, italian, readMe, shownBy, stock, twelvePots, underTitle } from "./sheets";
import type { Scene } from "./stand-in";

// What a person who opens the pane on a sheet of each kind should be told: common practice, no source.

let pane: PaneAlone;

const text = (page: Page, id: string): Promise<string> => page.locator(id).innerText();

async function opened(scene: Scene): Promise<Page> {
  const page = await pane.open(scene);
  await page.locator("#rows-read, #back-to-log, #said:not(:empty)").first().waitFor();
  await expect.poll(() => page.locator("#said").innerText()).not.toMatch(/^Reading/);
  return page;
}

/** The verdict once coir was chosen. */
async function inCoir(scene: Scene): Promise<[rows: string, verdict: string, page: Page]> {
  const page = await opened(scene);
  await page.selectOption("#medium", "coir");
  await page.locator(".verdict").waitFor();
  return [await text(page, "#rows-read"), await text(page, ".verdict"), page];
}

describe.skipIf(!hasBrowser)("a sheet of each kind says something true and helpful", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it.each([
    ["a Read me", readMe],
    ["a list of salts", stock],
  ])("%s: it does not look like a log, and one question asks for its header", async (_, cells) => {
    const page = await opened({ cells });
    expect(await text(page, "#not-yet")).toMatch(/^This does not look like a log: .*say which row is its header\.$/);
    expect(await page.locator(".waits").count()).toBe(1);
    await page.close();
  });

  it("an empty sheet: how a log begins, and where the book's log is", async () => {
    const page = await opened({ cells: [], others: [{ name: "Pepper", cells: climbing() }] });
    expect(await text(page, "#said")).toMatch(
      /^The sheet Log is empty\. A log begins with a row of names, such as Date/,
    );
    await page.click("#open-log");
    await expect
      .poll(() => page.locator("#rows-read").allInnerTexts())
      .toEqual([expect.stringMatching(/^Pepper, rows 1 to 13.*: 12 rows read\.$/)]);
    expect(await page.locator("#logs-said").count()).toBe(0);
    await page.close();
  });

  it("a book of 3 logs, a Read me and a mix sheet: the logs are named, and a choice shows another", async () => {
    const others = [
      { name: "Read me", cells: readMe },
      { name: "Basil", cells: climbing(9) },
      { name: "Mix", cells: await shownBy(mixSheet()) },
      { name: "Tomato", cells: underTitle(climbing(10)) },
    ];
    const page = await opened({ cells: climbing(), others });
    await page.locator("#logs-said").waitFor();
    expect(await text(page, "#logs-said")).toBe("This book holds 3 logs: Log, Basil, Tomato.");
    await page.selectOption("#open-log", { label: "Tomato" });
    await expect.poll(() => page.locator("#rows-read").innerText()).toMatch(/^Tomato, rows 1 to 12.*: 10 rows read/);
    await expect.poll(() => page.locator("#open-log option:checked").innerText()).toBe("Tomato");
    await page.close();
  });

  it.each([
    ["mix", mixSheet({ name: "Pepper 2" }), "Mix: Pepper 2", /is no log/],
    ["watch", watchSheet({ name: "Pepper 2" }), "Watch: Pepper 2", /for the days after/],
    ["meter", meterSheet(), "Meter", /keeps the calibrations/],
  ] as const)(
    "our own %s sheet is named for what it is, with the way back and no question",
    async (_, template, title, said) => {
      const page = await opened({ cells: await shownBy(template), others: [{ name: "Pepper", cells: climbing() }] });
      expect(await text(page, "#standing h2")).toBe(title);
      expect(await text(page, "#own-said")).toMatch(said);
      expect(await page.locator("#questions > *, #read-days").count()).toBe(0);
      await page.waitForTimeout(600);
      await page.click("#back-to-log");
      await expect
        .poll(() => page.locator("#rows-read").allInnerTexts())
        .toEqual([expect.stringMatching(/^Pepper, rows 1 to 13/)]);
      await page.close();
    },
  );

  it("our flush sheet without its two figures asks for them and gives no plan", async () => {
    const page = await opened({
      cells: await shownBy(flushSheet({ name: "Pepper 2", medium: "coir", runoffEc: 6, runoffPh: 5.9 })),
    });
    await page.locator("#write-pot").waitFor();
    expect(await text(page, "#standing")).toMatch(/^Flush: Pepper 2[^]*Two figures first/);
    expect(await page.locator("#pour").count()).toBe(0);
    await page.close();
  });

  it("what is written on a watch sheet is judged in one press: EC 2.4 and pH 6.0, two looks", async () => {
    const template = watchSheet({ name: "Pepper 2", day: 46_096.4, feedEc: 1.9 });
    const row = template.rows.findIndex((cells) => cells[1]?.value === "Date") + 2;
    const typed = { [`D${row}`]: 5.9, [`E${row}`]: 2.6, [`D${row + 1}`]: 6, [`E${row + 1}`]: 2.4 };
    const page = await opened({ cells: await shownBy(template, typed) });
    await page.click("#read-days");
    await page.selectOption("#medium", "coir");
    await page.locator(".verdict").waitFor();
    expect(await text(page, "#rows-read")).toMatch(/: 2 rows read/);
    expect(await page.locator("#figures strong").allInnerTexts()).toEqual(["Runoff EC 2.40", "Runoff pH 6.00"]);
    await page.close();
  });

  it("a merged title that is selected leads to the log under it", async () => {
    const [rows, verdict, page] = await inCoir({ cells: underTitle(climbing()), selected: [[0, 0, 1, 6]] });
    expect(rows).toMatch(/^Log, rows 1 to 14.*: 12 rows read, 1 set aside\.$/);
    expect(verdict).toMatch(/Salt buildup/);
    await page.close();
  });

  it("4 rows hidden by a filter are said beside the verdict", async () => {
    const [rows, , page] = await inCoir({ cells: climbing(), hiddenRows: [3, 4, 5, 9] });
    expect(rows).toMatch(/8 rows read, 4 hidden, not read\.$/);
    expect(await page.locator("#standing .remark").allInnerTexts()).toEqual(["4 hidden rows are not read."]);
    await page.close();
  });

  it("a filter that hides all 12 rows is named as what is in the way, and nothing is said of the pot", async () => {
    const page = await opened({ cells: climbing(), hiddenRows: Array.from({ length: 12 }, (_, row) => row + 1) });
    await page.selectOption("#medium", "coir");
    expect(await text(page, "#not-yet")).toMatch(/^Under the header all 12 rows are hidden.*Show them/);
    expect(await page.locator("#told").textContent()).toBe("");
    await page.close();
  });

  it("a bench of 12 pots shows the worst first, of 12", async () => {
    const [, verdict, page] = await inCoir({ cells: twelvePots });
    expect(verdict).toMatch(/Salt buildup/);
    expect(await text(page, "#which-pot")).toBe("Pot 3, the most urgent of 12 pots");
    expect(
      (await page.locator(".pot").allInnerTexts()).slice(0, 2).map((line) => line.includes("salt buildup")),
    ).toEqual([true, true]);
    await page.close();
  });

  it.each([5000, 100_000])("%i rows are read and judged, none lost", async (rows) => {
    const [said, verdict, page] = await inCoir({ cells: halfHourly(rows) });
    expect(said).toMatch(new RegExp(`: ${rows} rows read\\.$`));
    expect(verdict).toMatch(/In band/);
    await page.close();
  });

  it("more than a million cells: how many they are and what to select; of the last 1,000 rows the header is found", async () => {
    const cells = halfHourly(100_000).map((row) => [...row, "x", "x", "x", "x"]);
    const page = await opened({ cells });
    expect(await text(page, "#said")).toMatch(
      /^That is 1,200,012 cells; 1,000,000 can be read at once\. Select the rows of the last months/,
    );
    await page.evaluate(() => {
      window.sheet.select([[99_001, 0, 1000, 12]]);
    });
    await page.click("#read");
    await expect
      .poll(() => page.locator("#rows-read").allInnerTexts())
      .toEqual([expect.stringMatching(/rows 99002 to 100001.*: 1000 rows read\.$/)]);
    await page.close();
  });

  it("an Italian header is read: ingresso is what was fed, drenaggio what drained", async () => {
    const [rows, verdict, page] = await inCoir({ cells: italian });
    expect(rows).toMatch(/: 12 rows read\.$/);
    expect(verdict).toMatch(/Salt buildup/);
    await page.close();
  });

  it("nothing was reported as an error", () => { expect(pane.failures).toEqual([]); });
});
