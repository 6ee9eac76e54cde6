import { describe, expect, it } from "vitest";
import { type Band, bandFor, leachingShare, ownBand, ec25, type LogRow, ph, Refusal, type RootZoneReading, verdict, type VerdictOptions } from "../../../src/index";
import { advice } from "../../../src/diagnosis/verdict-advice";

/** Runoff pH 5.5 to 6.5 and EC 2 to 3.5: coir, medium feeder. */
const coir = bandFor("coir");
const soil = bandFor("soil");

type Row = readonly [inputPh: number | undefined, inputEc: number | undefined, runoffPh: number | undefined, runoffEc: number | undefined];
const rows = (...given: Row[]): RootZoneReading[] =>
  given.map(([inputPh, inputEc, runoffPh, runoffEc]) => ({ inputPh, inputEc, runoffPh, runoffEc }));
const judge = (given: Row[], band: Band = coir, options: VerdictOptions = {}): ReturnType<typeof verdict> => verdict(rows(...given), band, options);

// Expectations: the rules of the verdict as common practice words them (two readings before a name, trust first, doubt to less).
describe("verdict: the decision table", () => {
  it.each<[string, Row[], string]>([
    ["both readings in band", [[5.9, 2, 6, 2.8], [5.9, 2, 6.1, 3]], "in band"],
    ["a single reading in band", [[5.9, 2, 6, 2.8]], "in band"],
    ["limits themselves", [[5.9, 2, 5.5, 2], [5.9, 2, 6.5, 3.5]], "in band"],
    ["a high ratio of 5 with the EC in band", [[5.9, 0.6, 6, 3], [5.9, 0.6, 6, 3]], "in band"],
    ["EC 4.6 then 4.9", [[5.9, 2, 6, 4.6], [5.9, 2, 6.1, 4.9]], "salt buildup"],
    ["EC 4.6 then 4.9, input not measured", [[undefined, undefined, 6, 4.6], [undefined, undefined, 6.1, 4.9]], "salt buildup"],
    ["EC high twice, pH never measured", [[5.9, 2, undefined, 4.6], [5.9, 2, undefined, 4.9]], "salt buildup"],
    ["EC high twice, pH off once", [[5.9, 2, 6, 4.6], [5.9, 2, 5.1, 4.9]], "salt buildup"],
    ["EC high twice, pH 5.45", [[5.9, 2, 6, 4.6], [5.9, 2, 5.45, 4.9]], "salt buildup"],
    ["pH 5.2 then 5.1", [[5.9, 2, 5.2, 2.8], [5.9, 2, 5.1, 3]], "pH out of range"],
    ["pH 6.9 then 7.1", [[5.9, 2, 6.9, 2.8], [5.9, 2, 7.1, 3]], "pH out of range"],
    ["pH low twice, EC never measured", [[5.9, 2, 5.2, undefined], [5.9, 2, 5.1, undefined]], "pH out of range"],
    ["pH low twice, EC high once", [[5.9, 2, 5.2, 3], [5.9, 2, 5.1, 4.6]], "pH out of range"],
    ["pH low twice, EC low twice", [[5.9, 2, 5.2, 1], [5.9, 2, 5.1, 1]], "pH out of range"],
    ["pH low twice, EC 3.55", [[5.9, 2, 5.2, 3], [5.9, 2, 5.1, 3.55]], "pH out of range"],
    ["EC high and pH low, both twice", [[5.9, 2, 5.2, 4.6], [5.9, 2, 5.1, 4.9]], "salt buildup and pH out of range"],
    ["EC high and pH high, both twice", [[5.9, 2, 7.2, 4.6], [5.9, 2, 7.1, 4.9]], "salt buildup and pH out of range"],
    ["EC high in the only reading", [[5.9, 2, 6, 4.9]], "confirm with a second reading"],
    ["EC high after one in band", [[5.9, 2, 6, 3], [5.9, 2, 6, 4.9]], "confirm with a second reading"],
    ["EC in band after one high", [[5.9, 2, 6, 4.9], [5.9, 2, 6, 3]], "confirm with a second reading"],
    ["EC clearly high after 3.55", [[5.9, 2, 6, 3.55], [5.9, 2, 6, 4.9]], "confirm with a second reading"],
    ["EC 3.55 after a clear high", [[5.9, 2, 6, 4.9], [5.9, 2, 6, 3.55]], "confirm with a second reading"],
    ["EC high, then low", [[5.9, 2, 6, 4.9], [5.9, 2, 6, 1]], "confirm with a second reading"],
    ["pH low, then high", [[5.9, 2, 5, 3], [5.9, 2, 7, 3]], "confirm with a second reading"],
    ["EC low once, pH close", [[5.9, 2, 6, 3], [5.9, 2, 5.45, 1]], "confirm with a second reading"],
    ["pH once, EC unknown", [[5.9, 2, 5, undefined]], "confirm with a second reading"],
    ["EC 3.55 twice: within 3 % of 3.5", [[5.9, 2, 6, 3.55], [5.9, 2, 6, 3.55]], "check the meter"],
    ["pH 5.42 twice: within 0.1 of 5.5", [[5.9, 2, 5.42, 3], [5.9, 2, 5.42, 3]], "check the meter"],
    ["EC 3.55, pH unknown", [[5.9, 2, undefined, 3.55]], "check the meter"],
    ["EC low twice, pH fine", [[5.9, 2, 6, 1.2], [5.9, 2, 6, 1.1]], "cannot say"],
    ["pH never measured, EC fine", [[5.9, 2, undefined, 3], [5.9, 2, undefined, 3]], "cannot say"],
    ["EC never measured, pH fine", [[5.9, 2, 6, undefined], [5.9, 2, 6, undefined]], "cannot say"],
    ["pH last measured three readings ago", [[5.9, 2, 6, 3], [5.9, 2, undefined, 3], [5.9, 2, undefined, 3]], "cannot say"],
    ["no row at all", [], "cannot say"],
    ["feed only", [[5.9, 2, undefined, undefined]], "cannot say"],
  ])("%s: %s is %s", (_, given, expected) => {
    const found = judge(given);
    expect(found.answer).toBe(expected);
    expect(found.reasons.join()).not.toMatch(/NaN|undefined|null|Infinity/);
  });

  it("whatever sends to flush or leach at once says to keep drain water away from electrical gear", () => {
    const advised = Object.values(advice).filter(({ next }) => /^(Flush|Leach|Salt first)/.test(next));
    expect(advised).toHaveLength(3);
    for (const { next } of advised) expect(next).toContain("Keep drain water away from electrical gear.");
  });

  it("one reading far outside never leads to a flush", () => {
    for (const ec of [3.8, 6, 12, 20]) expect(judge([[5.9, 2, 6, 3], [5.9, 2, 6, ec]]).next).not.toMatch(/flush|leach/i);
  });
});

