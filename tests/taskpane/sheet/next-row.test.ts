import { describe, expect, test } from "vitest";
import { nextRow } from "../../../taskpane/sheet/next-row";
import { bench, benchLog, zoneAt } from "./bench-log";

const [header = [], ...rows] = benchLog;

const next = async (cells: Parameters<typeof bench>[0]): Promise<readonly [number, number, string]> => {
  const { row, column, words } = await nextRow(await zoneAt(bench(cells)));
  return [row, column, words];
};

describe("the row for the next reading", () => {
  test("stands under the last one: row 5 of a log of three readings", async () => {
    expect(await next(benchLog)).toEqual([4, 0, "Write the readings into row 5."]);
  });

  test("a date typed ahead does not fill it", async () => {
    expect(await next([...benchLog, [46_088]])).toEqual([4, 0, "Write the readings into row 5."]);
  });

  test("an average under the readings is in the way: a row has to be inserted", async () => {
    expect((await next([...benchLog, ["average", 1.57, 5.83, 2867, 5.63, 2, 0.47]]))[2]).toMatch(/^Row 5, under the readings, is not empty: insert a row/);
  });

  test("a log with its newest reading on top takes the next one above row 2", async () => {
    expect(await next([header, ...[...rows].reverse()])).toEqual([
      1, 0, "This log has its newest reading on top: insert a row above row 2 and write the readings there.",
    ]);
  });
});
