import { readFileSync } from "node:fs";
import path from "node:path";
import { gzipSync } from "node:zlib";
import { expect, it } from "vitest";
import { distFolder } from "../../workbench/host/load-bundle";

/** Twice what it was when it was parted; the log's reader came to 50 with it, and the page stood empty until all was here. */
const mostKilobytes = 17;

it("the pane's first script is small, so that the pane stands before the rest is here: what speaks of a log is in log.js", () => {
  const gzipped = (name: string): number => gzipSync(readFileSync(path.join(distFolder, name)), { level: 9 }).length / 1000;
  expect(gzipped("taskpane.js")).toBeLessThan(mostKilobytes);
  expect(gzipped("log.js")).toBeGreaterThan(mostKilobytes);
});
