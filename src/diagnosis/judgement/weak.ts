import { isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";
import { weakCauses } from "./causes";
import { type Conclusion } from "./conclusion";
import { easeLoad, lookAtPlant, lookAtRoots, measureNext } from "./course/common-steps";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { wantedRunoff } from "./limits";
import { releaseOf } from "./release";
import { type SaltFound } from "./salt-found";
import { besides, levelReason } from "./reasons";
import { feedSays, measureSays, waterSays } from "./says/other-says";
import { mostUrgent } from "./urgency";
import { type Urgency, type VerdictWord } from "./words";
import { type WeaknessFound } from "./weakness";

/** A feed is raised by this share at a time; by more where it is itself weak and the plant pales. Common practice. */
const oneStep = 1.15;
const longStep = 1.35;

type Weakness = Exclude<WeaknessFound, "none">;

/** The word for each, and the least that it asks for. */
const words: Readonly<Record<Weakness, { readonly verdict: VerdictWord; readonly urgency: Urgency }>> = {
  "short of feed": { verdict: "short of feed", urgency: "next watering" },
  "too much water": { verdict: "too much water", urgency: "next watering" },
  "washed out": { verdict: "too much water", urgency: "next watering" },
  "kept short": { verdict: "short of feed", urgency: "next watering" },
  "after plain water": { verdict: "cannot say", urgency: "watch" },
  once: { verdict: "confirm with a second reading", urgency: "watch" },
  unclear: { verdict: "cannot say", urgency: "watch" },
};

/** Weak runoff, or too much water; `undefined` where there is neither. */
export function weakConclusion(facts: Facts, weakness: WeaknessFound): Conclusion | undefined {
  if (weakness === "none") return undefined;
  const { plant } = facts;
  if (weakness === "after plain water" && releaseOf(facts) !== undefined && !plant.ill) return fedFromWithin(facts);
  const { verdict, urgency } = words[weakness];
  const causes = weakCauses(facts, weakness);
  const isUnknown = causes.length === 0 && (weakness === "short of feed" || weakness === "unclear");
  return {
    verdict,
    urgency: mostUrgent(urgency, plant.failing ? "today" : plant.ill ? "next watering" : "none"),
    causes: isUnknown ? ["not known"] : causes,
    steps: stepsFor(facts, weakness),
    reasons: [levelReason(facts.ec, "ec", facts), levelReason(facts.ph, "ph", facts), ...besides(facts)],
  };
}

/** Up to so many times its limit salt waits until a soggy pot has dried back. Common practice. */
const saltThatWaits = 1.5;

/** A soggy pot whose plant fails or whose roots rot: no water is poured on it, and a little salt waits. */
export function soggyConclusion(facts: Facts, { multiple }: SaltFound): Conclusion | undefined {
  const { plant, ec } = facts;
  const areRootsBad = plant.signs.has("brown roots") || plant.signs.has("bad smell");
  const isSoggy = plant.signs.has("heavy pot") && (areRootsBad || (plant.failing && facts.water.runoff === "much"));
  if (!isSoggy || ec?.side !== "high" || !isBelow(multiple, saltThatWaits, quantities.saltRatio.resolution))
    return undefined;
  return {
    verdict: "too much water",
    urgency: plant.failing ? "today" : "next watering",
    causes: ["too much water"],
    steps: [
      step("water less", "now", waterSays.soggy),
      lookAtRoots(facts),
      ...(plant.failing ? [easeLoad(facts)] : []),
      measureNext(),
    ],
    reasons: [levelReason(ec, "ec", facts), levelReason(facts.ph, "ph", facts), ...besides(facts)],
  };
}

/** Weak, and meant to be: what lies in the medium feeds a plant that does well. */
const fedFromWithin = (facts: Facts): Conclusion => ({
  verdict: "cannot say",
  urgency: "none",
  causes: ["slow-release in the medium"],
  steps: [step("carry on", "in a week", feedSays.fedFromWithin)],
  reasons: [levelReason(facts.ec, "ec", facts), levelReason(facts.ph, "ph", facts), ...besides(facts)],
});

function stepsFor(facts: Facts, weakness: Weakness): Conclusion["steps"] {
  const { plant } = facts;
  const again = (says: string): Conclusion["steps"] => [
    step("measure again now", "at the next watering", says),
    ...(plant.ill ? [lookAtPlant(facts)] : []),
  ];
  switch (weakness) {
    case "short of feed":
      return [
        raise(facts),
        ...(facts.water.runoff === "much" ? [less(facts)] : []),
        measureFed(facts),
      ];
    case "too much water":
      return [less(facts), ...(plant.ill ? [lookAtRoots(facts)] : []), measureNext()];
    case "washed out":
      return plant.failing ? [step("water less", "now", waterSays.letDrain), easeLoad(facts)] : [];
    case "kept short":
      return plant.ill ? [lookAtRoots(facts)] : [];
    case "after plain water":
      return again(feedSays.backToFeed);
    case "once":
      return again(measureSays.nextWatering);
    case "unclear":
      return again(unclear(facts));
  }
}

/** The next reading; a pH a little out has its place in it. */
const measureFed = ({ ph }: Facts): Conclusion["steps"][number] =>
  ph?.side === "high" || ph?.side === "low"
    ? step("measure again now", "at the next watering", measureSays.phAfterFeed(ph.latest))
    : measureNext();

/** What was measured is not asked for: a weak feed is named, and left to whom it suits. */
function unclear({ feed, band }: Facts): string {
  if (feed.ec === undefined) return measureSays.measureBoth;
  const isWeak = isBelow(feed.ec, band.ec[0], quantities.ec.resolution);
  return isWeak ? feedSays.weakOnPurpose(feed.ec, band.ec[0]) : measureSays.nextWatering;
}

function raise({ feed, band, plant }: Facts): Conclusion["steps"][number] {
  const { ec, usual, mixedWrong } = feed;
  if (ec !== undefined && usual !== undefined && mixedWrong === "weak")
    return step("raise the feed", "at the next watering", feedSays.remix(ec, usual), { ec: usual });
  if (ec === undefined && feed.isWaterNow) {
    const from = band.ec[0];
    return step("raise the feed", "at the next watering", feedSays.startFeeding(from), { ec: from });
  }
  const isStarved = ec !== undefined && isBelow(ec, band.ec[0], quantities.ec.resolution) && plant.ill;
  const times = isStarved ? longStep : oneStep;
  const to = ec === undefined ? undefined : Math.min(ec * times, Math.max(ec, band.feedEcHigh));
  return step("raise the feed", "at the next watering", feedSays.raise(to, ec === undefined || ec < band.ec[0], band.ec[0]), {
    ec: to,
    share: ec === undefined ? undefined : times,
  });
}

function less({ water }: Facts): Conclusion["steps"][number] {
  const litres = water.kept === undefined || !(water.kept > 0) ? undefined : water.kept / (1 - wantedRunoff);
  return step("water less", "at the next watering", waterSays.less(water.share, litres), {
    litres,
    share: wantedRunoff,
  });
}
