import { type Ec25, type StockStrength } from "../quantities";
import { Refusal } from "../refusal";
import { type Tank } from "./dilution";
import { notBelowTheWater } from "./target";

/**
 * Millilitres of concentrate that bring a tank of water up to a target EC.
 *
 * Feeds mixing the recovery feed. The water the concentrate itself brings is left out: the feed comes out a trace weaker.
 *
 * Formula:  dose = V (T - W) / k; V litres, T target, W the water's EC, k mS/cm that 1 mL adds to 1 L
 * Valid:    target from the water's own EC up; outside: refuses
 * Source:   EC additive with that of the water, [unh-fertilizer]; k is measured by the grower or read on the label
 *
 * @returns mL; measure the feed, for k holds near the strength it was found at
 * @throws {Refusal} `order` when the target is below the water's own EC; `impossible` for a stock that adds nothing
 * @example stockDose({ litres: litres(20), ec: ec25(0.4) }, ec25(1.6), stockStrength(0.3)) // 80
 */
export function stockDose(water: Tank, ecTarget: Ec25, strength: StockStrength): number {
  notBelowTheWater(ecTarget, water.ec);
  if (strength > 0) return Math.max(0, (water.litres * (ecTarget - water.ec)) / strength);
  throw new Refusal("impossible", {
    quantity: "EC per mL of stock per L",
    given: strength,
    allowed: "above 0; add 1 mL to 1 L of water and read the rise",
  });
}
