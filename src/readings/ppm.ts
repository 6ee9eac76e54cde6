import { type Ec25, ec25, type Ppm, type PpmScale } from "../quantities";

/**
 * What a ppm meter of the given scale shows, in ppm, for an EC.
 *
 * Feeds reading other people's numbers. It is a scale's figure, not grams of salt: the true factor runs from 0.47 to
 * 0.9 with the salt and its strength.
 *
 * Formula:  ppm = EC x scale
 * Valid:    EC at 25 C
 * Source:   [handbook-60] for 640; common practice for 500 and 700
 *
 * @param ec mS/cm at 25 C
 * @param scale ppm per mS/cm
 * @example ppmOfEc(ec25(1.15), ppmScale(640)) // 736
 */
export function ppmOfEc(ec: Ec25, scale: PpmScale): Ppm {
  return (ec * scale) as Ppm;
}

/**
 * EC in mS/cm at 25 C behind a ppm figure of a known scale: the inverse of `ppmOfEc`.
 *
 * Formula:  EC = ppm / scale
 * Source:   as `ppmOfEc`
 *
 * @throws {Refusal} `wrong-unit` when the EC would exceed what water can hold
 * @example ecFromPpm(ppm(1000), ppmScale(500)) // 2
 */
export function ecFromPpm(ppm: Ppm, scale: PpmScale): Ec25 {
  return ec25(ppm / scale, `EC behind ${ppm} ppm`);
}
