import { type AcidityFound } from "../acidity";
import { type Conclusion } from "../conclusion";
import { easeLoad, lookAtRoots, measureTank, rootTemperature } from "../course/common-steps";
import { step } from "../course/step";
import { type Facts } from "../facts";
import { muchAlkalinity } from "../limits";
import { tankSays } from "../says/other-says";
import { phSays } from "../says/ph-says";
import { mostUrgent } from "../urgency";
import { type Cause } from "../words";
import { stirred } from "./tank-state";

/** Out of the band in pH alone: set back where it is far outside, in small steps otherwise. */
export function offPh(facts: Facts, acidity: AcidityFound, reasons: readonly string[]): Conclusion {
  const { band, plant, trust, feed } = facts;
  const isFar = acidity.degree === "far";
  const aim = band.phAim;
  const isHigh = acidity.side === "high";
  const isHard = isHigh && (feed.alkalinity === undefined || feed.alkalinity > muchAlkalinity);
  const set = isFar
    ? step("reset the pH", "now", phSays.resetTank(aim), { ph: aim })
    : step("steer the pH", "now", phSays.steerTank(aim), { ph: aim });
  if (acidity.sure !== "once" && isRotten(facts)) return rottenTank(facts, acidity, reasons);
  const steps = [
    ...(trust.uncalibrated ? [step("check the meter", "now", phSays.bufferFirst)] : []),
    ...stirred(facts),
    ...(acidity.sure === "once" ? [] : [set]),
    ...(isHard ? [step("treat the alkalinity", "in 3 to 7 days", phSays.treatAlkalinity(feed.alkalinity))] : []),
    ...(isHigh ? [] : [lookAtRoots(facts)]),
    ...(plant.failing ? [easeLoad(facts)] : []),
    step("measure again now", "24 h after", tankSays.stir),
  ];
  const urgency = mostUrgent(acidity.urgency, plant.failing ? "today" : "none");
  const causes: Cause[] = isHard ? ["alkalinity suspected"] : isHigh ? ["not known"] : ["acid feed suspected"];
  if (acidity.sure === "once")
    return {
      verdict: "confirm with a second reading",
      urgency,
      causes: [],
      steps: [...stirred(facts), measureTank()],
      reasons,
    };
  return { verdict: "pH out of range", urgency, causes, steps, reasons };
}

/** Another act than looking, so that both the roots and their water are told. */
const cooled = (facts: Facts): Conclusion["steps"] => {
  const temperature = rootTemperature(facts, "now");
  return temperature === undefined ? [] : [{ ...temperature, act: "ease the load" }];
};

const isRotten = ({ plant: { signs } }: Facts): boolean => signs.has("brown roots") || signs.has("bad smell");

/** Roots that rot sour the tank: a base is used up by the next day, so the solution goes first. */
const rottenTank = (facts: Facts, { urgency }: AcidityFound, reasons: readonly string[]): Conclusion => ({
  verdict: "pH out of range",
  urgency: mostUrgent(urgency, "today"),
  causes: ["not known"],
  steps: [
    step("change the tank", "now", tankSays.changeRotten(facts.band.phAim), { ph: facts.band.phAim }),
    lookAtRoots(facts),
    ...cooled(facts),
    ...(facts.plant.failing ? [easeLoad(facts)] : []),
    step("measure again now", "24 h after", tankSays.stir),
  ],
  reasons,
});
