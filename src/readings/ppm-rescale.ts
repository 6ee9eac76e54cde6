import { type Ppm, type PpmScale } from "../quantities";
import { ecFromPpm, ppmOfEc } from "./ppm";

/**
 * A ppm figure of one scale on another scale, in ppm.
 *
 * Feeds the comparison of two logs or labels that use different meters: 1000 ppm on the 500 scale is 1400 on the 700.
 *
 * Formula:  ppm(to) = ppm(from) / scale(from) x scale(to)
 * Source:   as `ppmOfEc`
 *
 * @example ppmRescale(ppm(1000), ppmScale(500), ppmScale(700)) // 1400
 */
export function ppmRescale(ppm: Ppm, from: PpmScale, to: PpmScale): Ppm {
  return ppmOfEc(ecFromPpm(ppm, from), to);
}
