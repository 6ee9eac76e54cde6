/// <reference types="office-js" />
import type { Frame, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveWorkbench, type Workbench } from "../../workbench/server";
import { hasBrowser, openBrowser, type Session } from "./browser";

let workbench: Workbench;
let session: Session;
let page: Page;
const failures: string[] = [];

const log = `Date,Feed EC (mS/cm),Feed pH,Runoff EC (uS/cm),Runoff pH,Fed (L),Drained (L)
2026-03-01,1.5,5.9,3000,5.6,2,0.4
2026-03-03,1.6,5.8,4000,5.9,2,0.5
2026-03-05,1.6,5.8,2400,6,2,0.5
`;

/** A busy machine takes its time. */

function pane(): Frame {
  const frame = page.frames().find((each) => each.url().includes("taskpane.html"));
  if (frame === undefined) throw new Error("the pane is not open");
  return frame;
}

/** What the workbook holds: values or formulas of cells on the active sheet. */
async function cells(address: string, property: "values" | "formulas" = "values"): Promise<unknown> {
  return pane().evaluate(`Excel.run(async (context) => {
    const range = context.workbook.worksheets.getActiveWorksheet().getRange("${address}").load("${property}");
    await context.sync();
    return range.${property};
  })`);
}

/** Selects cells; a grid that is still being drawn refuses. */
async function selected(address: string): Promise<unknown> {
  return pane().evaluate(`Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange("${address}").select();
    const range = context.workbook.getSelectedRange().load("address");
    await context.sync();
    return range.address.split("!").at(-1);
  })`);
}

async function press(name: string, says: RegExp): Promise<void> {
  await pane().getByRole("button", { name }).click();
  await expect.poll(() => pane().locator("#said").textContent()).toMatch(says);
}

describe.skipIf(!hasBrowser)("work on the sheet, in the workbench", () => {
  beforeAll(async () => {
    workbench = await serveWorkbench(0);
    session = await openBrowser();
    page = session.context.pages()[0] ?? (await session.context.newPage());
    page.setDefaultTimeout(10_000);
    page.on("pageerror", (problem) => failures.push(problem.message));
    page.on("console", (message) => { if (message.type() === "error") failures.push(message.text()); });
    await page.goto(workbench.address);
    await page.waitForSelector("html[data-ready=true]");
    await pane().waitForSelector("#rows button");
  });

  afterAll(async () => {
    await session.close();
    await workbench.close();
  });

  it("opens from the pane for the log that was read, as a script of its own", async () => {
    await page.setInputFiles("#file", { name: "bench.csv", mimeType: "text/csv", buffer: Buffer.from(log) });
    await expect.poll(() => cells("B2").catch(() => undefined)).toEqual([[1.5]]);
    await expect.poll(() => selected("B2").catch(() => undefined)).toBe("B2");
    await pane().getByRole("button", { name: "Read the selection" }).click();
    await pane().locator("#medium").selectOption("coir");
    await pane().getByRole("button", { name: "Work on the sheet" }).click();
    await pane().locator("#add-columns").waitFor();
  });

  it("puts salt ratio and row flags beside the log: 3000 uS/cm over 1.5 mS/cm is 2; 4 mS/cm is over coir's 3.5", async () => {
    await press("Add the ticked columns", /Put 2 columns on .* at H1:I4: Salt ratio, Row flags/);
    await expect.poll(() => cells("H1:I4")).toEqual([
      ["Salt ratio", "Row flags"], [2, "salt ratio high"], [2.5, "runoff EC high; salt ratio high"], [expect.closeTo(1.5, 12), "in band"],
    ]);
    expect(await pane().locator("#medium").inputValue()).toBe("coir");
  });

  it("offers no column twice, and says what to tick", async () => {
    expect(await pane().getByText("is there already").count()).toBe(2);
    await press("Add the ticked columns", /Tick a column that is not there yet/);
  });

  it("marks the flagged rows and removes the marks", async () => {
    await press("Mark flagged rows", /Marked the rows/);
    await press("Remove the marks", /are gone/);
  });

  it("makes a mix sheet that works at once: 150 mL into 50 L", async () => {
    await press("New mix sheet", /Made the sheet Mix/);
    await expect.poll(() => cells("B14")).toEqual([[expect.closeTo(150, 9)]]);
    expect(await cells("B43")).toEqual([["balanced"]]);
  });

  it("makes a flush sheet whose plan spills and whose stop check answers", async () => {
    await press("New flush sheet", /Made the sheet Flush/);
    await expect.poll(() => cells("A39:B40")).toEqual([["portion", "litres"], [1, expect.closeTo(1.6, 1)]]);
    expect(await cells("B18")).toEqual([["keep going"]]);
  });

  it("takes both sheets back, the last one first", async () => {
    await press("Take back the last step", /the sheet Flush is gone/);
    await press("Take back the last step", /the sheet Mix is gone/);
  });

  it("keeps values only after asking, and gives the formulas back", async () => {
    await pane().getByRole("button", { name: "Look again" }).click();
    await pane().locator("#functions", { hasText: "6 of 6 formulas answer" }).waitFor();
    await pane().getByRole("button", { name: "Keep values only ..." }).click();
    await press("Turn into values", /Turned 6 formulas into values/);
    expect(await cells("H2", "formulas")).toEqual([[2]]);
    await press("Take back the last step", /hold what they held before/);
    expect(await cells("H2", "formulas")).toEqual([['=RUNOFF.SALTRATIO(RUNOFF.READING(D2,"uS/cm"),RUNOFF.READING(B2,"mS/cm"))']]);
  });

  it("a protected sheet is refused in words", async () => {
    await page.selectOption("#pretend", "the sheets are protected");
    await press("Mark flagged rows", /protected/);
    await page.selectOption("#pretend", "all is well");
  });

  it("asked for nothing that is not on this machine, and nothing failed on the page", () => {
    expect(session.outside).toEqual([]);
    expect(failures).toEqual([]);
  });
});
