import { type IncomingMessage, type RequestListener } from "node:http";
import { createServer } from "node:https";
import sirv from "sirv";

export interface Certificate {
  readonly ca: Buffer;
  readonly cert: Buffer;
  readonly key: Buffer;
}

/** Answers with the files of a folder; `seen` hears of every request. */
export function filesOf(folder: string, seen: (request: IncomingMessage) => void): RequestListener {
  // Excel on the web fetches functions.json from its own origin, and icons must not be marked "no-store".
  const answer = sirv(folder, {
    etag: true,
    setHeaders: (response) => {
      response.setHeader("Access-Control-Allow-Origin", "*");
      response.setHeader("Cache-Control", "no-cache");
    },
  });
  return (request, response) => {
    seen(request);
    answer(request, response, () => {
      response.writeHead(404).end("not found");
    });
  };
}

/** Serves on this machine only, until the program is stopped. */
export async function serveSecurely(files: RequestListener, certificate: Certificate, port: number): Promise<void> {
  const server = createServer({ ...certificate }, files);
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject).listen(port, "localhost", resolve);
  });
}
