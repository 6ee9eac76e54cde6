import type { Frame, Page } from "playwright-core";
import { serveWorkbench } from "../../workbench/server";
import { openBrowser } from "./browser";

export interface OpenWorkbench {
  readonly page: Page;
  /** The pane beside the grid, as it was when the page opened. */
  readonly pane: Frame;
  /** Every address asked for that is not on this machine. */
  readonly outside: readonly string[];
  /** What the page has reported as an error so far. */
  readonly failures: readonly string[];
  close(): Promise<void>;
}

/** The workbench's page, served and opened in a fresh browser, with its pane ready. */
export async function openWorkbench(query = ""): Promise<OpenWorkbench> {
  const workbench = await serveWorkbench(0);
  const session = await openBrowser();
  const page = session.context.pages()[0] ?? (await session.context.newPage());
  const failures: string[] = [];
  page.on("pageerror", (problem) => failures.push(problem.message));
  page.on("console", (message) => { if (message.type() === "error") failures.push(message.text()); });
  await page.goto(`${workbench.address}${query}`);
  await page.waitForSelector("html[data-ready=true]");
  const pane = page.frames().find((each) => each.url().includes("taskpane.html"));
  if (pane === undefined) throw new Error("the pane is not open");
  await pane.waitForSelector("#rows button");
  const close = async (): Promise<void> => {
    await session.close();
    await workbench.close();
  };
  return { page, pane, outside: session.outside, failures, close };
}
