import { overFlushLimit } from "../../flush/over-flush-limit";
import { isAbove, isBelow } from "../../maths/compare";
import { type Litres, quantities } from "../../quantities";
import { type Facts } from "./facts";
import { riseShare } from "./limits";
import { isFallBy } from "./reading-steps";

/** What weak runoff means, or a pot that gets more water than it drinks. */
export type WeaknessFound =
  | "none"
  | "short of feed"
  | "too much water"
  | "washed out"
  | "kept short"
  | "after plain water"
  | "once"
  | "unclear";

const paleness = ["pale old leaves", "pale leaves", "pale new growth", "stunted", "purple leaves"] as const;

/** Runoff this far below the feed after a flush is washed out, not on its way up. Common practice. */
const washedShare = 0.75;

/** From this day after a flush feed has gone in: weak runoff is no longer the flush's own water. Common practice. */
const rampUnderWay = 3;

/**
 * Weak runoff: short of feed only when feed went in, not too much drains, it falls or the plant pales, and no flush
 * came before.
 *
 * Errs to "unclear": a stronger feed on a wrong guess is salt.
 *
 * Source:   common practice
 */
export function weaknessOf(facts: Facts): WeaknessFound {
  const { ec, plant, water, phase, feed, band } = facts;
  if (ec?.side === "high") return "none";
  const isLow = ec?.side === "low";
  if (phase.phase === "after a flush") {
    const isBehindFeed =
      ec !== undefined &&
      (feed.ec === undefined || isBelow(ec.latest, washedShare * feed.ec, quantities.ec.resolution));
    if (isLow && ec.witness === "agreed" && (phase.daysSince ?? 0) >= rampUnderWay && !isOverFlushed(facts))
      return "kept short";
    return (isLow && (isBehindFeed || ec.latest < band.ec[0] / 2)) || (plant.ill && isOverFlushed(facts)) ? "washed out" : "none";
  }
  if (isDrowned(facts)) return "too much water";
  if (!isLow) return "none";
  const isPale = paleness.some((sign) => plant.signs.has(sign));
  if (feed.isWaterNow && !(isPale && feed.ec === undefined && ec.witness === "agreed")) return "after plain water";
  const isFalling =
    ec.trend === "falling" ||
    (ec.before !== undefined && isFallBy(riseShare, ec.before, ec.latest));
  const isSure = ec.witness === "agreed" || (isPale && (ec.witness === "sole" || isFalling));
  if (!isSure) return ec.witness === "sole" && feed.ec === undefined ? "unclear" : "once";
  if (feed.isWaterNow) return "short of feed";
  const isHungry = isPale && feed.ec !== undefined && !plant.failing && !plant.signs.has("heavy pot");
  if (water.runoff === "much" && !isHungry) return "too much water";
  return isPale || (isFalling && feed.ec !== undefined) ? "short of feed" : "unclear";
}

/** Much drains while the plant drinks less or the medium stays wet (soggy, algae, gnats), or a heavy pot droops. */
function isDrowned({ plant, water }: Facts): boolean {
  const isWet = plant.signs.has("heavy pot");
  const runsThrough = water.runoff === "much" && (plant.drinks !== undefined || isWet);
  return runsThrough || (isWet && plant.failing && water.runoff !== "none" && water.runoff !== "little");
}

/** More water than the over-flush limit went through at the latest flush. */
function isOverFlushed({ phase, options, band }: Facts): boolean {
  const { containerLitres } = options;
  if (containerLitres === undefined || band.medium === "water culture") return false;
  const poured = phase.flush.reduce((sum, { inputLitres }) => sum + (inputLitres ?? 0), 0) as Litres;
  return isAbove(poured, overFlushLimit(containerLitres, band.medium), quantities.litres.resolution);
}
