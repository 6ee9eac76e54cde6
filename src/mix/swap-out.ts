import { type Ec25, type Litres } from "../quantities";
import { type Tank } from "./dilution";
import { aboveTheWater, notAboveTheMix } from "./target";

/**
 * Litres to drain from a full tank and replace with water, so that its feed comes down to a target EC.
 *
 * Feeds weakening a feed where the tank has no room for more. It comes out slightly above the target, as `dilution`
 * does.
 *
 * Formula:  swap = V (E - T) / (E - W); V litres there, E their EC, T target, W the water's EC
 * Valid:    water EC < target <= EC now, at the meter's resolution; outside: refuses
 * Source:   mass balance; [pratt2001] for its error
 *
 * @returns L, less than the tank holds
 * @throws {Refusal} `order` as `dilution`
 * @example swapOut({ litres: litres(10), ec: ec25(3) }, ec25(1.8), ec25(0.6)) // 5
 */
export function swapOut(tank: Tank, ecTarget: Ec25, waterEc: Ec25): Litres {
  notAboveTheMix(ecTarget, tank.ec);
  aboveTheWater(ecTarget, waterEc);
  return Math.max(0, (tank.litres * (tank.ec - ecTarget)) / (tank.ec - waterEc)) as Litres;
}
