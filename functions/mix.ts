import * as engine from "../src/index";
import { eachCell } from "./answers";
import { reading } from "./cells";

/**
 * Litres of water to add to bring a tank down to a target EC. Measure the mix afterwards: it reads slightly above the target.
 * @customfunction DILUTION
 * @helpurl https://localhost:3000/docs/functions.html#dilution
 * @param litres L in the tank now, cell or range
 * @param ec_now mS/cm in the tank now, cell or range
 * @param ec_target mS/cm wanted, cell or range
 * @param water_ec mS/cm of the water to add (0.01 for pure water), cell or range
 * @returns L of water to add
 * @remarks Refuses a target above what is there, or not above the water's own EC. An EC of 0 counts as not measured.
 * @example =RUNOFF.DILUTION(10, 3, 1.8, 0.3) -> 8
 * @see mass balance; [pratt2001] for the error of a straight line
 */
export function dilution(litres: any[][], ec_now: any[][], ec_target: any[][], water_ec: any[][]): any[][] {
  return eachCell(
    (tank: engine.Litres, ec: engine.Ec25, target: engine.Ec25, water: engine.Ec25) =>
      engine.dilution({ litres: tank, ec }, target, water),
    reading(litres, engine.litres, "tank volume"),
    reading(ec_now, engine.ec25, "EC now"),
    reading(ec_target, engine.ec25, "target EC"),
    reading(water_ec, engine.ec25, "water EC"),
  );
}
