import { type Ec25, type Share } from "../quantities";
import { Refusal } from "../refusal";

/**
 * ECe to drainage EC in the Rhoades relation: the lower root zone may hold five times the tolerated mean.
 * [rhoades-1974]
 */
const drainageFactor = 5;

/**
 * Leaching requirement: the share of each irrigation that must drain so that salt does not build up past what the crop
 * bears.
 *
 * Feeds the routine after a recovery. Made for field soil; in pots it is a floor, for pots are watered in fuller
 * portions.
 *
 * Formula:  LR = ECw / (5 ECe - ECw)
 * Valid:    a tolerated ECe that leaves a share below 1; otherwise: refuses
 * Source:   [rhoades-1974]
 *
 * @param inputEc mS/cm at 25 C of what is poured in
 * @param toleratedEce mS/cm at 25 C of the saturation extract that the crop bears (not a runoff EC)
 * @returns 0 to 1
 * @throws {Refusal} `outside-validity` when no share below 1 is enough
 * @example leachNeed(ec25(1), ec25(2.5)) // 0.087
 */
export function leachNeed(inputEc: Ec25, toleratedEce: Ec25): Share {
  const share = inputEc / (drainageFactor * toleratedEce - inputEc);
  if (share >= 0 && share < 1) return share as Share;
  throw new Refusal("outside-validity", {
    quantity: "input EC",
    given: inputEc,
    unit: "mS/cm",
    allowed: `an input EC well below the tolerated ${toleratedEce} mS/cm; feed weaker, for no amount of leaching is enough`,
  });
}
