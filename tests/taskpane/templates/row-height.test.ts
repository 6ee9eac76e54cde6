import { describe, expect, test } from "vitest";
import { rowHeight } from "../../../taskpane/templates/row-height";

describe("rowHeight", () => {
  test.each([
    ["a label: one line of text", [{ value: "Container (L)", style: "label" }], 19],
    ["an empty row", [], 19],
    ["figures of 18 points", [{ value: "next", style: "label" }, { formula: "A1", style: "large" }], 28],
    ["a note of 20 letters in 20 columns", [{ value: "twenty letters, 4 wd", style: "wrapped" }], 19],
    ["21 letters: the last word on a second line", [{ value: "twenty letters, 4 wds", style: "wrapped" }], 33],
    ["three lines of one long word each", [{ value: "abcdefghijklm nopqrstuvwxyz abcdefghijklm", style: "wrapped" }], 47],
    ["what a formula will say: two lines", [{ formula: "A1", style: "wrapped" }], 33],
    ["a note that runs on to the right needs no more lines", [{ value: "as long as this sentence and longer still", style: "note" }], 19],
  ] as const)("%s", (_, cells, points) => {
    expect(rowHeight(cells, [20, 20])).toBe(points);
  });
});
