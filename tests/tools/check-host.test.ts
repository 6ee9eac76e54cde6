import { readFileSync } from "node:fs";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import sirv from "sirv";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { checkHost, type Finding } from "../../tools/hosting/check-host";
import { distFolder } from "../../workbench/host/load-bundle";

/** The address that the build is made for unless another is named. */
const base = "https://localhost:3000";

type Fault = (request: IncomingMessage, response: ServerResponse) => boolean;

const none: Fault = () => false;
let fault: Fault = none;
let server: Server;

/** A static host as it should be: dist, with the header that Excel on the web asks for; the fault of the moment comes first. */
const files = sirv(path.resolve(distFolder), { etag: true, setHeaders: (response) => {
  response.setHeader("Access-Control-Allow-Origin", "*");
} });

beforeAll(async () => {
  server = createServer((request, response) => { if (!fault(request, response)) files(request, response); });
  await new Promise<void>((resolve) => { server.listen(0, "127.0.0.1", resolve); });
});

afterAll(() => { server.close(); });

const get = (address: string): Promise<Response> => fetch(address.replace(base, `http://127.0.0.1:${(server.address() as AddressInfo).port}`));

async function check(with_: Fault, at = base): Promise<Finding[]> {
  fault = with_;
  try {
    return await checkHost(at, get);
  } finally {
    fault = none;
  }
}

const asked = ({ url = "" }: IncomingMessage, name: string): boolean => (url.split("?")[0] ?? "").endsWith(name);

const types: Readonly<Record<string, string>> = { ".js": "text/javascript", ".json": "application/json", ".html": "text/html", ".png": "image/png" };

/** Serves a file under other headers than the right ones. */
const served = (name: string, headers: Readonly<Record<string, string>>): Fault => (request, response) => {
  if (!asked(request, name)) return false;
  const right = { "content-type": types[path.extname(name)] ?? "", "access-control-allow-origin": "*" };
  response.writeHead(200, { ...right, ...headers });
  response.end(readFileSync(path.join(distFolder, (request.url ?? "").split("?")[0] ?? "")));
  return true;
};

const gone = (name: string): Fault => (request, response) => {
  if (!asked(request, name)) return false;
  response.writeHead(404).end();
  return true;
};

describe("npm run check-host", () => {
  it("finds nothing wrong with a host that serves the build with the cross-origin header", async () => {
    expect(await check(none)).toEqual([]);
  });

  it.each<[string, Fault, RegExp, RegExp]>([
    ["no cross-origin header on functions.json", served("functions.json", { "access-control-allow-origin": "" }), /functions\.json$/, /Access-Control-Allow-Origin: \*/],
    ["no cross-origin header on functions.js", served("functions.js", { "access-control-allow-origin": "null" }), /functions\.js$/, /Access-Control-Allow-Origin: \*/],
    ["functions.json as text", served("functions.json", { "content-type": "text/plain" }), /functions\.json$/, /comes as "text\/plain"/],
    ["taskpane.html as a download", served("taskpane.html", { "content-type": "application/octet-stream" }), /taskpane\.html$/, /content type/],
    ["functions.js kept for a year", served("functions.js", { "cache-control": "max-age=31536000" }), /functions\.js$/, /kept for 31536000 seconds/],
    ["an icon that may not be kept", served("icon-32.png", { "cache-control": "no-store" }), /icon-32\.png$/, /no-store/],
    ["functions.js not there", gone("/functions.js"), /functions\.js$/, /cannot be reached/],
    ["an icon of the manifest not there", gone("icon-80.png"), /icon-80\.png$/, /the manifest names it/],
  ])("%s: says so, and what to do", async (_, with_, at, words) => {
    const found = await check(with_);
    expect(found.length).toBeGreaterThan(0);
    for (const each of found) expect(each.at.split("?")[0]).toMatch(at);
    expect(found[0]?.wrong).toMatch(words);
  });

  it("an address without https, and a manifest built for another address, are told before all else", async () => {
    expect(await check(none, "http://localhost:3000")).toEqual([expect.objectContaining({ wrong: expect.stringContaining("https://") as unknown })]);
    const elsewhere = await checkHost("https://other.example/add-in", (address) => get(address.replace("https://other.example/add-in", base)));
    expect(elsewhere).toEqual([expect.objectContaining({ wrong: expect.stringContaining("built for https://localhost:3000") as unknown })]);
  });
});
