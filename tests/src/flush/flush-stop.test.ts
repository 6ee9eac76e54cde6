import { describe, expect, it } from "vitest";
import { bandFor, ec25, type FlushReading, flushStop, litres, drainedMedia, overFlushLimit, ownBand, ph, Refusal } from "../../../src/index";

// Every expectation is a rule of common practice, written down in docs/formulas.md under "Flush"; none has a published number.
// Bands: coir pH 5.5 to 6.5, EC 2.0 to 3.5; soil pH 6.2 to 6.8, EC 0.8 to 3.0.

const rows = (ecs: readonly (number | undefined)[], lastPh: number | "none" = 6, portions: readonly number[] = []): FlushReading[] =>
  ecs.map((ec, row) => ({
    ph: row < ecs.length - 1 ? 6 : lastPh === "none" ? undefined : lastPh,
    ec,
    litres: portions[row] === undefined ? undefined : litres(portions[row]),
  }));

const coir = bandFor("coir", "medium", "pour-through");
const soil = bandFor("soil");
const ownLimits = ownBand(ph(5.5), ph(6.5), ec25(2), ec25(3.5));
const _ = undefined;

describe("flushStop, branch by branch", () => {
  it.each([
    // title                                          readings                        band   pot      answer                     a reason says
    ["no reading at all", rows([]), coir, _, "cannot say", "runoff EC is missing"],
    ["last EC missing, pH taken", rows([6, _]), coir, _, "cannot say", "runoff EC is missing"],
    ["last pH missing, EC taken", rows([6, 3], "none"), coir, _, "cannot say", "runoff pH is missing"],
    ["last pH 15", rows([6, 3], 15), coir, _, "cannot say", "runoff pH 15 cannot be"],
    ["last pH 0.1, a ghost", rows([6, 3], 0.1), coir, _, "cannot say", "runoff pH 0.1 is hard to believe"],
    ["last EC 0.04, a ghost", rows([6, 0.04]), coir, _, "cannot say", "runoff EC 0.04 mS/cm is hard to believe"],
    ["last EC 3100, in uS/cm", rows([6, 3100]), coir, _, "cannot say", "divide uS/cm by 1000"],
    ["last EC -3", rows([6, -3]), coir, _, "cannot say", "runoff EC -3 mS/cm cannot be"],
    ["last EC not a number", rows([6, NaN]), coir, _, "cannot say", "is not a number"],
    ["last pH not a number", rows([6, 3], NaN), coir, _, "cannot say", "is not a number"],
    ["last EC infinite", rows([6, Infinity]), coir, _, "cannot say", "runoff EC Infinity"],
    ["EC 3.5 and pH 6 at the limits", rows([6, 3.5], 6.5), coir, _, "stop: in band", "runoff EC 3.50 mS/cm is within 2.00 to 3.50 mS/cm"],
    ["EC 3.504 is 3.50 to the meter", rows([6, 3.504]), coir, _, "stop: in band", "runoff pH 6.00 is within 5.50 to 6.50"],
    ["EC 1.5 below the band", rows([6, 1.5]), coir, _, "stop: enough water", "feed gently next"],
    ["EC 1.5 below the band, pH out too", rows([6, 1.5], 8), coir, _, "stop: enough water", "washed past the band"],
    ["EC in band, pH 5.0 low", rows([6, 3], 5), coir, _, "pause and measure again", "feed at pH 6.00"],
    ["EC in band, pH 7.2 high", rows([6, 3], 7.2), coir, _, "pause and measure again", "water does not cure pH"],
    ["a single reading above", rows([6]), coir, _, "keep going", "too few readings"],
    ["two level readings", rows([6, 6]), coir, _, "keep going", "too few readings"],
    ["falling 6, 5, 4.2", rows([6, 5, 4.2]), coir, _, "keep going", "still falling: 6.00, 5.00, 4.20"],
    ["creeping 4.2, 4.15, 4.1: 2 % off in two portions", rows([4.2, 4.15, 4.1]), coir, _, "stop: no longer falling", "less than 5 %"],
    ["slow 4.5, 4.35, 4.2: 7 % off in two portions", rows([4.5, 4.35, 4.2]), coir, _, "keep going", "still falling"],
    ["level 4.12, 4.08, 4.10", rows([6, 4.12, 4.08, 4.1]), coir, _, "stop: no longer falling", "more water no longer helps"],
    ["level beside a blank row", rows([6, 4.1, _, 4.1, 4.1]), coir, _, "stop: no longer falling", "4.10, 4.10, 4.10"],
    ["rising from the previous reading", rows([6, 4, 4.4]), coir, _, "pause and measure again", "rising: 6.00, 4.00, 4.40"],
    ["risen, then level", rows([4, 4.4, 4.45]), coir, _, "pause and measure again", "rising"],
    ["level after 0.02 L in 10 L", rows([6, 6, 6], 6, [0, 0.01, 0.01]), coir, 10, "keep going", "too little to show a fall"],
    ["level after 2 x 2 L in 10 L", rows([6, 6, 6], 6, [0, 2, 2]), coir, 10, "stop: no longer falling", "4 L poured"],
    ["level with no water between", rows([7, 6, 6, 6], 6, [0, 2, 0, 0]), coir, _, "keep going", "no water was poured between"],
    ["19.5 L in a 10 L pot of coir", rows([9, 6], 6, [0, 19.5]), coir, 10, "stop: enough water", "19.5 L poured; limit for coir 19.5 L"],
    ["19.5 L poured and in band", rows([9, 3], 6, [0, 19.5]), coir, 10, "stop: enough water", "runoff EC 3.00 mS/cm is within 2.00 to 3.50 mS/cm"],
    ["19.4 L in a 10 L pot of coir", rows([9, 6], 6, [0, 19.4]), coir, 10, "keep going", "19.4 L poured"],
    ["19.5 L with no pot named", rows([9, 6], 6, [0, 19.5]), coir, _, "keep going", "the water limit is not checked"],
    ["limit reached, last EC missing", rows([9, _], 6, [0, 30]), coir, 10, "cannot say", "the water limit is reached: pour no more"],
    ["own limits, 7 L in a 10 L pot", rows([9, 6], 6, [0, 7]), ownLimits, 10, "stop: enough water", "medium unknown, so the gentlest limit 7 L"],
    ["own limits, 6.9 L in a 10 L pot", rows([9, 6], 6, [0, 6.9]), ownLimits, 10, "keep going", "gentlest limit 7 L"],
    ["soil before the first portion", rows([6], 6.5), soil, 10, "keep going", "one small portion"],
    ["soil falling straight after a portion", rows([6, 5], 6.5, [0, 1]), soil, 10, "pause and measure again", "soil goes slower: wait an hour"],
    ["soil falling, read again after a pause", rows([6, 5, 5], 6.5, [0, 1, 0]), soil, 10, "keep going", "one small portion"],
    ["soil falling, litres unknown", rows([6, 5], 6.5), soil, _, "pause and measure again", "in soil the runoff shows a trend"],
    ["soil level after 2 x 1 L", rows([6, 6, 6], 6.5, [0, 1, 1]), soil, 10, "stop: no longer falling", "more water no longer helps"],
    ["soil in band", rows([6, 2.9], 6.5), soil, 10, "stop: in band", "runoff EC 2.90"],
    ["7 L in a 10 L pot of soil", rows([9, 6], 6.5, [0, 7]), soil, 10, "stop: enough water", "limit for soil 7 L"],
  ] as const)("%s", (title, readings, band, pot, answer, says) => {
    const verdict = flushStop(readings, band, pot === undefined ? undefined : litres(pot));
    expect(verdict.answer, title).toBe(answer);
    expect(verdict.reasons.join("; ")).toContain(says);
  });

  it("rows below the last filled one wait to be filled: 6, 5, 4.2 and two empty rows still falls", () => {
    const empty: FlushReading = { ph: undefined, ec: undefined, litres: undefined };
    expect(flushStop([...rows([6, 5, 4.2]), empty, empty], coir)).toEqual(flushStop(rows([6, 5, 4.2]), coir));
  });

  it("a portion written down without its readings cannot be judged", () => {
    const poured: FlushReading = { ph: undefined, ec: undefined, litres: litres(2) };
    expect(flushStop([...rows([6, 3]), poured], coir).answer).toBe("cannot say");
  });

  it("an EC of 4200 in the middle is set aside by row and reason, not used", () => {
    const verdict = flushStop(rows([4.1, 4200, 4.1, 4.1]), coir);
    expect(verdict.answer).toBe("stop: no longer falling");
    expect(verdict.reasons.join("; ")).toContain("row 2 not used: runoff EC 4200 mS/cm looks like another unit");
  });

  it("refuses a pot of 0 L", () => {
    expect(() => flushStop(rows([6]), coir, litres(0))).toThrow(Refusal);
  });
});

describe("overFlushLimit", () => {
  it.each([
    // 3 container capacities (soil 2) or 2 pot volumes, whichever is less; shares held as in src/flush/container-table.ts
    ["coir", 19.5],
    ["peat", 19.5],
    ["bark", 15],
    ["mineral wool", 20],
    ["inert", 9],
    ["soil", 7],
  ] as const)("10 L of %s takes at most %d L (common practice)", (medium, most) => {
    expect(overFlushLimit(litres(10), medium)).toBeCloseTo(most, 9);
  });

  it("an unknown medium gets the smallest limit of all", () => {
    const limits = drainedMedia.map((medium) => overFlushLimit(litres(10), medium));
    expect(overFlushLimit(litres(10), undefined)).toBe(Math.min(...limits));
  });
});
