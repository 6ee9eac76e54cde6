import { afterAll, expect, test } from "vitest";
import { writeEntries } from "../../../taskpane/sheet/write-entries";
import { areaAt } from "../../../workbench/host/excel/area";
import { bench, refusal, zoneAt } from "./bench-log";
import { type EditTrial, editsOf } from "./person-edits";
import { trials } from "./forced-failures";

/** `npm run failures` edits before every sync, a common run before those that write. */
const onlyWriting = process.env["MODE"] !== "many-writes";

const tried: EditTrial[] = [];

test.each(Object.keys(trials))("%s: whatever a person does between two syncs, what they typed stays, and it is said what stands", async (name) => {
  const edits = await editsOf(name, onlyWriting);
  tried.push(...edits);
  expect(edits.length).toBeGreaterThan(0);
  expect(edits.filter(({ outcome }) => outcome === "crash" || outcome === "lost" || outcome === "untold").slice(0, 5)).toEqual([]);
});

test("should the host fail just when what was typed is put back, it is told, with the cell and the word", async () => {
  const host = bench();
  const { selection } = await zoneAt(host);
  let at = -1;
  let typedAt = Infinity;
  host.switches.onSync = ({ writes }) => {
    at += 1;
    if (writes > 0 && typedAt === Infinity) {
      typedAt = at;
      host.store.write(areaAt(host.sheetId, 5, 1), [["my own note"]]);
    }
    return at > typedAt ? { at: "before" } : undefined;
  };
  const entry = { row: 5, column: 1, values: [1.2] };
  expect(await refusal(() => writeEntries(selection.sheetId, [entry]))).toMatch(/"my own note" into B6.*look there/);
});

afterAll(() => {
  const count = (outcome: EditTrial["outcome"]): number => tried.filter((each) => each.outcome === outcome).length;
  const figures = (["as before", "done", "told", "untold", "lost", "crash"] as const).map((outcome) => `${outcome} ${count(outcome)}`);
  process.stdout.write(`edits between two syncs tried ${tried.length}: ${figures.join(", ")}\n`);
});