describe("verdict: trust in the readings comes first", () => {
  const salty: Row[] = [[5.9, 2, 6, 4.6], [5.9, 2, 6.1, 4.9]];
  it.each<[string, Row, RegExp]>([
    ["a ghost pH of 0.1", [5.9, 2, 0.1, 4.9], /runoff pH 0.1 is hard to believe/],
    ["a pH of 15", [5.9, 2, 15, 4.9], /runoff pH 15 is hard to believe/],
    ["a negative EC", [5.9, 2, 6, -1], /runoff EC -1 mS\/cm is hard to believe/],
    ["uS/cm in the mS/cm column", [5.9, 2, 6, 4900], /runoff EC 4900 mS\/cm is hard to believe/],
    ["an input pH of 12", [12, 2, 6, 4.9], /input pH 12 is hard to believe/],
    ["an input EC of 1800", [5.9, 1800, 6, 4.9], /input EC 1800 mS\/cm is hard to believe/],
    ["NaN", [5.9, 2, 6, NaN], /runoff EC .* is hard to believe/],
    ["runoff 0.3 against input 2.4", [5.9, 2.4, 6, 0.3], /cannot both be right/],
  ])("%s: check the meter", (_, row, reason) => {
    for (const given of [[...salty, row], [row]]) {
      const found = judge(given);
      expect(found.answer).toBe("check the meter");
      expect(found.reasons[0]).toMatch(reason);
    }
  });

  it("an input pH of 2 in both rows is said once", () => {
    expect(judge([[2, 2, 6, 4.6], [2, 2, 6, 4.9]]).reasons).toEqual(["input pH 2 is hard to believe: usual is 3 to 10"]);
  });

  it("a ghost reading one row earlier is doubted too; three rows back it is history", () => {
    const ghost: Row = [5.9, 2, 6, 0.04];
    expect(judge([ghost, [5.9, 2, 6, 4.9]]).answer).toBe("check the meter");
    expect(judge([ghost, ...salty]).answer).toBe("salt buildup");
  });

  it("calibration 3 days overdue: check the meter; due today or in 3 days: judged", () => {
    const overdue = judge(salty, coir, { calibrationOverdueDays: 3 });
    expect(overdue.answer).toBe("check the meter");
    expect(overdue.reasons[0]).toContain("3 days overdue");
    expect(judge(salty, coir, { calibrationOverdueDays: 0 }).answer).toBe("salt buildup");
    expect(judge(salty, coir, { calibrationOverdueDays: -3 }).answer).toBe("salt buildup");
    expect(() => judge(salty, coir, { calibrationOverdueDays: NaN })).toThrow(Refusal);
  });
});

