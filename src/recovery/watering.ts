import { type Litres, type Share, quantities } from "../quantities";
import { Refusal } from "../refusal";

const [, mostDrained] = quantities.leachingFraction.plausible;

/**
 * Litres to pour each time, so that the plant has what it takes up and the wanted share drains.
 *
 * Feeds the routine after a recovery: with too little runoff salt builds up again, with too much the roots stand wet.
 * Follow the uptake as the plant grows.
 *
 * Formula:  litres = uptake / (1 - LF) / waterings a day
 * Valid:    a leaching fraction up to 0.6; a pot whose uptake was measured at the same weather
 * Source:   water balance
 *
 * @param uptake L a day, as `uptake` finds it
 * @param fraction the share of each watering that is to drain
 * @param waterings a day; 0.5 is one every second day
 * @returns L each time
 * @throws {Refusal} `outside-validity` for a fraction above 0.6; `impossible` for no waterings
 * @example watering(litres(1.2), leachingShare(0.2), 3) // 0.5
 */
export function watering(uptake: Litres, fraction: Share, waterings = 1): Litres {
  const [fewest, most] = quantities.waterings.physical;
  if (!(waterings > fewest && waterings <= most)) {
    throw new Refusal("impossible", {
      quantity: "waterings a day",
      given: waterings,
      allowed: `above ${fewest}, up to ${most}`,
    });
  }
  if (fraction <= mostDrained) return (uptake / (1 - fraction) / waterings) as Litres;
  const allowed = `0 to ${mostDrained}; more runoff only washes feed away and keeps the roots wet`;
  throw new Refusal("outside-validity", { quantity: "leaching fraction", given: fraction, allowed });
}
