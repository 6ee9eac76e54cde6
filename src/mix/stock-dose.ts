import { type Ec25, rounded, type StockStrength } from "../quantities";
import { Refusal } from "../refusal";
import { type Tank } from "./dilution";
import { notBelowTheWater } from "./target";

/** mL in a litre: beyond a quarter the concentrate is no longer a trace in the water. Common practice. */
const mostMillilitres = 250;

/**
 * Millilitres of concentrate that bring a tank of water up to a target EC.
 *
 * Feeds mixing the recovery feed. The water the concentrate itself brings is left out: the feed comes out a trace
 * weaker.
 *
 * Formula:  dose = V (T - W) / k; V litres, T target, W the water's EC, k mS/cm that 1 mL adds to 1 L
 * Valid:    target from the water's own EC up; outside: refuses
 * Source:   EC additive with that of the water, [unh-fertilizer]; k is measured by the grower or read on the label
 *
 * @returns mL; measure the feed, for k holds near the strength it was found at
 * @throws {Refusal} `order` when the target is below the water's own EC; `impossible` for a stock that adds nothing;
 *   `outside-validity` above 250 mL in a litre
 * @example stockDose({ litres: litres(20), ec: ec25(0.4) }, ec25(1.6), stockStrength(0.3)) // 80
 */
export function stockDose(water: Tank, ecTarget: Ec25, strength: StockStrength): number {
  notBelowTheWater(ecTarget, water.ec);
  if (!(strength > 0)) {
    const allowed = "above 0; add 1 mL to 1 L of water and read the rise";
    throw new Refusal("impossible", { quantity: "EC per mL of stock per L", given: strength, allowed });
  }
  const perLitre = Math.max(0, (ecTarget - water.ec) / strength);
  if (perLitre <= mostMillilitres) return water.litres * perLitre;
  const allowed = `concentrates of which up to ${mostMillilitres} mL go into a litre: check its EC per mL, and the units`;
  throw new Refusal("outside-validity", { quantity: `a dose of ${rounded(perLitre)} mL in each litre`, allowed });
}
