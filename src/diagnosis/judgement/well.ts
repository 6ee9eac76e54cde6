import { type Medium } from "../../bands/media-table";
import { isAbove } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Conclusion } from "./conclusion";
import { contradicted } from "./contradicted";
import { isDriedOut, measureNext, rootTemperature } from "./course/common-steps";
import { soilMeanwhile } from "./course/soil-course";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { inputSteps } from "./input";
import { sideOf } from "./level";
import { chosenFeedRatio, ecToleranceShare, muchAlkalinity } from "./limits";
import { type LimitsThatFit } from "./pot-judgement";
import { besides, levelReason } from "./reasons";
import { type SaltFound } from "./salt-found";
import { pilingUp } from "./piling-up";
import { runoffForShy, tooSaltyForCrop } from "./salt-shy";
import { saltSays } from "./says/salt-says";
import { measureSays } from "./says/other-says";
import { plantSays } from "./says/plant-says";

/**
 * Readings in band: carry on, unless the plant says otherwise, what is poured is out, or the crop is shyer of salt
 * than its band.
 *
 * Errs to looking: readings fine and a plant that fails are never "carry on".
 */
export function wellConclusion(facts: Facts, salt: SaltFound): Conclusion {
  const reasons = [levelReason(facts.ec, "ec", facts), levelReason(facts.ph, "ph", facts), ...besides(facts)];
  if (facts.plant.ill && isVagueSoil(facts) && !isDriedOut(facts)) return testedSoil(facts, reasons);
  const piling = isVagueSoil(facts) ? undefined : pilingUp(facts, salt, reasons);
  if (piling !== undefined && tooSaltyForCrop(facts) === undefined) return piling;
  if (facts.plant.ill) return contradicted(facts, reasons);
  return notQuiteWell(facts, salt, reasons) ?? carriedOn(facts, salt, reasons);
}

/** In band as far as it goes: EC never read, a salt-shy crop, or what is poured is out. */
function notQuiteWell(facts: Facts, { chosen }: SaltFound, reasons: readonly string[]): Conclusion | undefined {
  const unknown = { verdict: "cannot say", urgency: "watch", causes: ["not known"], reasons } as const;
  if (facts.ec === undefined) {
    return { ...unknown, steps: [step("measure again now", "at the next watering", measureSays.measureEc)] };
  }
  const shy = tooSaltyForCrop(facts);
  if (shy !== undefined) {
    const look = step("look at the plant", "at the next watering", plantSays.saltShy(shy));
    return { ...unknown, steps: [look, ...runoffForShy(facts, shy), measureNext()] };
  }
  if (isVagueSoil(facts)) return testedSoil(facts, reasons);
  const kept = keptPh(facts);
  if (kept !== undefined) {
    const leave = step("carry on", "in a week", plantSays.potKeepsPh(facts.feed.ph ?? NaN, kept));
    return { verdict: "in band", urgency: "watch", causes: ["input pH out of band"], steps: [leave], reasons };
  }
  const { steps, causes } = inputSteps(facts, chosen);
  if (steps.length === 0) return undefined;
  return { verdict: "in band", urgency: "next watering", causes, steps: [...steps, measureNext()], reasons };
}

/** So many times the pot has shown that it keeps its own pH. Common practice. */
const keptTimes = 3;
/** Media that follow what is poured keep nothing. Common practice. */
const follows: ReadonlySet<Medium | undefined> = new Set(["mineral wool", "inert", "water culture"]);

/**
 * How often the runoff stayed inside though what is poured stands above the band: a pH above the band does nothing by
 * itself where the alkalinity is low (common practice). `undefined` where it is not shown, or the pot is on its way up.
 */
