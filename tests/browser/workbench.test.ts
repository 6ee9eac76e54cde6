/// <reference types="office-js" />
import type { Frame, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveWorkbench, type Workbench } from "../../workbench/server";
import { hasBrowser, openBrowser, type Session } from "./browser";

let workbench: Workbench;
let session: Session;
let page: Page;
const failures: string[] = [];

/** Goes to cells as a person does who types them into the box beside the formula bar. */
async function goTo(cells: string): Promise<void> {
  const nameBox = page.locator("#grid input").first();
  await nameBox.click();
  await nameBox.fill(cells);
  await page.keyboard.press("Enter");
  await expect.poll(() => ask((context) => context.workbook.getSelectedRange(), "address")).toBe(`Log!${cells}`);
}

async function typeIntoCell(text: string): Promise<void> {
  await page.keyboard.type(text, { delay: 10 });
  // The list of suggestions closes a moment after the last key; until then it would take the Enter key.
  await page.waitForTimeout(400);
  await page.keyboard.press("Enter");
}

function paneFrame(): Frame {
  const frame = page.frames().find((each) => each.url().includes("taskpane.html"));
  if (frame === undefined) throw new Error("the pane is not open");
  return frame;
}

/** What the host object answers the pane about a range: one of its properties. */
async function ask(find: (context: Excel.RequestContext) => Excel.Range, property: "address" | "values" | "formulas"): Promise<unknown> {
  const script = `Excel.run(async (context) => {
    const range = (${find.toString()})(context);
    range.load("${property}");
    await context.sync();
    return range.${property};
  })`;
  return paneFrame().evaluate(script);
}

const columnS = (): Promise<unknown> => ask((context) => context.workbook.worksheets.getItem("Log").getRange("S2:S41"), "values");

