import { type Ec25, type Litres } from "../quantities";
import { aboveTheWater, notAboveTheMix } from "./target";

/** What stands in the tank. */
export interface Tank {
  readonly litres: Litres;
  /** mS/cm at 25 C. */
  readonly ec: Ec25;
}

/**
 * Litres of water that bring a tank's feed down to a target EC.
 *
 * Feeds weakening a feed that turned out too strong. EC does not fall quite as fast as the salt is thinned (KCl halved
 * from 0.02 mol/L reads 2 % above the line), so the mix comes out slightly above the target: measure it and add a
 * little more.
 *
 * Formula:  water = V (E - T) / (T - W); V litres now, E their EC, T target, W the water's EC
 * Valid:    water EC < target <= EC now, at the meter's resolution; outside: refuses
 * Source:   mass balance; [pratt2001] for its error
 *
 * @param ecTarget mS/cm wanted
 * @param waterEc mS/cm of the water to add
 * @returns L to add; the tank must hold both
 * @throws {Refusal} `order` when the target is above what is there, or not above the water's own EC
 * @example dilution({ litres: litres(10), ec: ec25(3) }, ec25(1.8), ec25(0.3)) // 8
 */
export function dilution(tank: Tank, ecTarget: Ec25, waterEc: Ec25): Litres {
  notAboveTheMix(ecTarget, tank.ec);
  aboveTheWater(ecTarget, waterEc);
  return Math.max(0, (tank.litres * (tank.ec - ecTarget)) / (ecTarget - waterEc)) as Litres;
}