// Ku & Hershey 1991: fed 2.1 dS/m, leachate settled near 6, 9 and 15 at leaching fractions 0.4, 0.2 and 0.1, growth alike.
describe("verdict: the salt ratio beside the leaching fraction", () => {
  const plateau = (ec: number, fraction: number): ReturnType<typeof verdict> =>
    judge([[5.9, 2.1, 6, ec], [5.9, 2.1, 6, ec]], coir, { leachingFraction: leachingShare(fraction) });

  it.each([[9, 0.2, 4.29], [15, 0.1, 7.14]])("runoff %d at LF %d: a ratio of %d is where it settles: more runoff, not a flush", (ec, fraction, ratio) => {
    const found = plateau(ec, fraction);
    expect(found.answer).toBe("salt buildup");
    expect(found.next).toMatch(/^Let more run off/);
    expect(found.reasons.join()).toContain(`salt ratio ${ratio} (input EC 2.1 mS/cm)`);
    expect(found.reasons.join()).toContain("no injury by itself");
  });

  it("runoff 6 at LF 0.4, the ratio 2.86 it settles at: the feed is what is strong", () => {
    expect(plateau(6, 0.4).next).toMatch(/^Lower the EC of the feed/);
  });

  it("runoff 9 at LF 0.4 stands above 1/LF = 2.5: older salt, a flush helps", () => {
    expect(plateau(9, 0.4).next).toMatch(/^Flush once/);
  });

  it("runoff as strong as the feed: a flush cannot help, the feed comes down first", () => {
    expect(judge([[5.9, 4.8, 6, 4.7], [5.9, 4.8, 6, 4.7]]).next).toMatch(/^Lower the EC of the feed/);
  });

  it("a feed of 4.5 above the band's 3.5: the feed comes down first, however little drains", () => {
    const found = judge([[5.9, 4.5, 6, 4.9], [5.9, 4.5, 6, 4.9]], coir, { leachingFraction: leachingShare(0.1) });
    expect(found.next).toMatch(/^Lower the EC of the feed/);
    expect(found.reasons.join()).toContain("the feed itself is above the band");
  });

  it("salt and pH at a settled ratio: no flush yet", () => {
    const given: Row[] = [[5.9, 2.1, 5.1, 9], [5.9, 2.1, 5.1, 9]];
    expect(judge(given, coir, { leachingFraction: leachingShare(0.2) }).next).toContain("Flush only if the runoff EC keeps rising");
    expect(judge(given).next).toMatch(/^Salt first: flush/);
  });

  it("without the leaching fraction a ratio of 2.45 says that it would tell; against water of 0.2 no ratio is named", () => {
    expect(judge([[5.9, 2, 6, 4.9], [5.9, 2, 6, 4.9]]).reasons.join()).toContain("the leaching fraction would tell");
    expect(judge([[5.9, 0.2, 6, 4.9], [5.9, 0.2, 6, 4.9]]).reasons.join()).not.toContain("ratio");
  });
});

describe("verdict: soil by trend and with wider doubt", () => {
  const ecs = (...values: number[]): Row[] => values.map((ec): Row => [6.4, 2, 6.5, ec]);
  it("4.2 twice: not told from 3 plus 48 %, so it cannot say and sends a soil sample first", () => {
    const found = judge(ecs(4.2, 4.2), soil);
    expect(found.answer).toBe("cannot say");
    expect(found.next).toMatch(/Test the soil itself/);
  });

  it("6.0 steady for 4 readings: cannot say; 4.6, 5.1, 5.5, 6.0 rising: salt buildup, leached slowly", () => {
    expect(judge(ecs(6, 6, 6, 6), soil).answer).toBe("cannot say");
    const rising = judge(ecs(4.6, 5.1, 5.5, 6), soil);
    expect(rising.answer).toBe("salt buildup");
    expect(rising.next).toMatch(/^Leach slowly/);
  });

  it("6.0, 5.5, 5.1, 4.6 falling: it is washing out by itself, cannot say", () => {
    expect(judge(ecs(6, 5.5, 5.1, 4.6), soil).answer).toBe("cannot say");
  });

  it("the grower's own limits win: judged by level again", () => {
    const own = ownBand(ph(6.2), ph(6.8), ec25(0.8), ec25(3));
    expect(judge(ecs(4.2, 4.2), own).answer).toBe("salt buildup");
  });
});

describe("verdict: what it rests on", () => {
  it("names readings 2 and 4 of five rows, of which 1 is older and 3 and 5 are blank", () => {
    const blank: Row = [undefined, undefined, undefined, undefined];
    const found = judge([[5.9, 2, 6, 3], [5.9, 2, 6, 4.6], blank, [5.9, 2, 6.1, 4.9], blank]);
    expect(found.restsOn).toEqual([1, 3]);
    expect(found.reasons[0]).toBe("runoff EC 4.6 mS/cm, then 4.9 mS/cm: above 3.5 twice");
  });

  it("takes the rows of a log as they are: two of EC 4.6 and 4.9 are salt buildup", () => {
    const nothing = { inputEc: undefined, inputPh: undefined, inputLitres: undefined, runoffLitres: undefined };
    const rest = { vessel: "A", solutionCelsius: undefined, airCelsius: undefined, humidityPercent: undefined, notes: undefined, events: [] };
    const log: LogRow[] = [4.6, 4.9].map((ec, row) => ({ row, day: 46_023 + row, ...nothing, ...rest, runoffEc: ec25(ec), runoffPh: ph(6) }));
    expect(verdict(log, coir).answer).toBe("salt buildup");
  });

  it("puts what decided first: pH before EC when pH is the trouble", () => {
    expect(judge([[5.9, 2, 5.2, 2.8], [5.9, 2, 5.1, 3]]).reasons[0]).toBe("runoff pH 5.2, then 5.1: below 5.5 twice");
  });
});
