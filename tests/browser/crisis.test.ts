import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { hasBrowser } from "./browser";
import { openWorkbench, type OpenWorkbench } from "./open-workbench";

let workbench: OpenWorkbench;

describe.skipIf(!hasBrowser)("the workbench opened without a word", () => {
  beforeAll(async () => { workbench = await openWorkbench(); });
  afterAll(async () => { await workbench.close(); });

  it("shows a pepper in trouble, in words and not by its file, and one thing to try", async () => {
    const { page } = workbench;
    expect(await page.locator("#sample option:checked").innerText()).toBe("Burnt leaves: a pepper, today");
    expect(await page.locator("#hint").innerText()).toMatch(/^To try: Press the button under the verdict/);
  });

  it("judges it at once by the medium kept in the file: runoff EC above coir's 3.5, salt, today, a flush to plan", async () => {
    const { pane } = workbench;
    await pane.locator(".verdict", { hasText: "Salt buildup" }).waitFor();
    expect(await pane.locator(".verdict").innerText()).toContain("today");
    expect(await pane.locator("#medium").inputValue()).toBe("coir");
    expect(await pane.locator("#next-thing").innerText()).toBe("Plan the flush for this pot");
    expect(await pane.locator("#standing ol > li").count()).toBeGreaterThan(2);
  });

  it("fails nothing and asks for nothing that is not on this machine", () => {
    expect([workbench.failures, workbench.outside]).toEqual([[], []]);
  });
});
