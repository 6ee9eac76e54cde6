import { type Band } from "../bands/band";
import { isAbove } from "../maths/compare";
import { ec25, quantities, type Share, written } from "../quantities";
import { ratioCeiling } from "./ratio-ceiling";
import { type RootZoneReading, usualRatioLimit, weakestFeedEc } from "./row-flags";
import { saltRatio } from "./salt-ratio";

/** What a salt ratio says about where the salt in the runoff comes from. */
export interface SaltOrigin {
  readonly origin: "the feed" | "little leaching" | "the pot's store" | "not known";
  readonly reason: string | undefined;
}

/** Pots settled at up to 1.143 of 1 / LF (runoff 6 from 2.1 at LF 0.4) [ku-hershey-1991], rounded up. */
const settledShare = 1.15;
/** From here on a leaching fraction is generous, and more water is not what helps. Common practice. */
const generousLeaching = 0.3;

/**
 * Where the salt of a reading comes from, by its salt ratio beside the leaching fraction.
 *
 * Feeds what to do about salt: weaker feed, more runoff, or a flush. A high ratio by itself is no injury: pots that let 10 to
 * 40 % run off stood at 3 to 7 times their feed and grew alike, so it never names a trouble, it only explains one.
 *
 * Formula:  feed above the band, or ratio at most 1: the feed; at most 1.15 / LF: little leaching, or the feed where LF is 0.3
 *           or more; above: the pot's store
 * Valid:    fed at 0.5 mS/cm or more; against plain water a ratio says nothing
 * Source:   [ku-hershey-1991]; ceiling [handbook-60]
 */
export function saltOrigin({ inputEc, runoffEc }: RootZoneReading, band: Band, fraction: Share | undefined): SaltOrigin {
  const isFed = inputEc !== undefined && inputEc >= weakestFeedEc;
  if (!isFed || runoffEc === undefined) return { origin: "not known", reason: undefined };
  const ratio = saltRatio(ec25(runoffEc), ec25(inputEc));
  const said = `salt ratio ${written(ratio, "saltRatio")} (input EC ${written(inputEc, "ec")})`;
  const above = (limit: number): boolean => isAbove(ratio, limit, quantities.saltRatio.resolution);
  if (!above(1)) return { origin: "the feed", reason: `${said}: the feed is at least as strong as the runoff` };
  if (isAbove(inputEc, band.ec[1], quantities.ec.resolution)) {
    return { origin: "the feed", reason: `${said}: the feed itself is above the band, so a flush would not last` };
  }
  if (fraction !== undefined && fraction > 0) return byLeaching(said, fraction, above);
  const hint = "pots that leach little settle at 3 to 7, no injury by itself; the leaching fraction would tell";
  return { origin: "not known", reason: above(usualRatioLimit) ? `${said}: ${hint}` : `${said}: not high` };
}

function byLeaching(said: string, fraction: Share, above: (limit: number) => boolean): SaltOrigin {
  const ceiling = ratioCeiling(fraction);
  const settles = `where a pot with ${Math.round(100 * fraction)} % runoff settles is ${written(ceiling, "saltRatio")}`;
  if (above(settledShare * ceiling)) {
    return { origin: "the pot's store", reason: `${said}: ${settles}, so older salt is coming out as well` };
  }
  const origin = fraction >= generousLeaching ? "the feed" : "little leaching";
  return { origin, reason: `${said}: ${settles}, so the ratio is no injury by itself` };
}
