import { isAbove } from "../maths/compare";
import { type Ec25, type Litres, quantities } from "../quantities";
import { Refusal } from "../refusal";
import { inMillisiemens } from "./words";

/**
 * Runoff EC after so much water has run through a pot, in mS/cm: the excess over the water's own EC dies away.
 *
 * Feeds the flush plan. The model keeps promising a little more; real pots give less after 1 to 1.5 container
 * capacities, so a plan ends at a limit and the stop check looks at real readings.
 *
 * Formula:  EC = ECw + (EC0 - ECw) exp(-r L); r = f / container capacity, per litre
 * Valid:    a pot already wet through, so that what is poured also drains; a dry one first swallows what it lacks
 * Source:   one perfectly mixed vessel with a mixing efficiency; [kerr-1983] for its limits
 *
 * @param startEc mS/cm at 25 C of the runoff before washing
 * @param waterEc mS/cm at 25 C of the water poured
 * @param wash litres poured, and the rate per litre (`washoutRate`, or `fitWashout` from the pot's own readings)
 * @returns mS/cm at 25 C, between the two ECs
 * @example washoutEc(ec25(6), ec25(0.4), { litres: litres(6.5), ratePerLitre: 0.7 / 6.5 }) // 3.181
 */
export function washoutEc(
  startEc: Ec25,
  waterEc: Ec25,
  wash: { readonly litres: Litres; readonly ratePerLitre: number },
): Ec25 {
  return (waterEc + (startEc - waterEc) * Math.exp(-wash.ratePerLitre * wash.litres)) as Ec25;
}

/**
 * Litres of water expected to bring the runoff from one EC to another: the inverse of `washoutEc`.
 *
 * Formula:  L = ln((EC0 - ECw) / (ECt - ECw)) / r
 * Valid:    a target above the water's own EC; at or below it: refuses
 * Source:   as `washoutEc`
 *
 * @returns L; 0 when the runoff is already at the target or below
 * @throws {Refusal} `impossible` when the target does not lie above the water's own EC
 * @example washoutLitres(ec25(6), ec25(3), { waterEc: ec25(0.4), ratePerLitre: 0.7 / 6.5 }) // 7.125
 */
export function washoutLitres(
  startEc: Ec25,
  targetEc: Ec25,
  wash: { readonly waterEc: Ec25; readonly ratePerLitre: number },
): Litres {
  const { waterEc, ratePerLitre } = wash;
  const target = reachable(targetEc, waterEc);
  if (!(startEc >= 0 && ratePerLitre > 0)) {
    throw new Refusal("impossible", {
      quantity: "washing from EC",
      given: startEc,
      allowed: "a runoff EC and a rate per litre above 0",
    });
  }
  if (!isAbove(startEc, target, quantities.ec.resolution)) return 0 as Litres;
  return (Math.log((startEc - waterEc) / (target - waterEc)) / ratePerLitre) as Litres;
}

/** A target that washing with this water can reach. */
export function reachable(targetEc: Ec25, waterEc: Ec25): Ec25 {
  if (isAbove(targetEc, waterEc, quantities.ec.resolution)) return targetEc;
  throw new Refusal("impossible", {
    quantity: "target EC",
    given: targetEc,
    unit: "mS/cm",
    allowed: `above the water's own ${inMillisiemens(waterEc)}, for washing cannot go below the water; raise the target or use cleaner water`,
  });
}
