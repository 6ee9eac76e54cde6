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

/** The row of the active sheet that says this in its first column. */
async function rowOf(label: string): Promise<number> {
  const labels = (await cells("A1:A70")) as unknown[][];
  const place = labels.findIndex(([says]) => says === label);
  if (place < 0) throw new Error(`no row says ${label}`);
  return place + 1;
}

/** Types into the boxes beside a label, as a person does. */
async function typed(label: string, ...entries: readonly (string | number)[]): Promise<void> {
  const row = await rowOf(label);
  const range = `B${row}:${"BCDEFGH"[entries.length - 1] ?? ""}${row}`;
  await pane().evaluate(`Excel.run(async (context) => {
    context.workbook.worksheets.getActiveWorksheet().getRange("${range}").values = ${JSON.stringify([entries])};
    await context.sync();
  })`);
}

/** Takes out again what was typed into boxes of a sheet that need not be in view. */
async function emptied(sheet: string, addresses: string): Promise<void> {
  await pane().evaluate(`Excel.run(async (context) => {
    for (const address of "${addresses}".split(",")) context.workbook.worksheets.getItem("${sheet}").getRange(address).clear("Contents");
    await context.sync();
  })`);
}

/** What the cell beside a label answers. */
async function answer(label: string): Promise<unknown> {
  const [[value] = []] = (await cells(`B${await rowOf(label)}`)) as unknown[][];
  return value;
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

  it("puts salt ratio and row flags beside the log: 3000 uS/cm over 1.5 mS/cm is 2, and 3 in band; 4 is over coir's 3.5", async () => {
    await press("Add the ticked columns", /Put 2 columns on .* at H1:I4: Salt ratio, Row flags/);
    await expect.poll(() => cells("H1:I4")).toEqual([
      ["Salt ratio", "Row flags"], [2, "in band"], [2.5, "runoff EC high; salt ratio high"], [expect.closeTo(1.5, 12), "in band"],
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

  it("makes a mix sheet that works at once: 0.5 to 2 mS/cm at 0.5 for 1 mL in 1 L is 150 mL into 50 L", async () => {
    await press("New mix sheet", /Made the sheet Mix/);
    await typed("Water before any feed, EC (mS/cm)", 0.5);
    await typed("Water in the tank (L)", 50);
    await typed("Or the EC you want (mS/cm)", 2);
    await typed("1 mL in 1 L adds (mS/cm)", 0.5);
    await expect.poll(() => answer("Concentrate for the tank (mL)")).toEqual(expect.closeTo(150, 9));
  });

  it("weighs the labels on it: K, Ca and Mg of 166, 100 and 40 ppm are balanced", async () => {
    // Within 3 to 5, 2 to 3 and 1 [producegrower-cations].
    // 1 g/L of 20 % K2O (0.8301 K by molar masses), 10 % Ca and 4 % Mg.
    await typed("Feed 1", 1, "", "", 20, 10, 4);
    await expect.poll(() => answer("Balance of K, Ca and Mg")).toBe("balanced");
  });

  it("makes a flush sheet whose plan spills and whose stop check answers", async () => {
    await pane().getByRole("button", { name: "Back to the log" }).click();
    await press("New flush sheet", /Made the sheet Flush/);
    await typed("Container (L)", 10);
    await typed("EC of what you pour (mS/cm)", 0.4);
    await typed("Medium", "coir");
    await typed("Runoff EC before (mS/cm)", 5.6);
    await typed("Runoff pH before", 5.7);
    await typed("Another EC to reach (mS/cm)", 2.8);
    await expect.poll(() => answer("The stop check says")).toBe("keep going");
    // 10 L of coir hold 6.5 L and mix by 0.7 (common practice): 6.5 / 0.7 * ln(5.2 / 2.4) is 7.18 L, five portions of 1.44 L.
    await expect.poll(() => cells("J28:K29")).toEqual([["portion", "litres"], [1, expect.closeTo(1.436, 3)]]);
  });

  it("takes back no sheet that was written on; both of them, the last one first, once their boxes are empty again", async () => {
    await pane().getByRole("button", { name: "Back to the log" }).click();
    await press("Take back the last step", /Flush was written on since, at B12: it stays/);
    await emptied("Flush", "B12:B15,B17:B18,B21");
    await press("Take back the last step", /the sheet Flush is gone/);
    await emptied("Mix", "B7:B8,B26,B28,B42:G42");
    await press("Take back the last step", /the sheet Mix is gone/);
  });

  it("keeps values only after asking, and gives the formulas back", async () => {
    await pane().getByRole("button", { name: "Look again" }).click();
    await pane().locator("#functions", { hasText: "6 of 6 formulas answer" }).waitFor();
    await pane().getByRole("button", { name: "Keep values only ..." }).click();
    await press("Turn into values", /Turned 6 formulas into values/);
    expect(await cells("H2", "formulas")).toEqual([[2]]);
    await press("Take back the last step", /Taken back: H2:H4, I2:I4 of .* as before/);
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