describe.skipIf(!hasBrowser)("the page that npm run workbench serves", () => {
  beforeAll(async () => {
    workbench = await serveWorkbench(0);
    session = await openBrowser();
    page = session.context.pages()[0] ?? (await session.context.newPage());
    page.on("pageerror", (problem) => failures.push(problem.message));
    page.on("console", (message) => { if (message.type() === "error") failures.push(message.text()); });
    await page.goto(`${workbench.address}?sample=salt-buildup.xlsx`);
    await page.waitForSelector("html[data-ready=true]");
    await paneFrame().waitForSelector("#rows button");
  });

  afterAll(async () => {
    await session.close();
    await workbench.close();
  });

  it("says that it stands in for Excel, and offers the sample logs", async () => {
    expect(await page.title()).toBe("Runoff Ledger workbench");
    expect(await page.locator("header").first().innerText()).toContain("A stand-in for Excel");
    const offered = await page.locator("#sample option").evaluateAll((options) => options.map((option) => [option.getAttribute("value"), option.textContent]));
    expect(offered).toContainEqual(["salt-buildup.xlsx", "Salt builds up, a flush, recovery"]);
    expect(offered.filter(([file, words]) => file === words)).toEqual([]);
  });

  it("stands one under the other on a screen of 320 px, the pane as wide as the screen", async () => {
    const usual = page.viewportSize();
    await page.setViewportSize({ width: 320, height: 700 });
    await expect.poll(() => page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    const [grid, pane] = await Promise.all([page.locator(".sheet").boundingBox(), page.locator("#pane").boundingBox()]);
    expect(pane?.width).toBe(320);
    expect(pane?.y).toBeGreaterThanOrEqual((grid?.y ?? NaN) + (grid?.height ?? NaN));
    if (usual !== null) await page.setViewportSize(usual);
  });

  it("helps while a formula is typed: =RUNOFF.SALT offers SALTRATIO with its description", async () => {
    await goTo("S2");
    await page.keyboard.type("=RUNOFF.SALTR", { delay: 10 });
    await page.getByText("Salt ratio: runoff EC over input EC").waitFor();
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });

  it("=RUNOFF.SALTRATIO(D2:D40,C2:C40) typed into S2 spills over 39 rows, each runoff EC over its input EC", async () => {
    await goTo("S2");
    await typeIntoCell("=RUNOFF.SALTRATIO(D2:D40,C2:C40)");
    await expect.poll(async () => ((await columnS()) as unknown[][]).filter(([value]) => typeof value === "number").length).toBe(39);
    const readings = (await ask((context) => context.workbook.worksheets.getItem("Log").getRange("C2:D40"), "values")) as [number, number][];
    const ratios = (await columnS()) as [number][];
    readings.forEach(([input, runoff], i) => { expect(ratios[i]?.[0], `row ${i + 2}`).toBeCloseTo(runoff / input, 12); });
    expect(ratios.at(-1)).toEqual([""]);
  });

  it("an edited reading changes the spill: 3.92 out of 1.96 is 2", async () => {
    await goTo("D2");
    await typeIntoCell("3.92");
    await goTo("C2");
    await typeIntoCell("1.96");
    await expect.poll(async () => ((await columnS()) as unknown[][])[0]).toEqual([2]);
  });

  it("a reading taken out leaves its ratio blank, however the host delivers a blank", async () => {
    await goTo("D3");
    await page.keyboard.press("Delete");
    for (const blank of ["null", "empty", "zero"]) {
      await page.selectOption("#blank", blank);
      await expect.poll(async () => ((await columnS()) as unknown[][])[1], { message: blank }).toEqual([""]);
    }
  });

  it("the pane reads the rows selected in the grid and says which: 12 to 25", async () => {
    await goTo("A12:J25");
    const pane = paneFrame();
    await pane.getByRole("button", { name: "Read the selection" }).click();
    await pane.locator("#rows", { hasText: "rows 12 to 25" }).waitFor();
    expect(await pane.locator("#rows").innerText()).toMatch(/^Log\b/);
  });

  it("a picture that the pane places stands on the grid with its alt text, and scrolls with the cells", async () => {
    await paneFrame().getByRole("button", { name: "Place on sheet" }).click();
    const picture = page.locator("#pictures img");
    await picture.waitFor({ state: "attached" });
    expect(await picture.getAttribute("alt")).toMatch(/readings from .* 2026/);
    const top = async (): Promise<number> => (await picture.boundingBox())?.y ?? Number.NaN;
    const before = await top();
    await page.locator("#grid").hover();
    await page.mouse.wheel(0, 240);
    await expect.poll(top).toBeLessThan(before - 100);
  });

  it("pretends to be a host in trouble: a protected sheet takes no picture, and the pane says why", async () => {
    await page.selectOption("#pretend", "the sheets are protected");
    await paneFrame().getByRole("button", { name: "Place on sheet" }).click();
    await paneFrame().locator("#said", { hasText: "protected" }).waitFor();
    expect(await page.locator("#pictures img").count()).toBe(1);
    await page.selectOption("#pretend", "all is well");
  });

  it("pretends that the functions are not loaded: their cells show #NAME?, until they are there again", async () => {
    const ratio = (): Promise<unknown> => ask((context) => context.workbook.worksheets.getItem("Log").getRange("K3"), "values").catch(() => undefined);
    await page.selectOption("#pretend", "the functions are not loaded");
    await expect.poll(ratio).toEqual([["#NAME?"]]);
    await page.selectOption("#pretend", "all is well");
    await expect.poll(ratio).toEqual([[expect.closeTo(1.99 / 1.97, 12)]]);
  });

  it("answers that arrive late: #BUSY! at first, and the ratio once its function has answered", async () => {
    const ratio = (): Promise<unknown> => ask((context) => context.workbook.worksheets.getItem("Log").getRange("S50"), "values");
    await page.selectOption("#pretend", "answers arrive late (3 s)");
    await paneFrame().evaluate(`Excel.run(async (context) => {
      context.workbook.worksheets.getItem("Log").getRange("S50").formulas = [["=RUNOFF.SALTRATIO(3.3,1.5)"]];
      await context.sync();
    })`);
    expect(await ratio()).toEqual([["#BUSY!"]]);
    await expect.poll(ratio).toEqual([[expect.closeTo(2.2, 12)]]);
    await page.selectOption("#pretend", "all is well");
  });

  it("a dark theme reaches the grid, the page and the pane", async () => {
    await page.click("#theme");
    await paneFrame().waitForSelector("#rows button");
    expect(await page.locator("html").getAttribute("data-theme")).toBe("dark");
    expect(await paneFrame().evaluate("Office.context.officeTheme.isDarkTheme")).toBe(true);
    await page.click("#theme");
    await paneFrame().waitForSelector("#rows button");
  });

  it("the pane goes from 320 to 600 px wide by keyboard, no further", async () => {
    const width = async (): Promise<number> => (await page.locator("#pane").boundingBox())?.width ?? 0;
    await page.focus("#edge");
    for (let i = 0; i < 40; i += 1) await page.keyboard.press("ArrowRight");
    expect(await width()).toBe(320);
    for (let i = 0; i < 40; i += 1) await page.keyboard.press("ArrowLeft");
    expect(await width()).toBe(600);
  });

  it("opens a .csv that a person picks, in place of the sample", async () => {
    const buffer = Buffer.from("Date,Feed EC,Runoff EC\n2026-03-01,1.5,3.0\n");
    await page.setInputFiles("#file", { name: "picked.csv", mimeType: "text/csv", buffer });
    await expect.poll(() => page.locator("#message").innerText()).toBe("");
    const read = (): Promise<unknown> => ask((context) => context.workbook.worksheets.getActiveWorksheet().getRange("A1:C2"), "values").catch(() => undefined);
    await expect.poll(read).toEqual([["Date", "Feed EC", "Runoff EC"], ["2026-03-01", 1.5, 3]]);
  });

  it("says in one line why a file cannot be opened", async () => {
    await page.setInputFiles("#file", { name: "broken.xlsx", mimeType: "application/octet-stream", buffer: Buffer.from("no workbook") });
    await expect.poll(() => page.locator("#message").innerText()).toContain("it is not an .xlsx workbook");
  });

  it("asked for nothing that is not on this machine, and nothing failed on the page", () => {
    expect(session.outside).toEqual([]);
    expect(failures).toEqual([]);
  });
});
