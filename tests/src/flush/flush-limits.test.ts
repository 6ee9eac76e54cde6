import { describe, expect, it } from "vitest";
import {
  bandFor, containerCapacity, type Ec25, ec25, fitWashout, flushLeft, flushPlan, type FlushReading, flushStanding, flushStop, flushTarget,
  leachNeed, litres, ownBand, ph, type Share, washingCourse, washoutLitres,
} from "../../../src/index";
import { doubtfulPortions } from "../../../src/flush/portions";
import { untilTarget } from "../../../src/flush/until-target";
import { expectRefusal } from "../refused";

// Every rule is one of common practice, written down in docs/formulas.md under "Flush"; what is counted is counted by hand.

const flush = (...rows: (readonly [ec: number | undefined, poured?: number])[]): FlushReading[] =>
  rows.map(([ec, poured]) => ({ ph: ec === undefined ? undefined : 6, ec, litres: poured === undefined ? undefined : litres(poured) }));
const coir = bandFor("coir", "medium", "pour-through");
const [pot, water, target] = [litres(10), ec25(0.4), ec25(3.15)];
const said = (readings: readonly FlushReading[], band = coir, container: typeof pot | undefined = pot): string => {
  const { answer, reasons } = flushStop(readings, band, container);
  return [answer, ...reasons].join("; ");
};

describe("the pot", () => {
  it("of 2000 L is a pot still, of 2001 L in mL, of 0 L none", () => {
    expect(containerCapacity(litres(2000), "coir")).toBeCloseTo(1300, 9);
    expectRefusal(() => containerCapacity(litres(2001), "coir"), "implausible", "container volume 2001 L is hard to believe");
    expectRefusal(() => containerCapacity(litres(0), "coir"), "impossible", "container volume 0 L cannot be: it must be above 0");
  });

  it("10 L of peat hold 6.5 L, of which 0.7 mixes; a tank is not flushed", () => {
    expect(containerCapacity(pot, "peat")).toBeCloseTo(6.5, 9);
    expect(flushPlan(ec25(6), ec25(3), { containerLitres: pot, waterEc: water, medium: "peat" }).neededLitres).toBeCloseTo((Math.log(5.6 / 2.6) * 6.5) / 0.7, 9);
    expectRefusal(() => containerCapacity(pot, "water culture"), "unknown-choice", 'medium to flush "water culture" is not known: choose coir, peat, bark, mineral wool, inert, soil; a tank');
  });
});

describe("washout and fit", () => {
  it("a target 0.006 above the water can be reached; a runoff 0.004 above its target is there", () => {
    const wash = { waterEc: water, ratePerLitre: 1 };
    expect(washoutLitres(ec25(1.4), ec25(0.406), wash)).toBeCloseTo(Math.log(1 / 0.006), 9);
    expect([washoutLitres(ec25(3.004), ec25(3), wash), washoutLitres(ec25(0), ec25(3), wash)]).toEqual([0, 0]);
    expect(washoutLitres(ec25(3.006), ec25(3), wash)).toBeGreaterThan(0);
    expectRefusal(() => washoutLitres(ec25(6), ec25(0.4), wash), "impossible", "target EC 0.4 mS/cm cannot be");
    expectRefusal(() => washoutLitres(ec25(6), ec25(3), { ...wash, ratePerLitre: 0 }), "impossible", "washing from EC 6 cannot be");
  });

  it("readings at the water's own EC or below tell nothing of a rate", () => {
    const points = ([[0, 6], [4, 4.1], [8, 2.4], [12, 1.9]] as const).map(([poured, ec]) => ({ litresSoFar: litres(poured), ec: ec25(ec) }));
    const below = [0.4, 0.3].map((ec) => ({ litresSoFar: litres(16), ec: ec25(ec) }));
    expect(fitWashout([...points, ...below], water)).toBe(fitWashout(points, water));
  });

  it("level readings have no rate", () => {
    expect(fitWashout([0, 2, 4].map((poured) => ({ litresSoFar: litres(poured), ec: ec25(3) })), water)).toBeUndefined();
  });

  // 2 % of 5 is 0.1, what a meter can be off; half a step of 0.01 more is no difference to it; two portions that take off less than 5 % do not wash.
  it.each([[[5, 4.9], "too few"], [[5, 4.894], "falling"], [[5, 5.1], "too few"], [[5, 5.106], "rising"], [[5.11, 5, 5], "flat"], [[5, 4.9, 4.76], "flat"], [[5, 4.9, 4.74], "falling"]] as const)(
    "the course of %j is %s",
    (ecs, course) => {
      expect(washingCourse(ecs as unknown as Ec25[])).toBe(course);
    },
  );

  it("leachNeed: nothing poured in needs none, 2.4 against 1 nearly all; 2.5 is refused with its unit", () => {
    expect(leachNeed(ec25(0), ec25(2.5))).toBe(0);
    expect(leachNeed(ec25(2.4), ec25(1))).toBeCloseTo(2.4 / 2.6, 12);
    expectRefusal(() => leachNeed(ec25(2.5), ec25(1)), "outside-validity", "input EC 2.5 mS/cm is outside");
  });
});

