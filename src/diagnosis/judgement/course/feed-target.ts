import { days, type Ec25, quantities } from "../../../quantities";
import { recoveryFeed, shareOn, usualRamp } from "../../../mix/recovery-feed";
import { isBelow } from "../../../maths/compare";
import { isWater } from "../entry";
import { type Facts } from "../facts";
import { isExtract, nearLimit } from "../limits";

/**
 * Growers' drains stood at up to 1.7 times their feed [contest-tomato-2020]: a feed this far below the limit keeps its
 * drain inside.
 */
const drainPerFeed = 1.7;

/** The strongest feed whose drain can be expected to stay in band, or what was usual where that is less. */
export function feedThatFits({ band, feed }: Facts): number {
  const most = band.feedEcHigh / drainPerFeed;
  if (feed.usual !== undefined && feed.usual < nearLimit * band.feedEcHigh)
    return feed.mixedWrong === undefined ? Math.min(feed.usual, most) : feed.usual;
  return feed.ec === undefined ? most : Math.min(most, feed.ec);
}

/** The feed to come back to after a flush: the usual one, unless that is what was too strong. */
export function fullFeed(facts: Facts): number | undefined {
  const { feed, phase, band } = facts;
  if (phase.phase === "after a flush") {
    const before = phase.before.filter((entry) => entry.inputEc !== undefined && !isWater(entry)).at(-1)?.inputEc;
    return before === undefined ? undefined : Math.min(before, nearLimit * band.feedEcHigh);
  }
  if (feed.ec === undefined) return undefined;
  return feed.tooStrong || feed.nearLimit || feed.mixedWrong === "strong" ? feedThatFits(facts) : feed.ec;
}

/** Share of the full feed and its EC on a day after a flush. */
export function rampOn(
  facts: Facts,
  day: number,
  full: number | undefined,
): { readonly share: number; readonly ec: number | undefined } {
  const since = days(Math.max(0, Math.floor(day)));
  const share = shareOn(since, usualRamp);
  const water = facts.feed.waterEc ?? 0;
  if (full === undefined || isBelow(full, water, quantities.ec.resolution)) return { share, ec: undefined };
  return { share, ec: recoveryFeed({ full: full as Ec25, water: water as Ec25 }, since, usualRamp) };
}

/** What the runoff of a flush is brought down to: a drain's limit, for that is what is measured while water runs. */
export const drainTarget = ({ band }: Facts): number => (isExtract(band.sample) ? band.feedEcHigh : band.ec[1]);
