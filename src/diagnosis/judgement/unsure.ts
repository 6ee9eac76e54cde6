import { isAbove } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type AcidityFound } from "./acidity";
import { type Conclusion } from "./conclusion";
import {
  checkMeter,
  easeLoad,
  isDriedOut,
  lookAtPlant,
  measureNext,
  measureTwice,
  rewetted,
} from "./course/common-steps";
import { flushFigures } from "./course/flush-figures";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { farPh, strongMultiple, wantedRunoff } from "./limits";
import { inputPhSteps, inputSteps } from "./input";
import { besides, levelReason } from "./reasons";
import { type CourseStep } from "./pot-judgement";
import { type SaltFound } from "./salt-found";
import { measureSays } from "./says/other-says";
import { sameDayApart } from "./same-day";
import { saltSays } from "./says/salt-says";
import { mostUrgent } from "./urgency";
import { type Urgency } from "./words";

/** A meter that cannot be believed: it is checked, and nothing is done on its word; the plant is spared meanwhile. */
export function doubtedConclusion(facts: Facts, byReadings: Urgency): Conclusion {
  const { trust, plant } = facts;
  return {
    verdict: "check the meter",
    urgency: mostUrgent("today", plant.failing ? "now" : byReadings),
    causes: ["meter doubted"],
    steps: [...checkMeter(), ...(plant.failing ? [easeLoad(facts)] : [])],
    reasons: [...trust.doubts, ...besides(facts)],
  };
}

/** No runoff was read: the plant may speak, the pot does not. */
export function unreadConclusion(facts: Facts): Conclusion {
  const { plant, band } = facts;
  const what = band.medium === "water culture" ? "no reading of the tank yet" : "no runoff reading yet";
  const input = inputSteps(facts, false);
  const steps = [
    step("measure again now", plant.failing ? "now" : "at the next watering", measureSays.measureBoth),
    ...input.steps,
    ...(plant.ill ? [lookAtPlant(facts)] : []),
    ...(plant.failing ? [easeLoad(facts)] : []),
  ];
  return {
    verdict: "cannot say",
    urgency: plant.failing ? "today" : "next watering",
    causes: input.causes.length > 0 ? input.causes : ["not known"],
    steps,
    reasons: [what, ...besides(facts)],
  };
}

/**
 * One reading outside that nothing agrees with yet: a little is read again at the next watering, far is read again
 * now.
 */
export function unsureConclusion(facts: Facts, salt: SaltFound, acidity: AcidityFound): Conclusion | undefined {
  const apart = sameDayApart(facts);
  if (apart.size > 0) return twoThatDisagree(facts, apart);
  const { ec, ph, plant } = facts;
  const isSaltOnce = salt.degree !== "none" && salt.sure === "once";
  const isPhOnce = acidity.degree !== "none" && acidity.sure === "once";
  const isBack =
    !salt.chosen &&
    [ec, ph].some(
      (level) => level?.side === "inside" && level.outTwiceBefore && !(level === ec && level.sideBefore === "low"),
    );
  if (!isSaltOnce && !isPhOnce && !isBack) return undefined;
  const isFar = (isSaltOnce && salt.far) || (isPhOnce && (ph?.beyond ?? 0) >= farPh);
  const isUrgent = isFar || ((isSaltOnce || isPhOnce) && plant.failing);
  const input = inputPhSteps(facts);
  const [first, second] =
    isPhOnce && !isSaltOnce
      ? [levelReason(ph, "ph", facts), levelReason(ec, "ec", facts)]
      : [levelReason(ec, "ec", facts), levelReason(ph, "ph", facts)];
  return {
    verdict: "confirm with a second reading",
    urgency: mostUrgent(
      isSaltOnce ? salt.urgency : "watch",
      isPhOnce ? acidity.urgency : "watch",
      plant.failing ? "today" : plant.ill || input.length > 0 ? "next watering" : "none",
    ),
    causes: input.length > 0 ? ["input pH out of band"] : [],
    steps: unsureSteps(facts, isSaltOnce ? salt : undefined, { isUrgent, input }),
    reasons: [first, second, ...besides(facts)],
  };
}

/** Two samples of one hour that cannot both be true: a third decides, with a probe that was tried. */
function twoThatDisagree(facts: Facts, apart: ReturnType<typeof sameDayApart>): Conclusion {
  const { ec, ph, plant } = facts;
  const said = [...apart].map(([name, pair]) => `${name === "ec" ? "EC" : "pH"} ${pair.join(" and ")}`).join(", ");
  return {
    verdict: "confirm with a second reading",
    urgency: plant.failing ? "today" : "next watering",
    causes: [],
    steps: [
      step("measure again now", "now", measureSays.thirdSample(said)),
      ...(plant.ill ? [lookAtPlant(facts)] : []),
      ...(plant.failing ? [easeLoad(facts)] : []),
    ],
    reasons: [
      `${said} within hours: one of the two is wrong`,
      levelReason(ec, "ec", facts),
      levelReason(ph, "ph", facts),
      ...besides(facts),
    ],
  };
}

/** Until the second reading: how soon it is due, and what to do about what is poured. */
interface Until {
  readonly isUrgent: boolean;
  readonly input: readonly CourseStep[];
}

/**
 * Read again, now or at the next watering; a flush stands only behind a second sample that agrees, well above the
 * limit.
 */
function unsureSteps(facts: Facts, salt: SaltFound | undefined, { isUrgent, input }: Until): CourseStep[] {
  const { plant, band, water } = facts;
  if (isDriedOut(facts)) return [...rewetted(), easeLoad(facts)];
  if (!isUrgent) {
    const asNow = step("measure again now", "at the next watering", measureSays.nextWatering);
    return [...input, input.length > 0 ? measureNext() : asNow, ...(plant.ill ? [lookAtPlant(facts)] : [])];
  }
  const isScant = salt !== undefined && (water.runoff === "none" || water.runoff === "little");
  const again = isScant
    ? [step("let more run off", "now", measureSays.drainSample(wantedRunoff), { share: wantedRunoff }), measureNext()]
    : measureTwice();
  const steps = [...again, ...input, ...(plant.failing ? [easeLoad(facts)] : [])];
  const isHigh = salt !== undefined && isAbove(salt.multiple, strongMultiple, quantities.saltRatio.resolution);
  if (!isHigh || band.medium === "soil") return steps;
  const figures = flushFigures(facts);
  const { ph, target: ec, most: litres } = figures;
  return [...steps, step("flush", isScant ? "at the next watering" : "within the hour", saltSays.flushIfAgreed(figures), { ph, ec, litres })];
}