describe("flushPlan", () => {
  const plan = (share: number) => flushPlan(ec25(6), ec25(3), { containerLitres: pot, waterEc: water, medium: "coir", portionShare: share as Share }).portions.length;

  it("portions of a twentieth and of all that the pot holds can be asked for: 7.125 L in 22 and in 2", () => {
    expect([plan(0.05), plan(1)]).toEqual([22, 2]);
  });
});

describe("flushLeft", () => {
  const halving = flush([8.4], [4.4, 2], [2.4, 2]);
  const told = (readings: readonly FlushReading[], to = 1.4): string => flushLeft(readings, ec25(to), water).reasons.join("; ");

  it("a litre that halves the excess in two carries off 29.3 % of it, told with the readings it was fitted to", () => {
    expect(told(halving)).toBe("2 L more; runoff EC 2.40 mS/cm, target 1.40 mS/cm; fitted to 3 readings: a litre carries off 29.3 % of the excess; measure after each portion");
  });

  it("3 halvings are 6 L, further ahead than the 4 L that were poured", () => {
    expect(flushLeft(halving, ec25(0.65), water).litres).toBeCloseTo(6, 9);
    expect(told(halving, 0.65)).toContain("further ahead than the readings reach");
  });

  it("a single reading was read once, whatever litres stand beside it", () => {
    expect(told(flush([8.4, 2]))).toContain("runoff EC read once is too few: at least 3 readings needed");
  });

  it("half a litre twice is water enough; what was poured with the first reading is not between the readings", () => {
    expect(flushLeft(flush([8.4], [4.4, 0.5], [2.4, 0.5]), ec25(1.4), water).litres).toBeCloseTo(0.5, 9);
    expect(told(flush([6, 2], [5], [4]))).toContain("no litres poured between the readings are written down");
    expect(told(flush([6], [5, 2], [4]))).not.toContain("no litres poured");
  });

  it("a reading after a pause, with no litres, stands at the water poured before it", () => {
    expect(flushLeft(flush([8.4], [4.4, 2], [4.4], [2.4, 2]), ec25(1.4), water).litres).toBeCloseTo(2, 9);
  });

  // Weighted least squares by hand: 12.4, 6.4, 4.1 expects a last fall of 2.79, 12.4, 6.4, 5.5 one of 2.29.
  it("a last fall of 2.3 where 2.79 was expected is more than half; 0.9 where 2.29 was expected is flattening", () => {
    expect(flushLeft(flush([12.4], [6.4, 2], [4.1, 2]), ec25(3), water).litres).toBeTypeOf("number");
    expect(told(flush([12.4], [6.4, 2], [5.5, 2]), 3)).toContain("flattening: the last portion took off 0.90 mS/cm where the fit expects 2.29 mS/cm");
  });

  it("a small last portion is held against its own litres: 0.1 L that took off 0.3", () => {
    expect(flushLeft(flush([12.4], [6.4, 2], [6.1, 0.1]), ec25(3), water).litres).toBeTypeOf("number");
  });

  it("0.02 where 0.055 was expected differ by less than a meter can be off", () => {
    expect(flushLeft(flush([8.4], [1.4, 2], [1.03, 1], [1.01, 0.1]), ec25(0.8), water).litres).toBeTypeOf("number");
  });
});

