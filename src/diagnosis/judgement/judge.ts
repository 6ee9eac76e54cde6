import { type Band } from "../../bands/band";
import { isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";
import { acidityOf, type AcidityFound } from "./acidity";
import { phCauses, saltCauses } from "./causes";
import { type Conclusion } from "./conclusion";
import { phCourse } from "./course/ph-course";
import { saltCourse } from "./course/salt-course";
import { soilMeanwhile } from "./course/soil-course";
import { dated, settled, step } from "./course/step";
import { type Facts, factsOf, type JudgeOptions } from "./facts";
import { flushingConclusion } from "./flushing";
import { isInputPhFar, mendInputPh } from "./input";
import { marginalPh } from "./limits";
import { type PotJudgement } from "./pot-judgement";
import { type PotReading } from "./pot-reading";
import { besides, levelReason } from "./reasons";
import { recovering } from "./recovering";
import { saltOf } from "./salt";
import { type SaltFound } from "./salt-found";
import { measureSays } from "./says/other-says";
import { tankConclusion, tankReadings } from "./tank/tank";
import { doubtedConclusion, unreadConclusion, unsureConclusion } from "./unsure";
import { mostUrgent } from "./urgency";
import { soggyConclusion, weakConclusion } from "./weak";
import { weaknessOf } from "./weakness";
import { wellConclusion } from "./well";
import { type Cause, type Urgency } from "./words";

export { type JudgeOptions } from "./facts";

/**
 * The judgement of one pot: what an expert would say at it, and what to do, in order, with this pot's own figures.
 *
 * The one value behind verdict, course, flush sheet, DIAGNOSE, pane and command line. It errs to doing less: trust
 * comes before what the readings say, one reading alone never leads to a flush, and salt is down before anything is
 * done about pH.
 *
 * Formula:  in this order: the phase (flush under way or just over), doubts about the meter, the degree of salt and of
 *           pH, their causes, weak runoff, the plant; each in a file of this folder
 * Valid:    readings of one pot and one way of sampling; several pots are never weighed together
 * Source:   src/diagnosis/judgement/limits.ts, a source per limit
 *
 * @param readings oldest first; rows that hold nothing change nothing
 * @example judge([{ runoffPh: 6, runoffEc: 4.6 }, { runoffPh: 6.1, runoffEc: 4.9 }], bandFor("coir")).verdict // "salt buildup"
 */
export function judge(readings: readonly PotReading[], band: Band, options: JudgeOptions = {}): PotJudgement {
  const facts = factsOf(band.medium === "water culture" ? tankReadings(readings) : readings, band, options);
  const { verdict, urgency, causes, steps, reasons, limitsThatFit } = concluded(facts);
  const course = dated(settled(steps), facts.lastDay, facts.phase.flush.at(-1)?.day);
  return {
    verdict,
    urgency,
    phase: facts.phase.phase,
    causes,
    course: filled(course, step("measure again now", "at the next watering", measureSays.nextWatering)),
    reasons: filled([...new Set(reasons)], "no reading yet"),
    restsOn: placesOf(facts),
    ...(limitsThatFit === undefined ? {} : { limitsThatFit }),
  };
}

/** A list that is never empty. */
const filled = <T>([first, ...others]: readonly T[], otherwise: T): readonly [T, ...T[]] => [
  first ?? otherwise,
  ...others,
];

function placesOf({ ec, ph, evidence, phase }: Facts): readonly number[] {
  const flush = phase.phase === "flushing" ? phase.flush.map(({ place }) => place) : [];
  const latest = evidence.slice(-2).map(({ place }) => place);
  return [...new Set([...(ec?.places ?? []), ...(ph?.places ?? []), ...latest, ...flush])].sort((a, b) => a - b);
}

function concluded(facts: Facts): Conclusion {
  if (facts.phase.phase === "flushing") return flushingConclusion(facts);
  if (facts.evidence.length === 0)
    return facts.phase.phase === "after a flush"
      ? recovering(facts, unreadConclusion(facts))
      : unreadConclusion(facts);
  const isTank = facts.band.medium === "water culture";
  const salt = saltOf(facts);
  const acidity = acidityOf(facts);
  if (facts.trust.doubts.length > 0) return doubtedConclusion(facts, mostUrgent(salt.urgency, acidity.urgency));
  if (isTank) return tankConclusion(facts);
  const found =
    soggyConclusion(facts, salt) ??
    troubled(facts, salt, acidity) ??
    unsureConclusion(facts, salt, acidity) ??
    weakConclusion(facts, weaknessOf(facts)) ??
    wellConclusion(facts, salt);
  return facts.phase.phase === "after a flush" ? recovering(facts, found) : found;
}

/** A trouble that has its name: salt, pH or both; salt is dealt with first. */
function troubled(facts: Facts, salt: SaltFound, acidity: AcidityFound): Conclusion | undefined {
  const isSalt = salt.degree !== "none" && salt.sure !== "once";
  const isPh = acidity.degree !== "none" && acidity.sure !== "once" && !isOnlyHungry(facts, acidity);
  const isVagueSoil = facts.band.medium === "soil" && facts.band.sample === "drain";
  const [ec, ph] = [levelReason(facts.ec, "ec", facts), levelReason(facts.ph, "ph", facts)];
  const others = besides(facts);
  if (isSalt) {
    const causes = known([
      ...saltCauses(facts, salt),
      ...(isPh ? phCauses(facts, acidity).filter((cause) => cause === "input pH out of band") : []),
    ]);
    return {
      verdict: isPh && !isVagueSoil ? "salt buildup and pH out of range" : "salt buildup",
      urgency: mostUrgent(salt.urgency, acidity.urgency),
      causes,
      steps: [...saltSteps(facts, salt, causes), ...(isPh && !isVagueSoil ? phLater(facts, causes) : [])],
      reasons: [ec, ph, ...others],
    };
  }
  if (!isPh) return undefined;
  const causes = known(phCauses(facts, acidity));
  return {
    verdict: isVagueSoil ? "cannot say" : "pH out of range",
    urgency: mostUrgent(isVagueSoil ? vagueUrgency(facts) : acidity.urgency, salt.urgency),
    causes: isVagueSoil ? ["not known"] : causes,
    steps: [...(isVagueSoil ? soilMeanwhile(facts) : []), ...phCourse(facts, acidity, causes)],
    reasons: [ph, ec, ...others],
  };
}

/**
 * A feed whose pH harms by itself is mended as well: the flush is poured at the pot's own pH, what follows would not
 * be.
 */
function saltSteps(facts: Facts, salt: SaltFound, causes: readonly Cause[]): Conclusion["steps"] {
  return [...saltCourse(facts, salt, causes), ...(isHarmful(facts, causes) ? mendInputPh(facts) : [])];
}

const isHarmful = (facts: Facts, causes: readonly Cause[]): boolean =>
  causes.includes("input pH out of band") && isInputPhFar(facts);

/** A pH that is named has its place in the course: after the salt. At which pH to pour is said once. */
function phLater(facts: Facts, causes: readonly Cause[]): Conclusion["steps"] {
  const { ph, band } = facts;
  if (ph === undefined) return [];
  const aim = isHarmful(facts, causes) ? undefined : band.phAim;
  return [step("measure again now", "in 3 to 7 days", measureSays.phAfterSalt(ph.latest, aim))];
}

/** A pot that starves is fed, whatever a pH next to its band says; a pH far out keeps it from taking the feed up. */
const isOnlyHungry = (facts: Facts, { degree }: AcidityFound): boolean =>
  degree === "mild" &&
  isBelow(facts.ph?.beyond ?? 0, marginalPh, quantities.ph.resolution) &&
  weaknessOf(facts) === "short of feed";

/** The drain of soil tells little of its pH; a plant that fails cannot wait for the test. */
const vagueUrgency = ({ plant }: Facts): Urgency => (plant.failing ? "today" : "next watering");

const known = (causes: readonly Cause[]): readonly Cause[] =>
  causes.length === 0 ? ["not known"] : [...new Set(causes)];
