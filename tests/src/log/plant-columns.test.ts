import { describe, expect, it } from "vitest";
import { plantScale, readLog } from "../../../src/index";
import { plantColumns } from "../../../taskpane/formulas/plant-columns";

const plantOf = (header: string, ...cells: readonly unknown[]): unknown[] =>
  readLog({ cells: [["Date", "Runoff EC mS/cm", header], ...cells.map((cell, day) => [45_383 + day, 2.4, cell])] }).rows.map(({ plant }) => plant);

// A scale that growers keep beside the log: 0 as it should be, 3 bad. Common practice, no source.
describe("columns of how the plant looks", () => {
  it.each([
    ["New growth", "newGrowth"], ["New leaves (0-3)", "newGrowth"], ["Posture", "posture"], ["Wilting", "posture"],
    ["Symptoms 0-3", "spread"], ["Tip burn", "spread"], ["Roots", "roots"], ["Root colour", "roots"],
  ])("%s with 0, 1 and 3 is %s", (header, look) => {
    expect(plantOf(header, 0, 1, "3")).toEqual([{ [look]: 0 }, { [look]: 1 }, { [look]: 3 }]);
  });

  it("leaves out 7, which is not on the scale of 0 to 3, and says so", () => {
    const { rows, problems } = readLog({ cells: [["Date", "Runoff EC mS/cm", "Posture"], [45_383, 2.4, 7], [45_384, 2.4, 1]] });
    expect(rows.map(({ plant }) => plant)).toEqual([undefined, { posture: 1 }]);
    expect(problems.map(({ row, column, used }) => [row, column, used])).toEqual([[1, 2, false]]);
  });

  const offered = plantColumns({ columns: [] }).map(({ header, accepts }) =>
    [header, accepts !== undefined && "words" in accepts ? accepts.words : []] as const);

  it.each(offered)("%s reads its own pick list: the figure, with the word beside it", (header, choices) => {
    expect(choices).toHaveLength(4);
    const { rows } = readLog({ cells: [["Date", "Runoff EC mS/cm", header], ...choices.map((choice, day) => [45_383 + day, 2.4, choice])] });
    expect(rows.map(({ plant }) => Object.values<number | undefined>({ ...plant }))).toEqual([[0], [1], [2], [3]]);
  });

  it("has a pick list that fits the host's 255 letters, and no word with the comma that parts its entries", () => {
    expect(Math.max(...offered.map(([, choices]) => choices.join().length))).toBeLessThanOrEqual(255);
    expect(Object.values(plantScale).flat().filter((word) => word.includes(","))).toEqual([]);
  });

  it("takes symptoms told in words for notes", () => {
    const { columns } = readLog({ cells: [["Date", "Runoff EC mS/cm", "Symptoms"], [45_383, 2.4, "brown tips"], [45_384, 2.4, "spreading"]] });
    expect(columns[2]?.quantity).toBe("notes");
  });

  it("reads a scale of which half the cells say n/a", () => {
    expect(plantOf("Posture", 1, "n/a", 2, "n/a", "-", "")).toEqual([
      { posture: 1 }, undefined, { posture: 2 }, undefined, undefined, undefined,
    ]);
  });

  it("does not take the temperature or the EC of the root zone for the roots", () => {
    const { columns } = readLog({ cells: [["Date", "Runoff EC mS/cm", "Root zone temp C", "Root zone EC"], [45_383, 2.4, 22, 2.1], [45_384, 2.4, 22, 2.1]] });
    expect(columns.slice(2).map(({ quantity }) => quantity)).toEqual(["other", "other"]);
  });
});
