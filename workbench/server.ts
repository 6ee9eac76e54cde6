import { once } from "node:events";
import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import path from "node:path";
import sirv from "sirv";
import { projectRoot as root } from "./project-root";

const folders = { page: path.join(root, "workbench", "dist"), addIn: path.join(root, "dist"), samples: path.join(root, "sample-workbooks") };
const hostScript = /<script src="?https:\/\/appsforoffice\.microsoft\.com\/lib\/1\/hosted\/office\.js"?><\/script>/;
/** The host's own client library as it is published, between what it asks of a host. */
const hostLibrary = createRequire(import.meta.url).resolve("@microsoft/office-js/dist/excel-web-16.00.js");
const hostScripts = ["before-host-library", "host-library", "after-host-library"].map((name) => `<script src="/${name}.js"></script>`).join("");

/** The pane may load its own scripts and styles, draw pictures it made itself, and reach nothing else. */
const panePolicy =
  "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data: blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'self'";
/** The grid component sets styles of its own on its elements. */
const pagePolicy =
  "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data: blob:; font-src 'self' data:; " +
  "connect-src 'self'; frame-src 'self'; worker-src 'self' blob:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

export interface Workbench {
  readonly address: string;
  close(): Promise<void>;
}

/** Serves the workbench on this machine only; takes the next free port when the wanted one is taken, any for 0. */
export async function serveWorkbench(wantedPort: number): Promise<Workbench> {
  const server = createServer(answering());
  await listen(server, wantedPort);
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}/`,
    close: () => new Promise((resolve) => {
      server.close(() => { resolve(); });
      server.closeAllConnections();
    }),
  };
}

/** Another name in a request comes from a page elsewhere that had its own name lead to this machine. */
const ownNames = /^(?:127\.0\.0\.1|localhost)(?::\d+)?$/;
const methods = ["GET", "HEAD"];

function refuse(response: ServerResponse, status: number, says: string, headers: Record<string, string> = {}): void {
  response.writeHead(status, { "Content-Type": "text/plain; charset=utf-8", ...headers });
  response.end(`${says}\n`);
}

type Answer = (request: IncomingMessage, response: ServerResponse) => void;

function answering(): Answer {
  const files = (folder: string, policy: string) =>
    sirv(folder, { dev: true, etag: true, setHeaders: (response) => { response.setHeader("Content-Security-Policy", policy); } });
  const [page, addIn, samples] = [files(folders.page, pagePolicy), files(folders.addIn, panePolicy), files(folders.samples, pagePolicy)];
  const parts: readonly (readonly [RegExp, Answer])[] = [
    [/^\/add-in\/taskpane\.html(\?|$)/, (_, response) => { send(response, "text/html", paneOnWorkbench(), panePolicy); }],
    [/^\/host-library\.js$/, (_, response) => { send(response, "text/javascript", readFileSync(hostLibrary), panePolicy); }],
    [/^\/samples\.json(\?|$)/, (_, response) => { send(response, "application/json", JSON.stringify(sampleNames()), pagePolicy); }],
    [/^\/add-in(?=\/)/, addIn],
    [/^\/samples(?=\/[^/]+\.(xlsx|csv)$)/, samples],
    [/^/, page],
  ];
  return (request, response) => {
    const { url = "/", method = "" } = request;
    if (!ownNames.test(request.headers.host ?? "")) { refuse(response, 421, "This workbench answers on 127.0.0.1 and localhost only."); return; }
    if (!methods.includes(method)) { refuse(response, 405, "This workbench is read only.", { Allow: methods.join(", ") }); return; }
    const [prefix, answer] = parts.find(([pattern]) => pattern.test(url)) ?? [/^/, page];
    request.url = url.replace(prefix, "") || "/";
    answer(request, response);
  };
}

/** The built pane, unchanged but for the address of the host's script: it comes from this machine, with the workbench around it. */
function paneOnWorkbench(): string {
  return readFileSync(path.join(folders.addIn, "taskpane.html"), "utf8").replace(hostScript, hostScripts);
}

function sampleNames(): string[] {
  return readdirSync(folders.samples).filter((name) => /\.(xlsx|csv)$/.test(name) && !name.startsWith("~$")).sort(xlsxFirst);
}

function xlsxFirst(a: string, b: string): number {
  return Number(b.endsWith(".xlsx")) - Number(a.endsWith(".xlsx")) || (a < b ? -1 : 1);
}

function send(response: ServerResponse, type: string, text: string | Buffer, policy: string): void {
  response.writeHead(200, { "Content-Type": `${type}; charset=utf-8`, "Content-Security-Policy": policy, "Cache-Control": "no-cache" });
  response.end(text);
}

const portsToTry = 20;

async function listen(server: Server, wanted: number): Promise<void> {
  for (let port = wanted; port < wanted + portsToTry; port += 1) {
    try {
      await once(server.listen(port, "127.0.0.1"), "listening");
      return;
    } catch (problem) {
      if ((problem as NodeJS.ErrnoException).code !== "EADDRINUSE") throw problem;
    }
  }
  throw new Error(`No free port from ${wanted} to ${wanted + portsToTry - 1}: name another with --port.`);
}
