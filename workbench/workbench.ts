import { parseArgs } from "node:util";
import open from "open";
import { buildIfStale } from "./build-if-stale";
import { buildWorkbenchIfStale } from "./build";
import { endWithNpm } from "./end-with-npm";
import { serveWorkbench } from "./server";

const usage = "npm run workbench [-- --port 3001] [--no-open]";
const usualPort = 3001;

/** Whether a browser can be opened: a person is there, and a screen. */
function hasScreen(): boolean {
  if (process.env["CI"] !== undefined && process.env["CI"] !== "false") return false;
  return process.platform !== "linux" || process.env["DISPLAY"] !== undefined || process.env["WAYLAND_DISPLAY"] !== undefined;
}

async function main(): Promise<void> {
  const { values } = parseArgs({ options: { port: { type: "string" }, open: { type: "boolean" } }, allowNegative: true });
  const port = Number(values.port ?? usualPort);
  if (!(Number.isInteger(port) && port > 0 && port < 65_536)) throw new Error(`--port takes a number from 1 to 65535. Usage: ${usage}`);
  await Promise.all([buildIfStale(), buildWorkbenchIfStale()]);
  const workbench = await serveWorkbench(port);
  process.stdout.write(`Runoff Ledger workbench: ${workbench.address}  (Ctrl+C ends it)\n`);
  const end = (): void => void workbench.close().then(() => process.exit(0));
  for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, end);
  endWithNpm(end);
  if (values.open !== false && hasScreen()) await open(workbench.address).catch(() => undefined);
}

main().catch((problem: unknown) => {
  process.stderr.write(`${problem instanceof Error ? problem.message : String(problem)}\n`);
  process.exitCode = 2;
});
