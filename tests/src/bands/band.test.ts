import { describe, expect, it } from "vitest";
import { bandLimit, bandNamed, ec25, feederNamed, mediumNamed, ownBand, ph, type RefusalCode, sampleNamed } from "../../../src/index";
import { expectRefusal } from "../refused";

describe("ownBand", () => {
  it.each<[string, readonly [number, number, number, number], RefusalCode, string]>([
    ["pH 1.5 to 3 beside EC 5.6 to 6.4: the two changed places", [1.5, 3, 5.6, 6.4], "implausible", "pH low, pH high, EC low, EC high"],
    ["pH 5.5 to 12", [5.5, 12, 2, 3.5], "implausible", "3 to 10"],
    ["pH 6.4 to 5.6", [6.4, 5.6, 1.5, 3], "order", "below the high limit 5.6"],
    ["EC up to 35", [5.6, 6.4, 1.5, 35], "wrong-unit", "up to 20"],
  ])("%s is refused", (_, [phLow, phHigh, ecLow, ecHigh], code, says) => {
    expectRefusal(() => ownBand(ph(phLow), ph(phHigh), ec25(ecLow), ec25(ecHigh)), code, says);
  });

  it("pours at the middle, pH 6.0 for 5.6 to 6.4", () => {
    expect(bandLimit(ownBand(ph(5.6), ph(6.4), ec25(1.5), ec25(3)), "pH aim")).toBeCloseTo(6.0, 12);
  });
});

// Words of the trade for the media: common practice, no source.
describe("bandNamed: media by their trade words", () => {
  it.each([
    ["rock wool", "mineral wool"], ["Rock  Wool", "mineral wool"], ["stonewool", "mineral wool"], ["stone-wool", "mineral wool"],
    ["mineralwool", "mineral wool"], ["coco", "coir"], ["Coco Coir", "coir"], ["potting mix", "peat"], ["soilless", "peat"],
    ["hydro", "water culture"], ["DWC", "water culture"], ["NFT", "water culture"], ["expanded clay", "inert"], ["garden soil", "soil"],
  ])('"%s" is %s', (text, medium) => {
    expect(bandNamed(text).medium).toBe(medium);
  });
});

describe("bandNamed: feeder and sample in any order", () => {
  it.each([
    ["peat", "medium", "drain"],
    ["peat, light", "light", "drain"],
    ["peat heavy", "heavy", "drain"],
    ["peat, medium, pour-through", "medium", "pour-through"],
    ["peat, pour through, heavy feeder", "heavy", "pour-through"],
    ["peat, 1:2", "medium", "1:2 extract"],
    ["peat; SME; light", "light", "saturated extract"],
    ["peat heavy pourthru", "heavy", "pour-through"],
    ["saturated extract, peat", "medium", "saturated extract"],
  ])('"%s": %s feeder, %s', (text, feeder, sample) => {
    const band = bandNamed(text);
    expect([band.medium, band.feeder, band.sample]).toEqual(["peat", feeder, sample]);
  });

  it.each([
    ["coir, huge", 'feeder "huge" is not known'],
    ["moon dust", "coir, peat, bark, mineral wool, inert, soil, water culture"],
    ["constructor", "medium"],
    ["coir, toString", "light, medium, heavy"],
    ["coir, peat", "one medium"],
    ["coir, light, heavy", "one feeder"],
    ["heavy", "coir, peat"],
    ["mineral wool, 1:2 extract", "drain, pour-through"],
    ["water culture, saturated extract", "drain"],
  ])('"%s" is refused', (text, says) => {
    expectRefusal(() => bandNamed(text), "unknown-choice", says);
  });

  it.each(["constructor", "toString", "__proto__", "hasOwnProperty"])("%s is no medium, no feeder and no sample", (word) => {
    for (const named of [mediumNamed, feederNamed, sampleNamed]) expectRefusal(() => named(word), "unknown-choice", word);
  });
});

// UMass Extension, soluble salts: normal begins at 0.8 by 1:2 extract, 2.0 by saturated extract, 2.6 by pour-through, and ends at
// 1.3 and 3.5 by the extracts (secondary copy).
describe("bandNamed: the same pot by each way of sampling", () => {
  it.each([["1:2 extract", 0.8], ["saturated extract", 2.0], ["pour-through", 2.6]])("heavy feeder, %s: from %d", (sample, low) => {
    expect(bandNamed(`peat, heavy, ${sample}`).ec[0]).toBe(low);
  });

  it.each([["1:2 extract", 1.3], ["saturated extract", 3.5]])("medium feeder, %s: up to %d", (sample, high) => {
    expect(bandNamed(`peat, medium, ${sample}`).ec[1]).toBe(high);
  });
});
