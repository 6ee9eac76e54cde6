import { weakCauses } from "./causes";
import { type Conclusion } from "./conclusion";
import { easeLoad, lookAtPlant, lookAtRoots, measureNext } from "./course/common-steps";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { wantedRunoff } from "./limits";
import { besides, levelReason } from "./reasons";
import { feedSays, measureSays, waterSays } from "./says/other-says";
import { mostUrgent } from "./urgency";
import { type Urgency } from "./words";
import { type WeaknessFound } from "./weakness";

/** A feed is raised by this share at a time. Common practice. */
const oneStep = 1.15;

/** Weak runoff, or too much water; `undefined` where there is neither. */
export function weakConclusion(facts: Facts, weakness: WeaknessFound): Conclusion | undefined {
  if (weakness === "none") return undefined;
  const { plant } = facts;
  const reasons = [levelReason(facts.ec, "ec", facts), levelReason(facts.ph, "ph", facts), ...besides(facts)];
  const causes = weakCauses(facts, weakness);
  const pressed: Urgency = plant.failing ? "today" : plant.ill ? "next watering" : "none";
  const urgency = (least: Urgency): Urgency => mostUrgent(least, pressed);
  switch (weakness) {
    case "short of feed":
      return { verdict: "short of feed", urgency: urgency("next watering"), causes: causes.length > 0 ? causes : ["not known"], steps: [raise(facts), measureNext()], reasons };
    case "too much water":
      return { verdict: "too much water", urgency: urgency("next watering"), causes, steps: [less(facts), ...(plant.ill ? [lookAtRoots(facts)] : []), measureNext()], reasons };
    case "washed out":
      return { verdict: "too much water", urgency: urgency("next watering"), causes, steps: [...(plant.failing ? [step("water less", "now", waterSays.letDrain), easeLoad(facts)] : [])], reasons };
    case "after plain water":
      return { verdict: "cannot say", urgency: urgency("watch"), causes: [], steps: [step("measure again now", "at the next watering", feedSays.backToFeed), ...(plant.ill ? [lookAtPlant(facts)] : [])], reasons };
    case "once":
      return { verdict: "confirm with a second reading", urgency: urgency("watch"), causes: [], steps: [step("measure again now", "at the next watering", measureSays.nextWatering), ...(plant.ill ? [lookAtPlant(facts)] : [])], reasons };
    case "unclear":
      return { verdict: "cannot say", urgency: urgency("watch"), causes: ["not known"], steps: [step("measure again now", "at the next watering", measureSays.measureBoth), ...(plant.ill ? [lookAtPlant(facts)] : [])], reasons };
  }
}

function raise({ feed, band }: Facts): Conclusion["steps"][number] {
  const { ec, usual, mixedWrong } = feed;
  if (ec !== undefined && usual !== undefined && mixedWrong === "weak") return step("raise the feed", "at the next watering", feedSays.remix(ec, usual), { ec: usual });
  const to = ec === undefined ? undefined : Math.min(ec * oneStep, Math.max(ec, band.feedEcHigh));
  return step("raise the feed", "at the next watering", feedSays.raise(to, ec === undefined || ec < band.ec[0]), { ec: to, share: ec === undefined ? undefined : oneStep });
}

function less({ water }: Facts): Conclusion["steps"][number] {
  const litres = water.kept === undefined || !(water.kept > 0) ? undefined : water.kept / (1 - wantedRunoff);
  return step("water less", "at the next watering", waterSays.less(water.share, litres), { litres, share: wantedRunoff });
}
