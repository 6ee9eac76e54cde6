import { type Medium } from "../bands/media-table";
import { type Ec25, type Litres } from "../quantities";
import { washoutRate } from "./container-capacity";
import { washoutLitres } from "./washout";

/** The pot and the water it is washed with. */
export interface FlushPot {
  readonly containerLitres: Litres;
  /** mS/cm at 25 C of the water poured. */
  readonly waterEc: Ec25;
  readonly medium: Medium;
}

/**
 * Litres of water expected to bring a pot's runoff down to a target, by medium.
 *
 * A first guess from tables of judgement, for carrying water: `flushPlan` caps it, `flushLeft` replaces it by the pot's own
 * readings.
 *
 * Formula:  L = ln((EC0 - ECw) / (ECt - ECw)) x container capacity / f
 * Valid:    a pot already wet through; a target above the water's own EC
 * Source:   as `washoutEc`; capacity and f from src/flush/container-table.ts
 *
 * @returns L; 0 when the runoff is already at the target
 * @throws {Refusal} `impossible` when the target does not lie above the water's EC, or the pot has no volume
 * @example flushVolume(ec25(6), ec25(3), { containerLitres: litres(10), waterEc: ec25(0.4), medium: "coir" }) // 7.125
 */
export function flushVolume(runoffEc: Ec25, targetEc: Ec25, pot: FlushPot): Litres {
  const ratePerLitre = washoutRate(pot.containerLitres, pot.medium);
  return washoutLitres(runoffEc, targetEc, { waterEc: pot.waterEc, ratePerLitre });
}
