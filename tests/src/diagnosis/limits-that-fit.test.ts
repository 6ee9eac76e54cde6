import { describe, expect, it } from "vitest";
import { bandFor, ec25, judge, ownBand, ph, type PotReading } from "../../../src/index";

/** A tomato in mineral wool, fed at 4 on purpose; the drain keeps 1 to 2 above it. Shape of [contest-tomato-2020]. */
const strongOnPurpose: readonly PotReading[] = [5.6, 5.4, 5.7, 5.5, 5.3].map((runoffEc, week) => ({
  day: 45_300 + 14 * week,
  inputEc: 4,
  inputPh: 5.6,
  runoffEc,
  runoffPh: 5.9,
  notes: week === 4 ? "new growth clean" : undefined,
}));

describe("limits for a strong feed by choice", () => {
  it("are offered up to 1.8 times the feed, with the pH as it was: between growers' 1.7 and the build-up's 1.9", () => {
    const band = bandFor("mineral wool", "medium");
    const { verdict, limitsThatFit } = judge(strongOnPurpose, band);
    expect(verdict).toBe("in band");
    expect(limitsThatFit).toEqual({ ph: band.ph, ec: [band.ec[0], 7.2] });
  });

  it("taken, say the same, and call the one build-up's ratio of 2 by its name", () => {
    const { medium, feeder, ph: limits } = bandFor("mineral wool", "medium");
    const own = ownBand(ph(limits[0]), ph(limits[1]), ec25(1.2), ec25(7.2), { medium, feeder });
    expect(judge(strongOnPurpose, own).verdict).toBe("in band");
    const climbed = strongOnPurpose.map((row, week) => ({ ...row, runoffEc: week < 3 ? row.runoffEc : 8 }));
    expect(judge(climbed, own).verdict).toBe("salt buildup");
  });

  it("are not offered to a pot that is fed within its band, nor where the plant fails", () => {
    const band = bandFor("mineral wool", "medium");
    const weaker = strongOnPurpose.map((row) => ({ ...row, inputEc: 1.8, runoffEc: 2.4 }));
    expect(judge(weaker, band).limitsThatFit).toBeUndefined();
    expect(judge([...strongOnPurpose, { ...strongOnPurpose[4], notes: "wilting" }], band).limitsThatFit).toBeUndefined();
  });
});
