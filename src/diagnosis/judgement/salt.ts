import { isOwnBand } from "../../bands/band";
import { isAbove, isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Facts } from "./facts";
import { type Level } from "./level";
import {
  chosenFeedRatio,
  drainMultiple,
  extremeEc,
  extremeMultiple,
  riseShare,
  stayingRatio,
  strongMultiple,
} from "./limits";
import { isFallBy } from "./reading-steps";
import { reboundOf } from "./rebound";
import { noSalt, type SaltFound } from "./salt-found";
import { urgencyOf } from "./salt-urgency";

/**
 * A fall from one sample to the next by this share is more than two readings can be off: 3 % each [usgs-nfm], rounded
 * up.
 */
const surelyFallen = 0.06;

/**
 * The degree of salt: by multiples of the upper limit, the trend and the plant; a drain by its rise above the feed as
 * well.
 *
 * Errs to the milder course while only one reading speaks, or the feed of an ordinary drain is not known; a ratio or a
 * volume alone never makes it milder than not knowing it. Bark has no multiples: its limits are too low for them.
 *
 * Source:   src/diagnosis/judgement/limits.ts
 */
export function saltOf(facts: Facts): SaltFound {
  const { ec, band, feed, plant } = facts;
  if (ec === undefined) return noSalt;
  const limit = band.ec[1];
  const ratio = feed.ec === undefined ? undefined : ec.latest / feed.ec;
  const multiple = ec.latest / limit;
  const isChosen =
    feed.chosen && band.sample === "drain" && !plant.ill && (plant.clean || band.medium === "mineral wool");
  if (isChosen) return chosenFeed({ ec, ratio, multiple });
  if (ec.side !== "high" || isFedBark(facts)) return { ...noSalt, multiple, ratio };
  const far = isAbove(multiple, strongMultiple, 0.001) || (ec.leapt && ec.latest > (ec.before ?? 0));
  const sure = ec.witness === "agreed" ? "named" : ec.witness === "sole" && far && countsAlone(facts) ? "sole" : "once";
  const degree = isExtreme(facts, ec) ? "extreme" : isStrong(facts, { ec, multiple, ratio }) ? "strong" : "little";
  const harmlessSoFar = ec.steady && plant.clean;
  const canWait = band.medium === "bark" || isBelow(multiple, extremeMultiple, quantities.ec.resolution);
  const falling = isFalling(ec) && degree !== "extreme" && !plant.ill && canWait;
  const found = { degree, sure, multiple, far, ratio, harmlessSoFar, falling, chosen: false } as const;
  return { ...found, urgency: urgencyOf(found, facts) };
}

/** Drain this near its feed holds nothing that has gathered. Common practice. */
const nearFeed = 1.3;

/**
 * The limits of bark are those of water and slow-release: where liquid feed goes in and comes out hardly stronger,
 * nothing has gathered, and a flush would be undone by the next feed.
 */
export function isFedBark({ band, ec, feed, plant }: Facts): boolean {
  if (band.medium !== "bark" || isOwnBand(band) || ec === undefined || feed.ec === undefined) return false;
  const isBurnt = plant.signs.has("tip burn") || plant.signs.has("crust");
  return !isBurnt && isBelow(ec.latest + (feed.waterEc ?? 0), nearFeed * feed.ec, quantities.ec.resolution);
}

/** A first and only reading: a sample taken on purpose counts, a cup of drain only when the plant agrees. */
export const countsAlone = ({ band, plant }: Facts): boolean => band.sample !== "drain" || plant.ill;

/** Falling by its trend, and the latest step by itself more than a meter can be off. */
const isFalling = ({ trend, latest, before }: Level): boolean =>
  trend === "falling" && before !== undefined && isFallBy(surelyFallen, before, latest);

/** A feed that is strong on purpose: salt is what climbs, or stands further above the feed than growers let it. */
function chosenFeed({
  ec,
  ratio = 1,
  multiple,
}: {
  readonly ec: Level;
  readonly ratio: number | undefined;
  readonly multiple: number;
}): SaltFound {
  const stays =
    !isBelow(ratio, chosenFeedRatio, quantities.saltRatio.resolution) || (ec.trend === "rising" && ec.side === "high");
  if (!stays) return { ...noSalt, multiple, ratio, chosen: true };
  const sure = ec.witness === "agreed" ? "named" : ec.witness;
  return { ...noSalt, degree: "strong", sure, multiple, far: true, ratio, urgency: "today" };
}

/**
 * A rise makes little salt strong, unless feed on the ramp since a flush explains all of it: then the feed goes back.
 * An ordinary drain that rises a little above its limit is thinned, until feed, plant or distance bear the rise out.
 */
function isStrong(
  facts: Facts,
  { ec, multiple, ratio }: { ec: Level; multiple: number; ratio: number | undefined },
): boolean {
  const { band, feed, plant } = facts;
  const isClear = band.sample !== "drain" || isAbove(multiple, 1 + riseShare, 0.001);
  const isRising = ec.trend === "rising" && (ec.sideBefore === "high" || plant.ill) && isClear;
  const isOrdinaryDrain = band.sample === "drain" && band.medium !== "bark";
  const staysBehind = ratio !== undefined && !isBelow(ratio, stayingRatio, quantities.saltRatio.resolution);
  const isBorneOut = (staysBehind && !plant.clean) || feed.tooStrong || plant.ill;
  const isFar = isAbove(multiple, strongMultiple, 0.001);
  if (isRising && reboundOf(facts) !== "fed" && (!isOrdinaryDrain || isFar || isBorneOut)) return true;
  if (!isFar) return false;
  return !isOrdinaryDrain || isBorneOut || !isBelow(multiple, drainMultiple, quantities.ec.resolution);
}

/** An emergency needs a level, and a rise, a failing plant, or a second sample of the same day that agrees. */
function isExtreme({ band, plant }: Facts, ec: Level): boolean {
  if (band.medium === "bark") return plant.failing && ec.latest >= extremeMultiple * band.ec[1];
  const classEnd = isOwnBand(band) ? Infinity : extremeEc[band.sample];
  const least = Math.min(extremeMultiple * band.ec[1], classEnd);
  const level = band.sample === "drain" ? Math.max(least, drainMultiple * band.ec[1]) : least;
  if (isBelow(ec.latest, level, quantities.ec.resolution)) return false;
  return ec.leaptUp || plant.failing || ec.sameDay;
}
