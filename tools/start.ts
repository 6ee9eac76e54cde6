import path from "node:path";
import { buildIfStale } from "../workbench/build-if-stale";
import { adviceElsewhere } from "./start/elsewhere";
import { filesOf, serveSecurely } from "./start/serve";

const dist = path.resolve(import.meta.dirname, "../dist");
const manifest = path.join(dist, "manifest.xml");
const port = 3000;
const cannotStartHere = 3;
const patienceMs = 90_000;

const say = (text: string): boolean => process.stdout.write(`${text}\n`);

/**
 * Builds, serves dist over https and opens it in Excel. Whether Excel has really loaded the add-in is seen from its asking
 * for the pane: the tool that starts Excel reports success even where it did nothing.
 */
async function startInExcel(): Promise<void> {
  const { getHttpsServerOptions } = await import("office-addin-dev-certs");
  const { AppType, startDebugging } = await import("office-addin-debugging");
  const certificate = await getHttpsServerOptions();
  await buildIfStale();
  let loaded = false;
  const files = filesOf(dist, ({ url }) => {
    if (!loaded && url?.startsWith("/taskpane.html") === true) say("Excel has loaded the add-in. Leave this running; Ctrl+C ends it.");
    loaded ||= url?.startsWith("/taskpane.html") === true;
  });
  await serveSecurely(files, certificate, port);
  say(`Serving the add-in at https://localhost:${port}`);
  setTimeout(() => {
    if (!loaded) say(`Excel has not asked for the add-in yet. If no workbook opened, load ${manifest} by hand: see README.md.`);
  }, patienceMs).unref();
  await startDebugging(manifest, { appType: AppType.Desktop, enableDebugging: false });
}

const advice = adviceElsewhere(process.platform);
if (advice === undefined) {
  await startInExcel();
} else {
  process.stderr.write(advice);
  process.exitCode = cannotStartHere;
}
