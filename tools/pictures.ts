import { mkdirSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { buildIfStale } from "../workbench/build-if-stale";
import { buildWorkbenchIfStale } from "../workbench/build";
import { serveWorkbench } from "../workbench/server";

/** `npm run pictures`: the picture of the README, taken from the workbench as it runs. CHROME_PATH names a browser that is elsewhere. */
const executablePath = process.env["CHROME_PATH"] ?? "/usr/bin/chromium";
const folder = path.resolve(import.meta.dirname, "..", "docs", "pictures");

/** The days on which the salt of the sample builds up; run in the pane. */
const selectRows = `Excel.run(async (context) => {
  context.workbook.worksheets.getItem("Log").getRange("A30:J46").select();
  await context.sync();
})`;

await buildIfStale();
await buildWorkbenchIfStale();
const workbench = await serveWorkbench(0);
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
try {
  const page = await browser.newPage({ viewport: { width: 1160, height: 740 } });
  await page.goto(`${workbench.address}?sample=salt-buildup.xlsx`);
  await page.waitForSelector("html[data-ready=true]", { timeout: 60_000 });
  const pane = page.frameLocator("#pane");
  await pane.locator("#rows-read").waitFor();
  await pane.locator("body").evaluate(selectRows);
  await pane.locator("#read").click();
  await pane.locator("#rows-read", { hasText: "rows 30 to 46" }).waitFor();
  await pane.locator("#medium").selectOption("coir");
  await pane.locator(".verdict").waitFor();
  await pane.locator("#why-fold-title").click();
  await page.waitForTimeout(1500);
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: path.join(folder, "workbench.png") });
} finally {
  await browser.close();
  await workbench.close();
}
