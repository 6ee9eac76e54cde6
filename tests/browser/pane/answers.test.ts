import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { Page } from "playwright-core";
import { hasBrowser } from "../browser";
import { climbing, inPpm, strongOnPurpose, twoPots } from "./logs";
import { type PaneAlone, paneAlone } from "./pane-alone";
import type { Scene } from "./stand-in";

let pane: PaneAlone;

const verdict = (page: Page): Promise<string> => page.locator(".verdict").innerText();
const picture = (page: Page): Promise<string> => page.locator("#timeline svg").evaluate((svg) => [...svg.querySelectorAll("text")].map(({ textContent }) => textContent).join("|"));
const kept = (page: Page): Promise<Record<string, string>> =>
  page.evaluate(() => Object.fromEntries(window.sheet.store.records.sheet(window.sheet.id).custom) as Record<string, string>);

/** A log opened with a medium chosen. */
async function judged(scene: Scene, medium = "coir"): Promise<Page> {
  const page = await pane.open(scene);
  await page.selectOption("#medium", medium);
  await page.locator(".verdict").waitFor();
  return page;
}

describe.skipIf(!hasBrowser)("what a person chooses and answers", () => {
  beforeAll(async () => { pane = await paneAlone(); });
  afterAll(async () => { await pane.close(); });

  it("without a medium there is no verdict but a wish for one; with coir, whose band ends at EC 3.5, runoff at 5 and 5.3 is salt buildup", async () => {
    const page = await pane.open({ cells: climbing() });
    await expect.poll(() => page.locator("#not-yet").innerText()).toContain("Choose the medium");
    await page.selectOption("#medium", "coir");
    await expect.poll(() => verdict(page)).toContain("Salt buildup");
    expect(await page.locator("#figures").innerText()).toContain("Runoff EC 5.30 band 1.20 to 3.50");
    expect(await page.locator(".course .step").first().innerText()).toMatch(/\S/);
    expect(await page.locator("#told").textContent()).toMatch(/^Log: salt buildup, /);
    expect(await picture(page)).toContain("- - band 1.2 to 3.5");
    await page.close();
  });

  it("a hungrier plant has another band: coir, heavy feeder, is not judged by coir's 1.2 to 3.5", async () => {
    const page = await judged({ cells: climbing() });
    await page.selectOption("#feeder", "heavy");
    await expect.poll(() => picture(page)).not.toContain("band 1.2 to 3.5");
    await page.close();
  });

  it("two pots stand small and side by side on one scale; a press on the basil shows it large", async () => {
    const page = await judged({ cells: twoPots() });
    await page.click("#small-pots-fold-title");
    expect(await page.locator(".small-pot span").allInnerTexts()).toEqual(["Pepper", "Basil"]);
    await page.click("#small-pot-1");
    await expect.poll(() => page.locator("#which-pot").innerText()).toContain("Basil");
    await expect.poll(() => verdict(page)).toContain("In band");
    await page.close();
  });

  it("a column corrected to something else leaves the picture, the list stays open, and its field keeps the focus", async () => {
    const page = await judged({ cells: climbing() });
    expect(await picture(page)).toContain("salt ratio");
    await page.click("#columns summary");
    await page.focus("#column-C");
    await page.selectOption("#column-C", "other");
    await expect.poll(() => picture(page)).not.toContain("salt ratio");
    expect(await verdict(page)).not.toContain("Salt buildup");
    expect(await page.locator("#columns-fold").evaluate((fold: HTMLDetailsElement) => fold.open)).toBe(true);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("column-C");
    await page.selectOption("#column-C", "runoff EC");
    await expect.poll(() => verdict(page)).toContain("Salt buildup");
    await page.close();
  });

  it("a ppm column waits for its scale: 2500 ppm is 5.00 mS/cm at 500, 3.57 at 700 to 1 mS/cm", async () => {
    const page = await pane.open({ cells: inPpm() });
    await expect.poll(() => page.locator("#questions").innerText()).toContain("Which ppm scale does the meter show?");
    expect(await page.locator("#timeline svg").evaluate((svg) => svg.textContent)).not.toContain("EC, mS/cm");
    await page.selectOption("#question-0", "500");
    await expect.poll(() => page.locator("#questions").innerText()).toBe("");
    await page.locator("#timeline").focus();
    await page.keyboard.press("Home");
    expect(await page.locator("#point").innerText()).toContain("runoff 5.00 mS/cm");
    await page.click("#columns summary");
    await page.selectOption("#unit-C", "ppm 700");
    await expect.poll(() => page.locator("#point").innerText()).toContain("runoff 3.57 mS/cm");
    await page.close();
  });

  it("answers are kept in the workbook, for this sheet and these headers, and found again; another log does not get them", async () => {
    const first = await pane.open({ cells: inPpm() });
    await first.selectOption("#question-0", "500");
    await first.selectOption("#medium", "peat");
    await expect.poll(async () => JSON.stringify(await kept(first))).toContain("peat");
    const found = await kept(first);
    await first.close();
    const again = await pane.open({ cells: inPpm(), kept: found });
    await expect.poll(() => again.inputValue("#medium")).toBe("peat");
    expect(await again.locator("#questions").innerText()).toBe("");
    await again.close();
    const other = await pane.open({ cells: climbing(), kept: found });
    await other.locator("#rows-read").waitFor();
    expect(await other.inputValue("#medium")).toBe("");
    await other.close();
  });

  it("own limits: wrong ones are explained, right ones win over the medium's; emptied, the medium's hold again", async () => {
    const page = await judged({ cells: climbing() });
    await page.click("#limits summary");
    expect(await page.locator("#limits-said").innerText()).toMatch(/EC 1\.2 to 3\.5 mS\/cm \([^[\]]*from a bulletin: [^[\]]*\)\.$/);
    const fill = async (name: string, text: string): Promise<void> => {
      await page.fill(`#own-${name}`, text);
      await page.keyboard.press("Tab");
    };
    await fill("phLow", "5,5");
    await expect.poll(() => page.locator("#limits-said").innerText()).toContain("fill in all four limits, or none");
    await fill("phHigh", "6.5");
    await fill("ecLow", "9");
    await fill("ecHigh", "8");
    await expect.poll(() => page.locator("#limits-said").innerText()).toMatch(/order|low/i);
    await fill("ecLow", "1");
    await expect.poll(() => page.locator("#limits-said").innerText()).toContain("In force: runoff pH 5.5 to 6.5, EC 1 to 8 mS/cm");
    expect(await picture(page)).toContain("- - band 1 to 8");
    expect(await verdict(page)).not.toContain("pH out of range");
    for (const name of ["phLow", "phHigh", "ecLow", "ecHigh"]) await fill(name, "");
    await expect.poll(() => picture(page)).toContain("- - band 1.2 to 3.5");
    await page.close();
  });

  it("limits typed by keyboard hold from the newest reading; from when is the next stop, and earlier rows keep what stood then", async () => {
    const page = await judged({ cells: climbing() });
    await page.click("#limits summary");
    expect(await page.locator("#limits-since").count()).toBe(0);
    await page.focus("#own-phLow");
    for (const text of ["5.5", "6.5", "1", "8"]) {
      await page.keyboard.type(text);
      await page.keyboard.press("Tab");
      await page.waitForTimeout(300);
    }
    // 12 March is the day of the newest reading: runoff EC 5.3, outside coir's 1.2 to 3.5 and inside 1 to 8.
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("limits-since");
    expect(await page.getByLabel("From when do these limits hold?").inputValue()).toBe("46093");
    expect(await page.locator("#limits-since option:checked").innerText()).toBe("12 Mar 2026, the newest reading");
    expect(await page.locator("#limits-said").innerText()).toMatch(/^In force: runoff pH 5\.5 to 6\.5, EC 1 to 8 mS\/cm.* Rows before 12 Mar 2026 are held against what stood then: .*EC 1\.2 to 3\.5/);
    expect(await verdict(page)).not.toContain("Salt buildup");
    expect(await picture(page)).toMatch(/- - band 1 to 8 from 12 Mar\|.*1\.2 to 3\.5/);
    const flags = async (): Promise<string[]> => {
      await page.locator("#table-fold").evaluate((fold: HTMLDetailsElement) => { fold.open = true; });
      await page.locator("#table").waitFor();
      return page.locator("#table td:nth-last-child(2)").allInnerTexts();
    };
    expect((await flags()).slice(-2).map((told) => told.includes("runoff EC high"))).toEqual([true, false]);
    await page.keyboard.press("a");
    await expect.poll(() => picture(page)).toMatch(/- - band 1 to 8\|/);
    expect((await flags()).some((told) => told.includes("runoff EC high"))).toBe(false);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("limits-since");
    await page.selectOption("#limits-since", { label: "8 Mar 2026" });
    await expect.poll(() => picture(page)).toContain("- - band 1 to 8 from 8 Mar");
    const found = await kept(page);
    await page.close();
    const again = await pane.open({ cells: climbing(), kept: found });
    await expect.poll(() => picture(again)).toContain("- - band 1 to 8 from 8 Mar");
    // What Tab selects is typed over, though the page was shown anew in between.
    await again.focus("#own-phLow");
    await again.keyboard.press("ControlOrMeta+a");
    for (const text of ["5.6", "6.4"]) {
      await again.keyboard.type(text);
      await again.keyboard.press("Tab");
      await again.waitForTimeout(300);
    }
    expect(await again.inputValue("#own-phHigh")).toBe("6.4");
    await again.close();
  });

  it("limits that an earlier version kept, without a day, hold for every row, and nothing is drawn as changed", async () => {
    const own = { phLow: "5.5", phHigh: "6.5", ecLow: "1", ecHigh: "8" };
    const before = await judged({ cells: climbing() });
    await expect.poll(async () => JSON.stringify(await kept(before))).toContain("coir");
    const [[name, text] = ["", ""]] = Object.entries(await kept(before));
    await before.close();
    const older = text.replaceAll(/,?"(since|typedAt|earlier)":[^,}]+/g, "").replaceAll('"medium":"coir"', `"medium":"coir","own":${JSON.stringify(own)}`);
    expect(older).not.toMatch(/since|typedAt|earlier/);
    const page = await pane.open({ cells: climbing(), kept: { [name]: older } });
    await expect.poll(() => picture(page)).toMatch(/- - band 1 to 8\|/);
    expect(await page.inputValue("#limits-since")).toBe("all");
    await page.close();
  });

  it("the pot's litres, once typed, turn the flush into litres for this pot; a slip is answered beside the field", async () => {
    const page = await judged({ cells: climbing(8) });
    const flush = page.locator(".course .step").filter({ hasText: "Flush once" });
    expect(await flush.innerText()).not.toMatch(/\d L in all/);
    const type = async (text: string): Promise<void> => {
      await page.fill("#container", text);
      await page.keyboard.press("Tab");
    };
    await type("11000");
    await expect.poll(() => page.locator("#container-said").innerText()).toContain("divide mL by 1000");
    await type("11");
    await expect.poll(() => flush.innerText()).toMatch(/\d L in all by reckoning and never above \d/);
    expect(await page.locator("#container-said").count()).toBe(0);
    await page.close();
  });

  it("a strong feed by choice is offered limits of its own, and one press takes them", async () => {
    const page = await judged({ cells: strongOnPurpose() }, "mineral wool");
    await page.click("#take-limits");
    await expect.poll(() => page.locator("#figures").innerText()).toMatch(/band 1\.\d+ to 7\.20/);
    expect(await page.locator("#take-limits").count()).toBe(0);
    expect(await verdict(page)).toContain("In band");
    await page.click("#limits summary");
    expect(await page.inputValue("#own-ecHigh")).toBe("7.2");
    await page.close();
  });

  it("two pots in one log are judged one at a time: the pepper at EC 6 has salt buildup, the basil at 2.2 has not", async () => {
    const page = await judged({ cells: twoPots() });
    await page.selectOption("#vessel", "Pepper");
    await expect.poll(() => verdict(page)).toContain("Salt buildup");
    await page.selectOption("#vessel", "Basil");
    await expect.poll(() => verdict(page)).not.toContain("Salt buildup");
    expect(await page.locator("#timeline").getAttribute("aria-label")).toContain("Basil. 6 readings");
    await page.close();
  });

  it("nothing failed on any of these pages, and nothing left this machine", () => {
    expect(pane.failures).toEqual([]);
    expect(pane.outside).toEqual([]);
  });
});
