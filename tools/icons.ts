import { readFileSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";

const assets = path.resolve(import.meta.dirname, "../assets");

/** Draws assets/mark.svg at the four sizes the host asks for. Needs chromium; CHROMIUM names it when it is not at the usual place. */
const browser = await chromium.launch({ executablePath: process.env["CHROMIUM"] ?? "/usr/bin/chromium", args: ["--no-sandbox"] });
try {
  const mark = readFileSync(path.join(assets, "mark.svg"), "utf8");
  for (const size of [16, 32, 64, 80]) {
    const page = await browser.newPage({ viewport: { width: size, height: size } });
    await page.setContent(`<style>body{margin:0} svg{display:block;width:${size}px}</style>${mark}`);
    await page.screenshot({ path: path.join(assets, `icon-${size}.png`), omitBackground: true });
  }
} finally {
  await browser.close();
}
