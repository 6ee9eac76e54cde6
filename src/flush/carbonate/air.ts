import { type Ph } from "../../quantities";
import { type CarbonateConstants } from "./constants";
import { carbonateCharge, freeAcid, hydrogenAt, thousand } from "./water";

/**
 * CO2 in outdoor air, atm; about 420 ppm. Common knowledge of the 2020s; indoors it is often higher and the pH a little
 * lower.
 */
const carbonDioxideInAir = 420e-6;

const lowestPh = 3;
const highestPh = 12;
/** Halvings of 9 pH units: leaves 1e-9. */
const halvings = 33;

/**
 * The pH that water of so much alkalinity drifts to when left open to the air, as CO2 leaves it or comes in.
 *
 * Feeds the note beside a dose: acidified water climbs back overnight, and that is no fault.
 *
 * Formula:  alkalinity = charge from CO2 at K_H p(CO2) + OH - H, solved for pH by halving
 * Valid:    alkalinity to 20 meq/L; days of standing, faster with an air stone
 * Source:   [plummer-busenberg-1982]
 *
 * @param milliequivalentsPerLitre alkalinity left, meq/L
 * @example phInAir(0.701, carbonateConstants()) // 8.04
 */
export function phInAir(milliequivalentsPerLitre: number, constants: CarbonateConstants): Ph {
  let low = lowestPh;
  let high = highestPh;
  for (let step = 0; step < halvings; step++) {
    const middle = (low + high) / 2;
    if (alkalinityInAir(middle as Ph, constants) < milliequivalentsPerLitre) low = middle;
    else high = middle;
  }
  return ((low + high) / 2) as Ph;
}

/** Rises with pH without end. */
function alkalinityInAir(ph: Ph, constants: CarbonateConstants): number {
  const dissolved = constants.henry * carbonDioxideInAir * thousand;
  const hydrogen = hydrogenAt(ph);
  const bicarbonate = constants.first / hydrogen;
  const total = dissolved * (1 + bicarbonate + (bicarbonate * constants.second) / hydrogen);
  return total * carbonateCharge(ph, constants) - freeAcid(ph, constants);
}