describe("flushStop at its limits", () => {
  it("a row of half a litre is filled, its readings missing", () => {
    expect(said(flush([6], [3, 2], [undefined, 0.5]))).toContain("cannot say; runoff EC is missing");
  });

  it("a blank reading is passed over in silence, one that cannot be believed by its row", () => {
    expect(said(flush([6], [undefined, 2], [3, 2]))).not.toContain("not used");
    expect(said(flush([6], [0.04, 2], [3, 2]))).toContain("row 2 not used: runoff EC 0.04 mS/cm is hard to believe: usual is 0.1 to 20");
  });

  it("says that it judged the last row that holds anything, where that cannot be read and empty ones follow", () => {
    const stale = "judged at the last row that holds anything";
    expect(said([...flush([6], [undefined, 2]), ...flush([undefined])])).toContain(stale);
    expect(said(flush([6], [undefined, 2]))).not.toContain(stale);
  });

  it("what cannot be read is told for EC and pH alike, and no more is poured until it can", () => {
    const { reasons } = flushStop([{ ph: undefined, ec: undefined, litres: litres(1) }], coir, pot);
    expect(reasons.slice(0, 3)).toEqual([
      "runoff EC is missing: measure it before pouring more", "runoff pH is missing: measure it before pouring more", "pour no more until the last row can be read",
    ]);
    expect(flushStop([{ ph: 6, ec: undefined, litres: litres(1) }], coir, pot).reasons[1]).toBe("pour no more until the last row can be read");
    expect(said(flush([6], [undefined, 20]))).toContain("the water limit is reached: pour no more");
  });

  it("half a litre is too much for a pot of 0.2 L", () => {
    expect(said(flush([6], [5, 0.5]), coir, litres(0.2))).toContain("stop: enough water");
  });

  it("of unknown medium, the fastest washing one could have shown a fall: 0.3 L in 10 L moves inert by 0.35, more than 5 % of 6", () => {
    const own = ownBand(ph(5.5), ph(6.5), ec25(2), ec25(3.5));
    expect(said(flush([6], [6, 0.2], [6, 0.1]), own)).toContain("stop: no longer falling");
    expect(said(flush([6], [6, 0.05], [6, 0.04]), own)).toContain("keep going; level: 6.00, 6.00, 6.00; 0.09 L between these readings is too little to show a fall");
  });

  it("coir, which washes slower, could not; where no pot is named nothing is reckoned, and level is level", () => {
    expect(said(flush([6], [6, 0.2], [6, 0.1]))).toContain("0.3 L between these readings is too little to show a fall");
    expect(flushStop(flush([6], [6, 0.1], [6, 0.05]), coir).answer).toBe("stop: no longer falling");
  });

  it("where the water ends it, tells on which side of the band the runoff stands, and below it by which limit", () => {
    expect(said(flush([9], [6, 19.5]))).toContain("runoff EC 6.00 mS/cm is above 2.00 to 3.50 mS/cm");
    expect(said(flush([9], [1.5, 19.5]))).toContain("runoff EC 1.50 mS/cm is below 2.00 to 3.50 mS/cm");
    expect(said(flush([9], [1.5, 2]))).toContain("runoff EC 1.50 mS/cm is below the band's 2.00 mS/cm: washed past the band");
  });

  it("only the water between the three level readings counts: 4 L before them prove nothing", () => {
    expect(said(flush([9], [6, 4], [6, 0.01], [6, 0.01]))).toContain("0.02 L between these readings is too little");
    expect(said(flush([6, 4], [6, 0.01], [6, 0.01]))).toContain("0.02 L between these readings is too little");
  });

  it("tells the last three readings only, and what two portions took off", () => {
    expect(said(flush([9], [7, 2], [6, 2], [5, 2]))).toContain("still falling: 7.00, 6.00, 5.00; runoff EC is above the band's 3.50 mS/cm");
    expect(said(flush([9], [5, 2], [5, 2], [5, 2]))).toContain("5.00, 5.00, 5.00: two portions took off less than 5 %");
  });

  it("soil, litres known: half a litre just poured asks for a pause, a reading after it for the next portion", () => {
    const soil = bandFor("soil");
    const inSoil = (...rows: Parameters<typeof flush>) => flushStop(flush(...rows).map((row) => ({ ...row, ph: 6.5 })), soil, pot).answer;
    expect(inSoil([6], [5, 0.5])).toBe("pause and measure again");
    expect(inSoil([6], [5, 0.5], [5])).toBe("keep going");
    expect(inSoil([6])).toBe("keep going");
  });
});

