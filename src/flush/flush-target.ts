import { type Ec25 } from "../quantities";

/**
 * A flush ends this share of the limit: washed only just to it, a pot is above it again by the next day. Common
 * practice.
 */
export const insideShare = 0.9;

/** Closer than this to the water's own EC, in mS/cm, washing hardly moves the runoff any more. Common practice. */
export const aboveWater = 0.3;

/**
 * The runoff EC to flush to, in mS/cm: a little inside the limit, and never too near to the EC of what is poured.
 *
 * Feeds the flush sheet and its plan. Errs to a little more water now rather than to a second flush.
 *
 * Formula:  T = max(0.9 x limit, water + 0.3)
 * Valid:    for any limit; a target above the limit says that this water cannot bring the pot inside it
 * Source:   common practice
 *
 * @param ecHigh mS/cm at 25 C, the upper limit of the runoff
 * @param waterEc mS/cm at 25 C of what is poured
 * @example flushTarget(ec25(3.5), ec25(0.4)) // 3.15
 */
export const flushTarget = (ecHigh: Ec25, waterEc: Ec25): Ec25 =>
  Math.max(insideShare * ecHigh, waterEc + aboveWater) as Ec25;
