import { type Conclusion } from "./conclusion";
import { areRootsCold, easeLoad, lookAtPlant } from "./course/common-steps";
import { elsewhere } from "./course/elsewhere";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { runoffForShy, tooSaltyForCrop } from "./salt-shy";
import { measureSays } from "./says/other-says";
import { plantSays } from "./says/plant-says";
import { mostUrgent } from "./urgency";

/** Readings fine, plant not: the plant wins; what was not measured is no comfort. */
export function contradicted(facts: Facts, reasons: readonly string[]): Conclusion {
  const { plant } = facts;
  const shy = tooSaltyForCrop(facts);
  const isDry = plant.signs.has("light pot") && plant.failing;
  const missing =
    facts.ec === undefined ? measureSays.measureEcNow : facts.ph === undefined ? measureSays.measurePhNow : undefined;
  const steps = [
    ...(missing === undefined ? [] : [step("measure again now", "now", missing)]),
    ...(isDry ? [step("re-wet slowly", "now", plantSays.rewet)] : []),
    ...(isDry ? [step("measure again now", "within the hour", measureSays.whenWet)] : unexplained(facts, shy)),
    ...(plant.failing && !areRootsCold(facts) ? [easeLoad(facts)] : []),
  ];
  return {
    verdict: shy === undefined && facts.ec !== undefined && !isDry ? "in band" : "cannot say",
    urgency: mostUrgent("next watering", plant.failing ? "today" : "none"),
    causes: isDry ? ["too little water"] : ["not known"],
    steps,
    reasons,
  };
}

/**
 * Neither salt nor pH nor drought. What the log itself explains is said; otherwise the roots, the air and the medium
 * itself are looked at.
 */
function unexplained(facts: Facts, shy: string | undefined): Conclusion["steps"] {
  if (shy !== undefined)
    return [step("look at the plant", "now", plantSays.saltShy(shy)), ...runoffForShy(facts, shy)];
  const known = elsewhere(facts);
  if (known !== undefined) return [known];
  return [lookAtPlant(facts), step("test the medium", "at the next watering", measureSays.testMedium)];
}