function keptPh({ feed, ph, evidence, band }: Facts): number | undefined {
  const rows = evidence.slice(-keptTimes);
  const isKept = rows.every(
    ({ inputPh, runoffPh }) =>
      inputPh !== undefined &&
      inputPh > band.ph[1] &&
      runoffPh !== undefined &&
      sideOf(runoffPh, "ph", band) === "inside",
  );
  const isQuiet = ph?.trend === "none" && !feed.tooStrong && (feed.alkalinity ?? 0) <= muchAlkalinity;
  return rows.length === keptTimes && !follows.has(band.medium) && feed.phSide === "high" && isKept && isQuiet ? keptTimes : undefined;
}

/** The drain of soil, above its limit by more than a meter and less than soil can mislead. */
const isVagueSoil = ({ band, ec }: Facts): boolean =>
  band.medium === "soil" &&
  ec?.side === "barely high" &&
  isFarAbove(ec.latest, band) &&
  ec.before !== undefined &&
  isFarAbove(ec.before, band);

const isFarAbove = (ec: number, { ec: [, high] }: Facts["band"]): boolean =>
  isAbove(ec, high * (1 + ecToleranceShare), quantities.ec.resolution);

/** Twice above in soil: nothing is washed before a test, and nothing is fed on top where the leaves are burnt. */
function testedSoil(facts: Facts, reasons: readonly string[]): Conclusion {
  const { plant } = facts;
  const stop = step("lower the feed", "at the next watering", saltSays.stopFeeding(facts.feed.waterIsSalty), { share: 0 });
  return {
    verdict: "cannot say",
    urgency: "next watering",
    causes: ["not known"],
    steps: [
      ...soilMeanwhile(facts),
      step("test the medium", "now", measureSays.testSoil),
      ...(plant.ill ? [stop] : []),
      measureNext(),
    ],
    reasons,
  };
}

/** Nothing to mend; a strong feed by choice is said once. */
function carriedOn(facts: Facts, salt: SaltFound, reasons: readonly string[]): Conclusion {
  const { feed, water } = facts;
  const well = { verdict: "in band", urgency: isDrifting(facts) ? "watch" : "none", causes: [], reasons } as const;
  if (salt.chosen && feed.ec !== undefined) {
    const times = salt.ratio === undefined ? "" : `, and the runoff is ${salt.ratio.toFixed(1)} times it`;
    const said = `the feed has stood at ${feed.ec} mS/cm for ${feed.chosenFor}: a choice${times}`;
    const limitsThatFit = limitsFor(facts, feed.ec);
    const carryOn = step("carry on", "in a week", plantSays.chosenFeed(feed.ec, feed.chosenFor, limitsThatFit.ec));
    return { ...well, urgency: "none", steps: [carryOn], reasons: [said, ...reasons], limitsThatFit };
  }
  if (facts.ph === undefined) {
    const measure = step("measure again now", "at the next watering", measureSays.measurePh);
    return { ...well, urgency: "watch", steps: [measure] };
  }
  if ([facts.ec, facts.ph].some((level) => level?.witness === "sole" && level.side.startsWith("barely"))) {
    const again = step("measure again now", "at the next watering", measureSays.nextWatering);
    return { ...well, urgency: "watch", steps: [again] };
  }
  const temperature = rootTemperature(facts, "at the next watering");
  if (temperature !== undefined) return { ...well, urgency: "watch", steps: [temperature, measureNext()] };
  const isShareRight = water.runoff === "enough" && water.share !== undefined;
  const says = isShareRight ? plantSays.keepShare(water.share) : plantSays.carryOn;
  return { ...well, steps: [step("carry on", "in a week", says)] };
}

/**
 * The drain of a strong feed by choice may stand so far above it; rounded down, so that the drain is never let higher.
 */
function limitsFor({ band }: Facts, feedEc: number): LimitsThatFit {
  return { ph: band.ph, ec: [band.ec[0], Math.floor(10 * chosenFeedRatio * feedEc + 1e-9) / 10] };
}

/** At a limit, or drifting beyond chance, though still in band. */
function isDrifting({ ec, ph }: Facts): boolean {
  return [ec, ph].some((level) => level !== undefined && (level.side.startsWith("barely") || level.trend !== "none"));
}
