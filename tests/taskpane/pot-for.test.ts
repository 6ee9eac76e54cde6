import { describe, expect, it } from "vitest";
import { forPot, noChoices, type PotChoices } from "../../taskpane/choices";
import { potFor } from "../../taskpane/pot-for";
import { rootZoneOf } from "../../taskpane/root-zone";
import { readSelection } from "../../taskpane/sheet/read-selection";
import { selectedPlace } from "../../taskpane/sheet/selected-place";
import { areaAt } from "../../workbench/host/excel/area";
import { bench } from "./sheet/bench-log";

// What the grower is judged by is what the sheet made for the pot stops at: common practice, no source.

async function potWith(choices: Partial<PotChoices>) {
  const { store, sheetId } = bench();
  store.select([areaAt(sheetId, 1, 1)]);
  const zone = rootZoneOf(await readSelection(await selectedPlace()), { ...noChoices, ...forPot(noChoices, undefined, choices) });
  return potFor(zone, "flush sheet");
}

describe("the pot that a flush sheet is made for", () => {
  const own = { phLow: "5.6", phHigh: "6.4", ecLow: "1.5", ecHigh: "3" };

  it("takes the medium's limits by its name", async () => {
    expect(await potWith({ medium: "coir" })).toMatchObject({ medium: "coir", feeder: "medium", limits: undefined });
  });

  it("takes the grower's own limits beside the medium, with or without one", async () => {
    expect(await potWith({ medium: "coir", own })).toMatchObject({ medium: "coir", limits: [5.6, 6.4, 1.5, 3] });
    expect(await potWith({ own })).toMatchObject({ medium: undefined, limits: [5.6, 6.4, 1.5, 3] });
  });
});