describe("doubtfulPortions", () => {
  const doubt = (...portions: number[]) => doubtfulPortions(flush(...portions.map((each) => [5, each] as const)), pot);

  it("five pot volumes in one portion are much, more are mL", () => {
    expect(doubt(50)).toBeUndefined();
    expect(doubt(50.1)).toBe("a portion of 50.1 L beside a pot of 10 L: are these mL? Give both in litres");
  });

  it("three or more that rise by about the first are totals, within a quarter of it; two are not", () => {
    expect(doubt(2, 4, 6)).toBe("the litres look like running totals (2, 4, 6): enter what was poured each time, not 12 L in all");
    expect(doubt(2, 4.5, 6)).toContain("running totals");
    expect(doubt(0, 2, 0, 4, 6)).toContain("running totals (2, 4, 6)");
    expect([doubt(2, 4), doubt(2, 4.6, 6.6), doubt(2, 2, 2), doubt(2, 4, 7)]).toEqual([undefined, undefined, undefined, undefined]);
  });
});

describe("untilTarget and flushStanding", () => {
  const aim = { band: coir, containerLitres: pot, waterEc: water, targetEc: target, plan: flushPlan(ec25(6), target, { containerLitres: pot, waterEc: water, medium: "coir" }) };
  const portion = aim.plan.portions[0]?.litres ?? NaN;

  it("a flush to 3.5 goes on to 3.15, 0.9 of it; over water of 3 to 3.3", () => {
    expect(flushTarget(ec25(3.5), water)).toBeCloseTo(3.15, 12);
    expect(flushTarget(ec25(3.5), ec25(3))).toBeCloseTo(3.3, 12);
  });

  it("in band, but not yet at the target, goes on; within half a step of it stops", () => {
    const at = (ec: number) => untilTarget(flushStop(flush([6], [ec, 2]), coir, pot), flush([6], [ec, 2]), target);
    expect(at(3.4)).toMatchObject({ answer: "keep going" });
    expect(at(3.4).reasons[0]).toBe("inside the band, not yet at 3.15 mS/cm: stopped here it rises above the band again");
    expect(at(3.154).answer).toBe("stop: in band");
    expect(at(5).reasons.join("; ")).not.toContain("inside the band");
    expect(at(1.5).answer).toBe("stop: enough water");
  });

  it("before anything is known of the pot it is a portion of the plan", () => {
    expect(flushStanding(flush([6]), aim)).toMatchObject({ nextLitres: portion, poured: 0, says: { answer: "keep going" }, left: { litres: "cannot say" } });
  });

  it("never more than the pot's own readings ask for, never more than a portion", () => {
    const near = flushStanding(flush([8.4], [5, 2], [3.3, 2]), aim);
    expect(near.left.litres).toBeLessThan(portion);
    expect(near).toMatchObject({ nextLitres: near.left.litres, poured: 4 });
    expect(flushStanding(flush([8.4], [7, 1], [6, 1]), aim).nextLitres).toBe(portion);
  });

  it("nothing more where the stop check says so, or the plan is empty", () => {
    expect(flushStanding(flush([6], [3, 2]), aim).nextLitres).toBeUndefined();
    expect(flushStanding(flush([6], [5, 2], [5.5, 2]), aim)).toMatchObject({ nextLitres: undefined, says: { answer: "pause and measure again" } });
    expect(flushStanding(flush([6]), { ...aim, plan: { ...aim.plan, portions: [] } }).nextLitres).toBeUndefined();
  });
});
