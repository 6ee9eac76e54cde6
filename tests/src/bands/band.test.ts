import { describe, expect, it } from "vitest";
import {
  bandFor, bandLimit, bandLimits, bandNamed, ec25, feederNamed, isOwnBand, mediumNamed, ownBand, ph, type RefusalCode, sampleNamed,
} from "../../../src/index";
import { bandOn } from "../../../src/bands/earlier-band";
import { expectRefusal } from "../refused";

describe("ownBand", () => {
  it.each<[string, readonly [number, number, number, number], RefusalCode, string]>([
    ["pH 1.5 to 3 beside EC 5.6 to 6.4: the two changed places", [1.5, 3, 5.6, 6.4], "implausible", "pH low, pH high, EC low, EC high"],
    ["pH 5.5 to 12", [5.5, 12, 2, 3.5], "implausible", "3 to 10"],
    ["pH 6.4 to 5.6", [6.4, 5.6, 1.5, 3], "order", "below the high limit 5.6"],
    ["EC up to 35", [5.6, 6.4, 1.5, 35], "wrong-unit", "runoff EC high limit 35 mS/cm looks like another unit: expected mS/cm up to 20"],
    ["pH from 6 to 6", [6, 6, 1.5, 3], "order", "pH low limit 6"],
    ["EC from 3 to 3", [5.6, 6.4, 3, 3], "order", "runoff EC low limit 3"],
  ])("%s is refused", (_, [phLow, phHigh, ecLow, ecHigh], code, says) => {
    expectRefusal(() => ownBand(ph(phLow), ph(phHigh), ec25(ecLow), ec25(ecHigh)), code, says);
  });

  it("pours at the middle, pH 6.0 for 5.6 to 6.4", () => {
    expect(bandLimit(ownBand(ph(5.6), ph(6.4), ec25(1.5), ec25(3)), "pH aim")).toBeCloseTo(6.0, 12);
  });
});

describe("ownBand and bandFor", () => {
  const own = ownBand(ph(3), ph(10), ec25(0.5), ec25(20));

  it("pH 3 to 10 and EC up to 20 are the widest; what is fed is too strong above the EC's own limit", () => {
    expect(own).toMatchObject({ ph: [3, 10], ec: [0.5, 20], feedEcHigh: 20, medium: undefined, feeder: undefined, sample: "drain" });
    expect(ownBand(ph(5), ph(6), ec25(1), ec25(2), { sample: "pour-through" }).sample).toBe("pour-through");
  });

  it("are told apart: one is the grower's own, the other the table's", () => {
    expect([isOwnBand(own), isOwnBand(bandFor("coir"))]).toEqual([true, false]);
    expect(own.source).toEqual({ ph: "own limits", ec: "own limits" });
  });

  // Bark's limits are what is left without the water's own EC: they say nothing of a feed, for which those of the soilless mixes stand.
  it("a feed is too strong above the drain's upper limit, in bark above that of the other mixes", () => {
    expect(bandFor("inert", "heavy").feedEcHigh).toBe(3.5);
    expect(bandFor("coir", "light", "1:2 extract").feedEcHigh).toBe(2.6);
    expect(bandFor("bark", "light").feedEcHigh).toBe(2.6);
    expect(bandFor("bark", "light").ec).toEqual([0.2, 0.5]);
  });

  it("a medium by itself is a medium feeder's, its drain sampled", () => {
    expect(bandFor("peat")).toMatchObject({ medium: "peat", feeder: "medium", sample: "drain" });
  });

  it("each limit by its name, however it is written", () => {
    const [phLow, phHigh, ecLow, ecHigh] = [ph(5.6), ph(6.4), ec25(1.5), ec25(3)];
    expect(bandLimits.map((name) => bandLimit(ownBand(phLow, phHigh, ecLow, ecHigh), name))).toEqual([5.6, 6.4, 6, 1.5, 3]);
    expect(bandLimit(own, " EC  High ")).toBe(20);
    expectRefusal(() => bandLimit(own, "ec"), "unknown-choice", 'band limit "ec" is not known: choose ph low, ph high, ph aim, ec low, ec high');
  });
});

describe("bandOn", () => {
  it("earlier limits hold up to the day on which others took their place, and not on it", () => {
    const [today, earlier] = [bandFor("coir"), [{ band: bandFor("peat"), until: 10 }, { band: bandFor("soil"), until: 20 }]];
    expect([9.9, 10, 19.9, 20].map((day) => bandOn(day, today, earlier).medium)).toEqual(["peat", "soil", "soil", "coir"]);
  });
});

