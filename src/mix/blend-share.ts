import { isAbove, standing } from "../maths/compare";
import { type Ec25, quantities, type Share } from "../quantities";
import { Refusal } from "../refusal";

const { resolution, unit } = quantities.ec;

/**
 * Share of A in a blend of A and B that has the target EC.
 *
 * Feeds blending two waters, or drain water into fresh. The blend reads slightly above the target, as `blendEc` says.
 *
 * Formula:  share of A = (T - B) / (A - B)
 * Valid:    target between A and B, which the meter must tell apart; outside: refuses
 * Source:   mass balance; [pratt2001] for its error
 *
 * @returns 0 (all B) to 1 (all A)
 * @throws {Refusal} `impossible` when A and B have one EC; `order` when the target is not between them
 * @example blendShare(ec25(2.4), ec25(0.4), ec25(1.4)) // 0.5
 */
export function blendShare(a: Ec25, b: Ec25, ecTarget: Ec25): Share {
  const [low, high] = a < b ? [a, b] : [b, a];
  if (!isAbove(high, low, resolution)) {
    throw new Refusal("impossible", {
      quantity: "a blend of two waters of",
      given: a,
      unit,
      allowed: "from waters of different EC",
    });
  }
  if (standing(ecTarget, [low, high], resolution) !== "inside") {
    throw new Refusal("order", {
      quantity: "target EC",
      given: ecTarget,
      unit,
      allowed: `between ${low} and ${high} mS/cm, the two that are blended`,
    });
  }
  return Math.min(1, Math.max(0, (ecTarget - b) / (a - b))) as Share;
}
