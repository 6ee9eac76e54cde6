import { describe, expect, it } from "vitest";
import { computeFormulas } from "../../../workbench/engine/compute";
import { mostReadCells, widestRange } from "../../../workbench/engine/reach";
import { loadBundle } from "../../../workbench/host/load-bundle";

const { host, metadata } = loadBundle();

describe("a formula that reads the whole sheet", () => {
  it.each([
    ["SUM(B1:XFD1048576)", 16_383 * 1_048_576], ["COUNT($2:$1048576)", 16_384 * 1_048_575], ["SUM(Log!A:C)", 3 * 1_048_576],
    ["A1&\"B1:XFD1048576\"", 0], ["SUM(A1:ZZZ9)", 0], ["SUM(B2:C11)", 20],
  ])("%s spans %i cells at its widest", (formula, cells) => { expect(widestRange(formula)).toBe(cells); });

  it("is not computed, and says what to do; a column down the whole sheet is", async () => {
    const [whole, column] = (await computeFormulas(["SUM(B1:XFD1048576)", "SUM(B:B)"], host, metadata)).map((cells) => cells[0]?.[0]);
    expect(whole).toMatchObject({ error: "#VALUE!", reason: expect.stringContaining(`${mostReadCells} cells: name the rows`) as string });
    expect(column).toBe(0);
  });
});
