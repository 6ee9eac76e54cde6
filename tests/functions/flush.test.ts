import { describe, expect, it } from "vitest";
import { blankDeliveries, type CellValue } from "../../workbench/host/functions-host";
import { loadBundle } from "../../workbench/host/load-bundle";

const { host } = loadBundle();
const deliveries = Object.keys(blankDeliveries) as (keyof typeof blankDeliveries)[];
const column = (...cells: CellValue[]): CellValue[][] => cells.map((cell) => [cell]);
const _ = undefined;

describe("FLUSHSTOP in a sheet", () => {
  it.each(deliveries)("cannot say when the last runoff pH is blank (blank delivered as %s)", (blank) => {
    const [[answer, reason] = []] = host.call("FLUSHSTOP", [column(6, 6, _), column(6, 5, 3), [["coir"]], _, _, [[true]]], blank);
    expect(answer).toBe("cannot say");
    expect(reason).toContain("runoff pH is missing");
  });

  it.each(deliveries)("rows not yet filled below the log are left out (blank delivered as %s)", (blank) => {
    const args = [column(6, 6, 6, _), column(6, 5.2, 4.4, _), [["coir"]], column(_, 2, 2, _), [[10]]];
    expect(host.call("FLUSHSTOP", args, blank)).toEqual([["keep going"]]);
  });

  it.each(deliveries)("a blank in the middle keeps its place: litres 2 of row 3 stay with row 3 (delivered as %s)", (blank) => {
    const args = [column(6, _, 6), column(6, _, 4.4), [["coir"]], column(_, 2, 18), [[10]]];
    expect(host.call("FLUSHSTOP", args, blank)).toEqual([["stop: enough water"]]);
  });

  it.each(deliveries)("is blank while the band is blank (delivered as %s)", (blank) => {
    expect(host.call("FLUSHSTOP", [column(6), column(3), [[_]]], blank)).toEqual([[""]]);
  });

  it("takes the grower's own four limits, which win: EC 3.8 within 3 to 4", () => {
    expect(host.call("FLUSHSTOP", [column(6), column(3.8), [[5.5, 6.5, 3, 4]]])).toEqual([["stop: in band"]]);
  });

  it.each([
    ["an unknown medium, listing the known", [column(6), column(3), [["moon dust"]]], "coir, peat, bark, mineral wool, inert, soil"],
    ["pH and EC of unlike length", [column(6, 6), column(3), [["coir"]]], "of the same length"],
    ["litres of unlike length", [column(6), column(3), [["coir"]], column(1, 2)], "of the same length"],
    ["a square of readings", [[[6, 6], [6, 6]], column(3, 3), [["coir"]]], "one column or one row"],
    ["text among the readings", [column("six"), column(3), [["coir"]]], 'runoff pH "six" is not a number'],
    ["negative litres", [column(6), column(3), [["coir"]], column(-2)], "litres poured -2 L cannot be"],
    ["an absurdly large pot", [column(6), column(3), [["coir"]], column(2), [[1e9]]], "container volume 1000000000 L cannot be"],
    ["low and high limits exchanged", [column(6), column(3), [[6.5, 5.5, 2, 3]]], "pH low limit 6.5 is out of order"],
  ])("refuses %s", (_title, args, says) => {
    const [[answer] = []] = host.call("FLUSHSTOP", args);
    expect(answer).toMatchObject({ error: "#VALUE!", reason: expect.stringContaining(says) as string });
  });

  it("hands on an error among the readings: #N/A stays #N/A", () => {
    expect(host.call("FLUSHSTOP", [column(6), column({ error: "#N/A" }), [["coir"]]])[0]?.[0]).toMatchObject({ error: "#N/A" });
  });
});
