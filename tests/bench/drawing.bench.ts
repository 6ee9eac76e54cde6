import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "esbuild";
import { hasBrowser, openBrowser } from "../browser/browser";
import { type Bench } from "./measure";

const rounds = { warmUp: 10, counted: 31 };
/** Milliseconds of a screen's frame at 60 a second. */
const frame = 16;

async function timesInBrowser(days: number): Promise<readonly number[]> {
  const entry = path.join(import.meta.dirname, "in-page", "drawing-task.ts");
  const { outputFiles } = await build({ entryPoints: [entry], bundle: true, minify: true, write: false, target: "es2020", format: "iife" });
  const session = await openBrowser();
  try {
    const page = await session.context.newPage();
    await page.addScriptTag({ content: outputFiles[0]?.text ?? "" });
    const times = await page.evaluate<number[]>(`drawingTimes(${days}, ${rounds.warmUp + rounds.counted})`);
    return times.slice(rounds.warmUp).sort((a, b) => a - b);
  } finally {
    await session.close();
  }
}

const drawing = (days: number, aim: number): Bench => ({
  name: `a log of ${days} rows from readings to a picture laid out in the page`,
  async run() {
    if (!hasBrowser) return { figure: Number.NaN, unit: "ms", aim, detail: "no browser" };
    const times = await timesInBrowser(days);
    const [least = Number.NaN, middle = Number.NaN] = [times[0], times[Math.floor(times.length / 2)]];
    return { figure: middle, unit: "ms", aim, detail: `median of ${times.length} in chromium, least ${least.toFixed(1)}` };
  },
});

const scriptSize: Bench = {
  name: "the pane's first script",
  run() {
    const [first, log] = ["taskpane.js", "log.js"].map((name) => {
      const script = readFileSync(path.resolve(import.meta.dirname, "../../dist", name));
      return { asItIs: (script.length / 1000).toFixed(0), gzipped: gzipSync(script, { level: 9 }).length / 1000 };
    });
    const detail = `${first?.asItIs} kB as it is; the script that reads a log comes beside it: ${log?.gzipped.toFixed(0)} kB gzipped, ${log?.asItIs} kB as it is`;
    return { figure: first?.gzipped ?? Number.NaN, unit: "kB gzipped", aim: 60, detail };
  },
};

export const benches: readonly Bench[] = [drawing(365, frame), drawing(10_000, 2 * frame), scriptSize];
