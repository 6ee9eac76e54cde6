import { isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type AcidityFound } from "./acidity";
import { releaseOf } from "./release";
import { type Facts } from "./facts";
import { isInputPhWrong, isSouredWithin } from "./input";
import { acidifiedPh, muchAlkalinity, stayingRatio, wantedRunoff } from "./limits";
import { reboundOf } from "./rebound";
import { type SaltFound } from "./salt-found";
import { type WeaknessFound } from "./weakness";
import { type Cause } from "./words";

const when = (holds: boolean, cause: Cause): Cause[] => (holds ? [cause] : []);

/**
 * Where the salt comes from, as far as the log tells: enough drains and it climbs all the same, so the feed is more
 * than the plant takes; a cause that needs no guess stands before one that does.
 */
export function saltCauses(facts: Facts, salt: SaltFound): Cause[] {
  const { feed, water, plant, ec } = facts;
  const isDry = plant.signs.has("light pot") && water.runoff !== "enough" && water.runoff !== "much";
  const isDraining = water.runoff === "enough" || water.runoff === "much";
  const climbs =
    feed.ec !== undefined && ec?.trend === "rising" && !feed.waterIsSalty && releaseOf(facts) === undefined;
  const isNearFeed = isBelow(salt.ratio ?? 0, stayingRatio, quantities.saltRatio.resolution);
  const isFeedNear = isDraining && ((isNearFeed && (feed.nearLimit || climbs)) || (climbs && drainsAsWanted(facts)));
  return [
    ...when(releaseOf(facts) !== undefined, "slow-release in the medium"),
    ...when(reboundOf(facts) === "from within", "rebound after a flush"),
    ...when(feed.mixedWrong === "strong", "feed mixed wrong"),
    ...when(feed.mixedWrong !== "strong" && !salt.chosen && (feed.tooStrong || isFeedNear), "feed too strong"),
    ...when(feed.waterIsSalty, "water itself salty"),
    ...when(water.runoff === "none" || isDry, "too little water"),
    ...when(water.runoff === "little" || (water.runoff === "none" && !isDry), "too little runoff"),
  ];
}

/** As much drains as is asked for: what gathers all the same was fed. */
const drainsAsWanted = ({ water }: Facts): boolean =>
  water.share !== undefined && !isBelow(water.share, wantedRunoff, quantities.leachingFraction.resolution);

/**
 * What moves the pH: what is poured first, then the water's alkalinity where nothing acidifies it, then the feed's
 * nitrogen.
 */
export function phCauses(facts: Facts, { side }: AcidityFound): Cause[] {
  const { feed, band } = facts;
  const isInputOut = isInputPhWrong(facts);
  const isHard = feed.alkalinity !== undefined && feed.alkalinity > muchAlkalinity;
  const isUnbuffered = band.medium === "coir" || band.medium === "mineral wool" || band.medium === "inert";
  const isAcidified = feed.ph !== undefined && feed.ph <= acidifiedPh;
  const isRaw = !isAcidified && !(isInputOut && isUnbuffered) && feed.alkalinity === undefined;
  return [
    ...when(isInputOut, "input pH out of band"),
    ...when(side === "high" && feed.phSide !== "low" && (isHard || isRaw), "alkalinity suspected"),
    ...when(side === "low" && (!isInputOut || feed.isAcid || isSouredWithin(facts)), "acid feed suspected"),
  ];
}

export function weakCauses({ feed, ec }: Facts, weakness: WeaknessFound): Cause[] {
  switch (weakness) {
    case "too much water":
      return ["too much water"];
    case "washed out":
    case "kept short":
      return ["washed out"];
    case "short of feed":
      if (feed.mixedWrong === "weak") return ["feed mixed wrong"];
      return when(
        feed.ec !== undefined && ec !== undefined && isBelow(ec.latest, feed.ec, quantities.ec.resolution),
        "plants take more salt than water",
      );
    case "none":
    case "after plain water":
    case "once":
    case "unclear":
      return [];
  }
}