// Words of the trade for the media: common practice, no source.
describe("bandNamed: media by their trade words", () => {
  it.each([
    ["rock wool", "mineral wool"], ["Rock  Wool", "mineral wool"], ["stonewool", "mineral wool"], ["stone-wool", "mineral wool"],
    ["mineralwool", "mineral wool"], ["coco", "coir"], ["Coco Coir", "coir"], ["potting mix", "peat"], ["soilless", "peat"],
    ["hydro", "water culture"], ["DWC", "water culture"], ["NFT", "water culture"], ["expanded clay", "inert"], ["garden soil", "soil"],
    ["cocos", "coir"], ["cocopeat", "coir"], ["coconut", "coir"], ["sphagnum", "peat"], ["pine bark", "bark"], ["bark", "bark"],
    ["wool", "mineral wool"], ["slab", "mineral wool"], ["slabs", "mineral wool"], ["clay", "inert"], ["perlite", "inert"],
    ["pumice", "inert"], ["vermiculite", "inert"], ["sand", "inert"], ["gravel", "inert"], ["loam", "soil"], ["topsoil", "soil"],
    ["earth", "soil"], ["ground", "soil"], ["soil", "soil"], ["hydroponics", "water culture"], ["hydroponic", "water culture"],
    ["water", "water culture"], ["raft", "water culture"], ["float", "water culture"], ["aeroponics", "water culture"],
    ["tank", "water culture"], ["reservoir", "water culture"], ["water culture", "water culture"], ["inert", "inert"],
  ])('"%s" is %s', (text, medium) => {
    expect(bandNamed(text).medium).toBe(medium);
  });
});

describe("sampleNamed, feederNamed: their trade words", () => {
  it.each([
    ["drain", "drain"], ["Runoff", "drain"], ["run-off", "drain"], ["drainage", "drain"], ["leachate", "drain"], ["solution", "drain"],
    ["effluent", "drain"], ["spot drain", "drain"], ["pour-through", "pour-through"], ["pourthrough", "pour-through"],
    ["PourThru", "pour-through"], ["PT", "pour-through"], ["1:2", "1:2 extract"], ["1 to 2", "1:2 extract"], ["1:2 v/v", "1:2 extract"],
    ["SME", "saturated extract"], ["saturated", "saturated extract"], ["saturated paste", "saturated extract"],
  ])("%s is %s", (text, sample) => {
    expect(sampleNamed(text)).toBe(sample);
  });

  it("light, medium and heavy, with or without the word feeder", () => {
    expect(["Light", "medium feeder", "heavy feeder"].map(feederNamed)).toEqual(["light", "medium", "heavy"]);
  });

  it("a word that is none is refused by what was asked for", () => {
    expectRefusal(() => mediumNamed("x"), "unknown-choice", 'medium "x" is not known: choose coir, peat, bark, mineral wool, inert, soil, water culture');
    expectRefusal(() => feederNamed("x"), "unknown-choice", 'feeder "x" is not known: choose light, medium, heavy');
    expectRefusal(() => sampleNamed("x"), "unknown-choice", 'sample "x" is not known: choose drain, pour-through, 1:2 extract, saturated extract');
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
    ["peat, , heavy,", "heavy", "drain"],
    ["peat / heavy / 1:2 v/v", "heavy", "1:2 extract"],
    ["peat, heavy, heavy feeder", "heavy", "drain"],
  ])('"%s": %s feeder, %s', (text, feeder, sample) => {
    const band = bandNamed(text);
    expect([band.medium, band.feeder, band.sample]).toEqual(["peat", feeder, sample]);
  });

  it.each([
    ["coir, huge", 'feeder "huge" is not known'],
    ["moon dust", 'medium "moon dust" is not known: choose coir, peat, bark, mineral wool, inert, soil, water culture'],
    ["constructor", "medium"],
    ["coir, toString", "light, medium, heavy"],
    ["coir, peat", 'band "coir, peat" is not known: choose one medium'],
    ["coir, light, heavy", "one feeder"],
    ["coir, drain, pour-through", "one sample"],
    ["heavy", 'medium "heavy" is not known: choose coir, peat'],
    ["mineral wool, 1:2 extract", 'sample of mineral wool "1:2 extract" is not known: choose drain, pour-through; or limits of your own'],
    ["water culture, saturated extract", "choose drain; or limits of your own"],
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
