import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { chromium, type BrowserContext } from "playwright-core";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "microsoft-edge"];

/** Where the browser is: CHROME_PATH, or the first of the usual names on the path. */
function browserPath(): string | undefined {
  const given = process.env["CHROME_PATH"];
  if (given !== undefined && given !== "") return given;
  for (const name of names) {
    try {
      return execFileSync(process.platform === "win32" ? "where" : "which", [name], { encoding: "utf8", stdio: "pipe" }).split("\n")[0]?.trim();
    } catch {
      // Not this one.
    }
  }
  return undefined;
}

const found = browserPath();

/** Whether the browser tests can run. On a build machine a missing browser is a failure, elsewhere it is said out loud. */
export const hasBrowser = found !== undefined;
if (!hasBrowser) {
  const text = "NO BROWSER: the browser tests do not run. Install chromium, or name a browser with CHROME_PATH.";
  if (process.env["CI"] === "true") throw new Error(text);
  process.stderr.write(`\n${"!".repeat(text.length)}\n${text}\n${"!".repeat(text.length)}\n\n`);
}

const quiet = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export interface Session {
  readonly context: BrowserContext;
  /** Every address asked for that is not on this machine. */
  readonly outside: readonly string[];
  close(): Promise<void>;
}

/** A fresh browser without a screen, which notes each request that would leave the machine, and stops it. */
export async function openBrowser(): Promise<Session> {
  if (found === undefined) throw new Error("no browser");
  const profile = mkdtempSync(path.join(tmpdir(), "runoff-ledger-browser-"));
  const context = await chromium.launchPersistentContext(profile, { executablePath: found, args: quiet, viewport: { width: 1366, height: 768 } });
  // A test's own limit is the only one: nothing here depends on the machine's speed.
  context.setDefaultTimeout(0);
  const outside: string[] = [];
  await context.route(
    (url) => !["127.0.0.1", "localhost"].includes(url.hostname) && ["http:", "https:", "ws:", "wss:"].includes(url.protocol),
    async (route) => {
      outside.push(route.request().url());
      await route.abort();
    },
  );
  return {
    context,
    outside,
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}
