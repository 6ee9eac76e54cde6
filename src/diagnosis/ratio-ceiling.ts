import { type Share } from "../quantities";
import { Refusal } from "../refusal";

/**
 * Ratio ceiling: the salt ratio that a bed settles at when it leaches this share and the roots take up no salt.
 *
 * Feeds the reading of a high salt ratio: near or above this line the feed is stronger than the plant takes; well below
 * it the roots are using what is there. A reference line, never a prediction: Ku & Hershey recovered 0.71 to 1.14 of
 * it.
 *
 * Formula:  ceiling = 1 / LF
 * Valid:    steady feeding; 0 < LF <= 1
 * Source:   [handbook-60] leaching requirement, LR = ECiw / ECdw
 *
 * @returns no unit, 1 or more
 * @throws {Refusal} `outside-validity` when nothing drains: then no steady state exists
 * @example ratioCeiling(leachingShare(0.2)) // 5
 */
export function ratioCeiling(fraction: Share): number {
  if (fraction > 0) return 1 / fraction;
  throw new Refusal("outside-validity", {
    quantity: "leaching fraction",
    given: fraction,
    allowed: "a pot that drains: above 0",
  });
}
