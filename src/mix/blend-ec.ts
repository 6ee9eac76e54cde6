import { type Ec25, type Litres } from "../quantities";
import { Refusal } from "../refusal";

/** One of the waters or feeds that are poured together. */
export interface BlendPart {
  readonly litres: Litres;
  readonly ec: Ec25;
}

/**
 * EC of waters and feeds poured together, in mS/cm.
 *
 * Feeds mixing and topping up a tank. Diluting reads above this line: KCl of 2.77 halved reads 2 % above it, of 12.9
 * thinned tenfold 10 %. Measure the mix.
 *
 * Formula:  EC = sum of V E / sum of V
 * Valid:    parts that do not react or settle out; outside: no check is possible
 * Source:   mass balance; [pratt2001] for its error
 *
 * @returns mS/cm, between the weakest and the strongest part
 * @throws {Refusal} `missing` when there is no volume at all
 * @example blendEc([{ litres: litres(38), ec: ec25(2.5) }, { litres: litres(12), ec: ec25(0.4) }]) // 1.996
 */
export function blendEc(parts: readonly BlendPart[]): Ec25 {
  const total = parts.reduce((sum, { litres }) => sum + litres, 0);
  if (total > 0) return parts.reduce((sum, { litres, ec }) => sum + (litres / total) * ec, 0) as Ec25;
  throw new Refusal("missing", { quantity: "the volume of the parts", next: "enter litres and EC of each part" });
}
