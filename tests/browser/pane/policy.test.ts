import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "../browser";
import { climbing, hostile } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";

let pane: PaneAlone;

describe.skipIf(!hasBrowser)("text from the sheet and the page's policy", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it("hostile headers, names and notes stay text everywhere: no element, no script, no request comes of them", async () => {
    const page = await pane.open({ cells: hostile(), selected: [[3, 0, 1, 1]] });
    await page.selectOption("#medium", "coir");
    await page.locator("#timeline").focus();
    for (let step = 0; step < 8; step += 1) await page.keyboard.press("ArrowLeft");
    await page.click("#open-work");
    await page.locator("#new-mix").waitFor();
    await page.evaluate(() => { for (const fold of document.querySelectorAll("details")) fold.open = true; });
    const shown = await page.evaluate(() => document.body.innerText);
    for (const word of ["onerror=", "</script>"]) expect(shown).toContain(word);
    const foreign = "img, iframe, object, embed, form, b, a, main script, link[rel=import], [onerror], [onload], [style*=url]";
    expect(await page.locator(foreign).count()).toBe(0);
    expect(await page.title()).toBe("Runoff Ledger");
    await page.click("#place");
    await expect.poll(() => page.locator("#said").innerText()).toContain("Placed on Log");
    const drawn = ["svg", "title", "desc", "rect", "path", "line", "text"];
    const names = await page.evaluate(() => [...document.querySelectorAll("svg, svg *")].map(({ localName }) => localName));
    expect(names.length).toBeGreaterThan(20);
    const strange = names.filter((name) => !drawn.includes(name));
    expect(strange).toEqual([]);
    await page.close();
  });

  it("the policy is in force: a script written into the page, an inline style and a request elsewhere are all refused", async () => {
    const page = await pane.open({ cells: climbing() });
    await page.locator("#rows-read").waitFor();
    const before = pane.failures.length;
    const refused = await page.evaluate(async () => {
      const breaches: string[] = [];
      document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => { breaches.push(effectiveDirective); });
      const script = document.createElement("script");
      script.textContent = "document.title = 'owned'";
      const image = new Image();
      image.src = "https://example.com/x.png";
      const styled = document.createElement("div");
      styled.setAttribute("style", "color: red");
      document.body.append(script, image, styled);
      await fetch("https://example.com/").catch(() => undefined);
      await new Promise((resolve) => setTimeout(resolve, 200));
      return [...new Set(breaches)].sort();
    });
    expect(refused).toEqual(["connect-src", "img-src", "script-src-elem", "style-src-attr"]);
    expect(await page.title()).toBe("Runoff Ledger");
    pane.failures.splice(before);
    await page.close();
  });

  it("our own code never breaches it, nothing failed, and nothing left this machine", () => {
    expect(pane.failures).toEqual([]);
    expect(pane.outside).toEqual([]);
  });
});
