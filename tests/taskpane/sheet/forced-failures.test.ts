import { expect, test } from "vitest";
import { failuresOf, trials } from "./forced-failures";

/** So many of a sync's writes fail here; `npm run failures` tries every one. */
const mostWrites = 6;

test.each(Object.keys(trials))("%s: whatever sync fails, the workbook is as before, or done, or it is said what stands; then the goal is reached", async (name) => {
  const failed = await failuresOf(name, mostWrites);
  expect(failed.length).toBeGreaterThan(0);
  expect(failed.filter(({ outcome, reached }) => outcome === "untold" || !reached).slice(0, 5)).toEqual([]);
});
