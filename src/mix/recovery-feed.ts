import { isBelow } from "../maths/compare";
import { type Days, days, type Ec25, leachingShare, quantities, type Share } from "../quantities";
import { Refusal } from "../refusal";

/** The feed to come back to, and the water it is mixed in, both mS/cm at 25 C. */
export interface FullFeed {
  readonly full: Ec25;
  readonly water: Ec25;
}

/** How gently feeding starts again after a flush. */
export interface Ramp {
  /** Part of what the full feed adds to the water, on the day of the flush. */
  readonly startShare: Share;
  readonly daysToFull: Days;
}

/** Half strength on the day of the flush, full after a week. Common practice. */
export const usualRamp: Ramp = { startShare: leachingShare(0.5), daysToFull: days(7) };

/**
 * EC to feed on a day after a flush, in mS/cm: from a weak start in a straight line to the full feed.
 *
 * Feeds the first week after a flush, when roots are hurt and salts scorch. The share applies to what the feed adds
 * above the water's own EC, which is the floor; it never passes the full feed. Hold the day back while runoff is still
 * out of band.
 *
 * Formula:  EC = F p + W (1 - p), p = min(1, s + (1 - s) d / n); F full, W water, s share at the start, d day, n days
 *           to full
 * Valid:    from the day of the flush on; outside: refuses
 * Source:   common practice: half strength, full after about a week
 *
 * @param day days since the flush, 0 on its day
 * @throws {Refusal} `order` before the flush or for a full feed below its water; `impossible` for a ramp of no days or
 *   share
 * @example recoveryFeed({ full: ec25(2), water: ec25(0.4) }, days(0), { startShare: leachingShare(0.5), daysToFull: days(7) }) // 1.2
 */
export function recoveryFeed({ full, water }: FullFeed, day: Days, ramp: Ramp): Ec25 {
  if (isBelow(full, water, quantities.ec.resolution)) {
    const allowed = `at least the water's own ${water} mS/cm`;
    throw new Refusal("order", { quantity: "full feed EC", given: full, unit: quantities.ec.unit, allowed });
  }
  if (!(day >= 0)) throw new Refusal("order", { quantity: "days since the flush", given: day, allowed: "0 or later" });
  const share = shareOn(day, ramp);
  return (Math.max(full, water) * share + water * (1 - share)) as Ec25;
}

/** Part of what the full feed adds to the water, on a day. */
export function shareOn(day: Days, { startShare, daysToFull }: Ramp): number {
  if (!(startShare > 0 && startShare <= 1)) {
    throw new Refusal("impossible", { quantity: "start share", given: startShare, allowed: "above 0 and at most 1" });
  }
  if (!(daysToFull > 0))
    throw new Refusal("impossible", { quantity: "days to full feed", given: daysToFull, allowed: "above 0" });
  return Math.min(1, startShare + ((1 - startShare) * day) / daysToFull);
}
