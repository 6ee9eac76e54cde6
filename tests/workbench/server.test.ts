import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { request } from "node:http";
import { createServer } from "node:net";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { serveWorkbench, type Workbench } from "../../workbench/server";

let workbench: Workbench;
const get = (place: string): Promise<Response> => fetch(new URL(place, workbench.address));

beforeAll(async () => {
  workbench = await serveWorkbench(0);
});

afterAll(() => workbench.close());

describe("the workbench's server", () => {
  it("listens on 127.0.0.1 only", () => {
    expect(new URL(workbench.address).hostname).toBe("127.0.0.1");
  });

  it("serves the pane with the host's own library from this machine, under a policy that lets nothing else in", async () => {
    const answer = await get("add-in/taskpane.html");
    const text = await answer.text();
    const scripts = [...text.matchAll(/<script src="?([^">\s]+)/g)].map(([, src]) => src?.replace(/\?.*/, ""));
    expect(scripts).toEqual(["/before-host-library.js", "/host-library.js", "/after-host-library.js", "functions.js", "taskpane.js"]);
    expect(text).not.toContain("appsforoffice.microsoft.com/lib");
    const policy = answer.headers.get("content-security-policy") ?? "";
    expect(policy).toContain("default-src 'none'");
    expect(policy).not.toContain("http");
    expect(policy).not.toContain("unsafe");
  });

  it.each(["", "workbench.js", "before-host-library.js", "after-host-library.js", "add-in/functions.js", "add-in/functions.json", "add-in/taskpane.js", "samples/salt-buildup.xlsx"])(
    "serves /%s",
    async (place) => {
      const answer = await get(place);
      expect(answer.status).toBe(200);
      expect((await answer.arrayBuffer()).byteLength).toBeGreaterThan(50);
    },
  );

  it("serves the host's library just as it is published", async () => {
    const published = readFileSync(createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.js"));
    expect(Buffer.from(await (await get("host-library.js")).arrayBuffer()).equals(published)).toBe(true);
  });

  it.each(["package.json", "samples/index.ts", "samples/../package.json", "add-in/..%2f..%2fpackage.json", "nowhere"])("has no /%s", async (place) => {
    expect((await get(place)).status).toBe(404);
  });

  it.each([
    ["a name that is not its own", "GET", "ledger.example", 421],
    ["its own name with another port", "GET", "127.0.0.1:1", 200],
    ["localhost", "GET", "localhost", 200],
    ["a request to write", "POST", "localhost", 405],
    ["a request to take away", "DELETE", "localhost", 405],
    ["a look at the headers alone", "HEAD", "localhost", 200],
  ])("%s: %s to Host %s is answered with %d", async (_, method, host, status) => {
    const answer = await new Promise<number | undefined>((resolve) => {
      request(workbench.address, { method, headers: { host } }, (response) => { resolve(response.resume().statusCode); }).end();
    });
    expect(answer).toBe(status);
  });

  it("lists the samples, workbooks before text tables", async () => {
    const names = (await (await get("samples.json")).json()) as string[];
    expect(names).toContain("salt-buildup.xlsx");
    const endings = names.map((name) => name.replace(/^.*\./, ""));
    expect(endings).toEqual([...endings].sort().reverse());
  });

  it("takes the next port when the wanted one is taken", async () => {
    const taken = createServer();
    const port = await new Promise<number>((resolve) => {
      taken.listen(0, "127.0.0.1", () => { resolve((taken.address() as { port: number }).port); });
    });
    const other = await serveWorkbench(port);
    expect(Number(new URL(other.address).port)).toBeGreaterThan(port);
    await other.close();
    taken.close();
  });
});
