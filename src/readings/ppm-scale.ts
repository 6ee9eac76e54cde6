import { type PpmScale, ppmScale, quantities } from "../quantities";
import { Refusal } from "../refusal";

const [lowest, highest] = quantities.ppmScale.physical;
const knownScales = `500 (EC x 0.5), 640 (EC x 0.64), 700 (EC x 0.7), or your meter's own factor from ${lowest} to ${highest}`;

/**
 * The ppm scale a cell names. There is no default: a ppm figure without its scale can be 40 % off.
 *
 * Source:   common practice for 500 and 700; [handbook-60] for 640
 *
 * @param given a number, or a text such as "500"; nothing is refused with the list
 * @throws {Refusal} `missing` or `unknown-choice`, listing the scales
 * @example ppmScaleNamed("700") // 700
 */
export function ppmScaleNamed(given: string | number | undefined): PpmScale {
  if (given === undefined || given === "") {
    throw new Refusal("missing", {
      quantity: "ppm scale",
      next: `a ppm without its scale means nothing; choose ${knownScales}`,
    });
  }
  const value = Number(given);
  if (value >= lowest && value <= highest) return ppmScale(value);
  throw new Refusal("unknown-choice", { quantity: "ppm scale", given, allowed: knownScales });
}
