import { type Ec25, type Litres, type PpmScale } from "../quantities";
import { atMostPoured } from "./at-most-poured";

/** mg/L of mixed salts per mS/cm, as salinity practice counts them [handbook-60]. */
export const saltScale = 640 as PpmScale;

export const milligramsPerGram = 1000;

/** A volume and its EC: what was poured in, or what drained. */
export interface SaltySolution {
  readonly ec: Ec25;
  readonly litres: Litres;
}

/**
 * Grams of salt that one irrigation left behind in the pot.
 *
 * Feeds the question how to keep a buildup from coming back: the sum over the irrigations of a week is what the plant
 * took up plus what stays. It counts the roots' uptake as kept, so it errs to too much.
 *
 * Formula:  grams = scale (ECin Vin - ECout Vout) / 1000
 * Valid:    both at 25 C; mixed salts: the scale is good to a tenth
 * Source:   mass balance; scale [handbook-60]
 *
 * @param scale mg/L per mS/cm, 640 unless given
 * @returns g; negative where more drained out than came in: washed out
 * @throws {Refusal} `impossible` when more drained than was poured in
 * @example saltKept({ ec: ec25(2), litres: litres(10) }, { ec: ec25(4), litres: litres(2) }) // 7.68
 */
export function saltKept(poured: SaltySolution, drained: SaltySolution, scale: PpmScale = saltScale): number {
  atMostPoured(drained.litres, poured.litres);
  return (scale * (poured.ec * poured.litres - drained.ec * drained.litres)) / milligramsPerGram;
}
