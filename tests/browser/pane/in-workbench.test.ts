import type { Frame, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveWorkbench, type Workbench } from "../../../workbench/server";
import { hasBrowser, openBrowser, type Session } from "../browser";

let workbench: Workbench;
let session: Session;
let page: Page;


function pane(): Frame {
  const frame = page.frames().find((each) => each.url().includes("taskpane.html"));
  if (frame === undefined) throw new Error("the pane is not open");
  return frame;
}

describe.skipIf(!hasBrowser)("the pane beside the workbench's grid", () => {
  beforeAll(async () => {
    workbench = await serveWorkbench(0);
    session = await openBrowser();
    page = session.context.pages()[0] ?? (await session.context.newPage());
    await page.goto(`${workbench.address}?sample=salt-buildup.xlsx`);
    await page.waitForSelector("html[data-ready=true]");
    await pane().waitForSelector("#rows-read");
  });

  afterAll(async () => {
    await session.close();
    await workbench.close();
  });

  it("draws anew when a reading is corrected in the sheet: 1.78 becomes 9.87", async () => {
    await pane().locator("#timeline").focus();
    await page.keyboard.press("Home");
    expect(await pane().locator("#point").innerText()).toContain("EC in 1.96, runoff 1.78 mS/cm");
    await page.locator("#grid input").first().fill("D2");
    await page.keyboard.press("Enter");
    await page.keyboard.type("9.87", { delay: 10 });
    await page.waitForTimeout(300);
    await page.keyboard.press("Enter");
    await expect.poll(() => pane().locator("#point").innerText()).toContain("EC in 1.96, runoff 9.87 mS/cm");
  });

  it("places the picture, and the grid shows it with its alt text", async () => {
    await pane().locator("#place").click();
    await pane().locator("#said", { hasText: "Placed on Log" }).waitFor();
    expect(await page.locator("#pictures img").getAttribute("alt")).toMatch(/^72 readings from 5 Jan 2026/);
  });

  it("asked for nothing that is not on this machine", () => {
    expect(session.outside).toEqual([]);
  });
});
