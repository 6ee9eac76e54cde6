import { afterAll, expect, test } from "vitest";
import { type EditTrial, editsOf } from "./person-edits";
import { trials } from "./forced-failures";

/** `npm run failures` edits before every sync, a common run before those that write. */
const onlyWriting = process.env["MODE"] !== "every-write";

const tried: EditTrial[] = [];

test.each(Object.keys(trials))("%s: whatever a person does between two syncs, what they typed stays, and it is said what stands", async (name) => {
  const edits = await editsOf(name, onlyWriting);
  tried.push(...edits);
  expect(edits.length).toBeGreaterThan(0);
  expect(edits.filter(({ outcome }) => outcome === "crash" || outcome === "lost" || outcome === "untold").slice(0, 5)).toEqual([]);
});

afterAll(() => {
  const count = (outcome: EditTrial["outcome"]): number => tried.filter((each) => each.outcome === outcome).length;
  const figures = (["as before", "done", "told", "untold", "lost", "crash"] as const).map((outcome) => `${outcome} ${count(outcome)}`);
  process.stdout.write(`edits between two syncs tried ${tried.length}: ${figures.join(", ")}\n`);
});
