import { mkdirSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import { buildIfStale } from "../workbench/build-if-stale";
import { buildWorkbenchIfStale } from "../workbench/build";
import { serveWorkbench } from "../workbench/server";

/** `npm run pictures`: the picture of the README, taken from the workbench as it runs. CHROME_PATH names a browser that is elsewhere. */
const executablePath = process.env["CHROME_PATH"] ?? "/usr/bin/chromium";
const folder = path.resolve(import.meta.dirname, "..", "docs", "pictures");

/** Steps by which the pane is drawn wider. */
const widenings = 20;

await buildIfStale();
await buildWorkbenchIfStale();
const workbench = await serveWorkbench(0);
const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
try {
  const page = await browser.newPage({ viewport: { width: 1480, height: 1900 } });
  await page.goto(workbench.address);
  await page.waitForSelector("html[data-ready=true]", { timeout: 60_000 });
  const pane = page.frameLocator("#pane");
  await pane.locator(".verdict").waitFor();
  await pane.locator("#timeline").waitFor();
  // A wide pane, so that the chart stands whole under the course.
  await page.locator("#edge").focus();
  for (let step = 0; step < widenings; step += 1) await page.keyboard.press("ArrowLeft");
  await page.waitForTimeout(1500);
  mkdirSync(folder, { recursive: true });
  await page.screenshot({ path: path.join(folder, "workbench.png") });
} finally {
  await browser.close();
  await workbench.close();
}
