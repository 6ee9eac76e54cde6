import { execFile } from "node:child_process";
import { createServer, type Server } from "node:http";
import { type AddressInfo } from "node:net";
import path from "node:path";
import { promisify } from "node:util";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { adviceElsewhere } from "../../tools/start/elsewhere";
import { filesOf } from "../../tools/start/serve";
import { distFolder } from "../../workbench/host/load-bundle";

const root = path.resolve(import.meta.dirname, "../..");

interface Ended {
  readonly code: number;
  readonly stdout: string;
  readonly stderr: string;
}

describe("npm start where Excel cannot be started", () => {
  it.runIf(process.platform === "linux")("says so on standard error, names the workbench and the manifest, and ends with 3", async () => {
    const tsx = path.join(root, "node_modules/tsx/dist/cli.mjs");
    const run = promisify(execFile)(process.execPath, [tsx, path.join(root, "tools/start.ts")]);
    const ended = await run.then(() => undefined, (problem: unknown) => problem as Ended);
    expect(ended?.code).toBe(3);
    expect(ended?.stdout).toBe("");
    for (const said of ["Excel cannot be started from here", "npm run workbench", "dist/manifest.xml", "Excel on the web"]) {
      expect(ended?.stderr).toContain(said);
    }
  });

  it.each([
    ["linux", true],
    ["freebsd", true],
    ["win32", false],
    ["darwin", false],
  ])("on %s there is advice: %s", (system, advised) => {
    expect(adviceElsewhere(system) !== undefined).toBe(advised);
  });
});

describe("what npm start serves", () => {
  const asked: (string | undefined)[] = [];
  let server: Server;
  let base = "";
  beforeAll(async () => {
    server = createServer(filesOf(distFolder, ({ url }) => asked.push(url)));
    await new Promise<void>((resolve) => server.listen(0, "localhost", resolve));
    base = `http://localhost:${(server.address() as AddressInfo).port}`;
  });
  afterAll(() => {
    server.close();
  });

  it("hands the functions' metadata to Excel on the web, whose pages come from elsewhere", async () => {
    const answer = await fetch(`${base}/functions.json?v=0`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get("access-control-allow-origin")).toBe("*");
    expect(await answer.json()).toHaveProperty("functions");
    expect(asked).toContain("/functions.json?v=0");
  });

  it("never marks an icon no-store", async () => {
    const answer = await fetch(`${base}/assets/icon-32.png`);
    expect(answer.headers.get("content-type")).toBe("image/png");
    expect(answer.headers.get("cache-control")).toBe("no-cache");
  });

  it("answers 404 for what was not built, and nothing outside dist", async () => {
    expect((await fetch(`${base}/no-such-file.js`)).status).toBe(404);
    expect((await fetch(`${base}/..%2fpackage.json`)).status).toBe(404);
  });
});
