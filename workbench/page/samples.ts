import type { MenuItem } from "./page-parts";

/** The sample that the page opens with. */
export const usualSample = "crisis.xlsx";

/** By file, in the order of the menu: what each shows, with one thing to try. */
const samples = new Map([
  [usualSample, {
    shows: "Burnt leaves: a pepper, today",
    hint: "Press the button under the verdict: a flush sheet for this pot opens. Or change the medium, or a Runoff EC in the log.",
  }],
  ["salt-buildup.xlsx", {
    shows: "Salt builds up, a flush, recovery",
    hint: "Select rows 30 to 46 with the header in view and read the selection: the verdict is that of those days. Then the whole log.",
  }],
  ["ph-lockout.xlsx", {
    shows: "Yellow leaves: the pH, not the salt",
    hint: "Choose inert and heavy as medium and feeder; then select the rows from 19 January on and read the selection.",
  }],
  ["many-vessels-messy.xlsx", {
    shows: "Four pots, typed in a hurry",
    hint: "Answer what the pane asks; then see which rows it sets aside, and why.",
  }],
  ["healthy-bench.xlsx", { shows: "A quiet bench", hint: "Choose peat, then lower a Runoff L and see what the ratio would settle at." }],
  ["flush-sheet.xlsx", { shows: "A flush under way", hint: "Write portion 4: 1.7 L, pH 5.6, EC 3.1. The stop check turns to stop." }],
  ["mix-sheet.xlsx", { shows: "A recovery feed, mixed", hint: "Change the days since the flush, or type an EC of your own: the doses follow." }],
  ["salt-buildup.csv", { shows: "A plain log without formulas (.csv)", hint: "Select a cell of it and read it; then put columns beside it under Work on the sheet." }],
]);

/** Files as the menu offers them: the known ones first, any other under its own name. */
export function inMenu(files: readonly string[]): MenuItem[] {
  const known = [...samples.keys()].filter((file) => files.includes(file));
  const others = files.filter((file) => !samples.has(file));
  return [...known, ...others].map((file) => ({ value: file, text: samples.get(file)?.shows ?? file }));
}

/** One line on what to try with a sample. */
export const hintFor = (file: string): string => samples.get(file)?.hint ?? "";
