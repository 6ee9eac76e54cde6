/// <reference types="office-js" />
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readXlsx } from "../../workbench/files/read-xlsx";
import { serveWorkbench, type Workbench } from "../../workbench/server";
import { committed, committedWorkbooks } from "../sample-workbooks/committed";
import { partsOf, sheetPaths, shownText, storedCells } from "../sample-workbooks/parts";
import { hasBrowser, openBrowser, type Session } from "./browser";

let workbench: Workbench;
let session: Session;
let page: Page;

/** What the host object answers about every sheet: its name and the values of its used cells, from A1 on. */
const readAll = `Excel.run(async (context) => {
  const sheets = context.workbook.worksheets;
  sheets.load("items/name");
  await context.sync();
  const ranges = sheets.items.map((sheet) => sheet.getRange("A1:P80").load("values"));
  await context.sync();
  return sheets.items.map(({ name }, i) => ({ name, values: ranges[i].values }));
})`;

async function shown(): Promise<{ name: string; values: unknown[][] }[]> {
  const frame = page.frames().find((each) => each.url().includes("taskpane.html"));
  return (await frame?.evaluate(readAll)) as { name: string; values: unknown[][] }[];
}

/** The computed texts and numbers of a file's sheet, by address; errors and blanks aside. */
function cached(file: string, sheet: number): Map<string, string | number> {
  const parts = partsOf(committed(file));
  const filled = storedCells(parts, sheetPaths(parts)[sheet] ?? "").filter(({ formula, type, value }) => formula !== undefined && type !== "e" && value !== "");
  return new Map(filled.map((cell) => [cell.at, cell.type === null ? Number(cell.value) : (shownText(parts, cell) ?? "")]));
}

describe.skipIf(!hasBrowser)("the workbench opens", () => {
  beforeAll(async () => {
    workbench = await serveWorkbench(0);
    session = await openBrowser();
    page = session.context.pages()[0] ?? (await session.context.newPage());
    await page.goto(workbench.address);
    await page.waitForSelector("html[data-ready=true]");
  });

  afterAll(async () => {
    await session.close();
    await workbench.close();
  });

  it.each(committedWorkbooks)("%s with its sheets, and computes in the grid what is stored beside its formulas", async (file) => {
    const { sheets } = await readXlsx(committed(file));
    await page.selectOption("#sample", file);
    await expect.poll(async () => (await shown()).map(({ name }) => name)).toEqual(sheets.map(({ name }) => name));
    const differing = async (): Promise<string[]> => {
      const open = await shown();
      return sheets.flatMap((_, i) => [...cached(file, i)].filter(([at, value]) => !same(cellOf(open[i]?.values, at), value)).map(([at]) => at));
    };
    await expect.poll(differing).toEqual([]);
  });
});

function cellOf(values: unknown[][] | undefined, at: string): unknown {
  const [, letter = "", row = ""] = /^([A-P])(\d+)$/.exec(at) ?? [];
  return values?.[Number(row) - 1]?.[letter.charCodeAt(0) - 65];
}

const same = (shown: unknown, value: string | number): boolean =>
  typeof value === "number" ? typeof shown === "number" && Math.abs(shown - value) <= 1e-9 * Math.max(1, Math.abs(value)) : shown === value;
