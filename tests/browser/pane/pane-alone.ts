import { readFileSync } from "node:fs";
import { createServer } from "node:http";
import { createRequire } from "node:module";
import type { AddressInfo } from "node:net";
import path from "node:path";
import { build } from "esbuild";
import type { Page } from "playwright-core";
import sirv from "sirv";
import { openBrowser } from "../browser";
import type { Scene } from "./stand-in";

const hostAddress = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

export interface OpenOptions {
  readonly width?: number;
  readonly height?: number;
  /** Files that cannot be fetched: the host's script, or one of ours. */
  readonly missing?: readonly ("functions.js" | "log.js" | "office.js")[];
}

export interface PaneAlone {
  /** Opens the built pane, as it is published, on a sheet. */
  open(scene: Scene, options?: OpenOptions): Promise<Page>;
  /** Requests that would have left this machine, but for the host's script. */
  readonly outside: readonly string[];
  /** Errors, and breaches of the page's policy, on any page so far. */
  readonly failures: string[];
  close(): Promise<void>;
}

/** Serves dist as it is; the host's script alone comes from its package, with a workbook in memory around it. */
export async function paneAlone(): Promise<PaneAlone> {
  const { outputFiles } = await build({
    entryPoints: [path.join(import.meta.dirname, "stand-in.ts")],
    bundle: true, write: false, target: "es2022", format: "iife", logLevel: "warning",
  });
  const library = readFileSync(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.js"), "utf8");
  const hostScript = `${outputFiles[0]?.text ?? ""};${library};window.sheet.greet();`;
  const server = createServer(sirv(path.resolve(import.meta.dirname, "../../../dist"), { dev: true }));
  await new Promise<void>((resolve) => { server.listen(0, "127.0.0.1", resolve); });
  const address = `http://127.0.0.1:${(server.address() as AddressInfo).port}/taskpane.html`;
  const session = await openBrowser();
  const failures: string[] = [];
  return {
    outside: session.outside,
    failures,
    open: async (scene, { width = 320, height = 800, missing = [] } = {}) => {
      const page = await session.context.newPage();
      page.on("pageerror", (problem) => failures.push(problem.message));
      page.on("console", (message) => { if (message.type() === "error" && missing.length === 0) failures.push(message.text()); });
      await page.setViewportSize({ width, height });
      await page.addInitScript((given) => { window.scene = given; }, scene);
      await page.route(hostAddress, (route) => route.fulfill({ contentType: "text/javascript", body: hostScript }));
      for (const script of missing) await page.route(`**/${script}*`, (route) => route.abort());
      await page.goto(address);
      return page;
    },
    close: async () => {
      await session.close();
      await new Promise<void>((resolve) => {
        server.close(() => { resolve(); });
        server.closeAllConnections();
      });
    },
  };
}
