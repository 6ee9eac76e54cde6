import { type Litres, litres } from "../quantities";

/** US liquid measures: a gallon is 231 cubic inches, an inch 2.54 cm, both exact. [nist-handbook-44] appendix C */
const litresPerGallon = 3.785411784;
const quartsPerGallon = 4;
const fluidOuncesPerGallon = 128;
const millilitresPerLitre = 1000;

/** Volume units of a log; gallons, quarts and fluid ounces are US liquid measures. */
export const litresPerUnit = {
  L: 1,
  mL: 1 / millilitresPerLitre,
  gal: litresPerGallon,
  qt: litresPerGallon / quartsPerGallon,
  "fl oz": litresPerGallon / fluidOuncesPerGallon,
} as const;

export type VolumeUnit = keyof typeof litresPerUnit;

/**
 * Litres from a volume in another unit.
 *
 * Feeds the leaching fraction, the salt kept and the flush plan. An imperial gallon is a fifth larger: give litres
 * then.
 *
 * Formula:  L = volume x litres per unit
 * Source:   [nist-handbook-44] appendix C
 *
 * @throws {Refusal} `not-a-number`, `impossible` below 0
 * @example litresFrom(2, "gal") // 7.570823568
 */
export function litresFrom(volume: number, unit: VolumeUnit): Litres {
  return litres(volume * litresPerUnit[unit]);
}
