import { describe, expect, test } from "vitest";
import { firstDay, rangesFor } from "../../taskpane/time-range";

const log = { axis: "dates", span: [46_000, 46_100], watches: [{ flushed: 46_080.4, from: 46_081.4, to: 46_082.4 }] } as const;

describe("which part of a log is drawn", () => {
  test("100 days with a flush on day 80: 14 days, 60 days and since the flush begin on days 86, 40 and 80", () => {
    expect(rangesFor(log)).toEqual(["14 days", "60 days", "since the flush", "all"]);
    expect((["14 days", "60 days", "since the flush"] as const).map((range) => firstDay(log, range))).toEqual([46_086, 46_040, 46_080]);
  });

  test("a log of 10 days, one without a flush, and one without dates offer nothing that they do not have", () => {
    expect(rangesFor({ ...log, span: [46_090, 46_100], watches: [] })).toEqual([]);
    expect(rangesFor({ ...log, watches: [] })).toEqual(["14 days", "60 days", "all"]);
    expect(rangesFor({ ...log, axis: "readings" })).toEqual([]);
  });
});
