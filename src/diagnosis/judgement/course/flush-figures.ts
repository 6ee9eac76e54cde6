import { type DrainedMedium, drainedMedia } from "../../../flush/container-table";
import { flushTarget } from "../../../flush/flush-target";
import { flushVolume } from "../../../flush/flush-volume";
import { overFlushLimit } from "../../../flush/over-flush-limit";
import { pourLiquids } from "../../../flush/pour-liquid";
import { isAbove } from "../../../maths/compare";
import { type Ec25, quantities } from "../../../quantities";
import { type Facts } from "../facts";
import { type FlushFigures } from "../says/salt-says";
import { drainTarget } from "./feed-target";

/**
 * A portion of a pot whose size is not known is a usual watering; so many of them are a first guess at a flush. Common
 * practice.
 */
const wateringsOfAFlush = 6;
/** A portion is a quarter of what is to be poured. Common practice. */
const portionShare = 0.25;

/** A flush of this pot in figures: from its size where it is known, otherwise from its usual watering. */
export function flushFigures(facts: Facts): FlushFigures {
  const { band, feed, water, options } = facts;
  const target = flushTarget(drainTarget(facts) as Ec25, (feed.waterEc ?? 0) as Ec25);
  const most = options.containerLitres === undefined ? wateringsTimes(water.litres) : litresOf(facts, target);
  const portion = options.containerLitres === undefined || most === undefined ? water.litres : portionShare * most;
  const tellsWater = feed.waterEc !== undefined && feed.waterIsSalty;
  return {
    ph: band.phAim,
    liquid: liquidFor(facts),
    target,
    waterEc: tellsWater ? feed.waterEc : undefined,
    portion,
    most,
    isSampled: band.sample !== "drain",
    limit: options.containerLitres === undefined ? undefined : overFlushLimit(options.containerLitres, band.medium),
  };
}

/**
 * mS/cm of a feed that washes: enough to hold calcium and magnesium, far below any drain in trouble. Common practice.
 */
const weakFeed = "0.5 to 1 more than your water";

/** What to pour: by medium, and either where the medium is not known. */
function liquidFor({ band, feed }: Facts): string {
  const why = whyWeakFeed(band);
  if (feed.softened) return `weak feed in rain or purified water (EC ${weakFeed}; not in softened water, whose sodium stays)`;
  return why === undefined ? "plain water or weak feed" : `weak feed (EC ${weakFeed}, ${why})`;
}

/** The same in few words, for waterings. */
export const weakLiquid = ({ band, feed }: Facts): string =>
  feed.softened
    ? "weak feed in rain or purified water (not in softened water, whose sodium stays)"
    : whyWeakFeed(band) === undefined ? "plain water or weak feed" : "weak feed";

/** Why plain water would harm; `undefined` where it does not, or the medium is not known. */
function whyWeakFeed({ medium }: Facts["band"]): string | undefined {
  const drained = drainedMedia.find((each): each is DrainedMedium => each === medium);
  const pour = drained === undefined ? undefined : pourLiquids[drained];
  return pour?.liquid === "a weak feed" ? pour.why : undefined;
}

const wateringsTimes = (litres: number | undefined): number | undefined =>
  litres === undefined ? undefined : wateringsOfAFlush * litres;

function litresOf({ band, ec, feed, options }: Facts, target: number): number | undefined {
  const { containerLitres } = options;
  if (containerLitres === undefined) return undefined;
  const limit = overFlushLimit(containerLitres, band.medium);
  const medium = drainedMedia.find((each): each is DrainedMedium => each === band.medium);
  const waterEc = (feed.waterEc ?? 0) as Ec25;
  if (ec === undefined || medium === undefined || !isAbove(ec.latest, target, quantities.ec.resolution)) return limit;
  return flushVolume(ec.latest as Ec25, target as Ec25, { containerLitres, waterEc, medium }).litres;
}
