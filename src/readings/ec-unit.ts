import { ec25 } from "../quantities";
import { type EcUnit, ecUnits } from "./ec-units";

/**
 * One EC in another unit. The temperature it stands for does not change.
 *
 * Feeds every comparison between two meters. 1.8 read as mS/cm where uS/cm was meant is a thousandfold error.
 *
 * Formula:  EC(to) = EC(from) x units of `to` in one mS/cm / units of `from` in one mS/cm
 * Valid:    any water-based solution, up to 200 mS/cm; outside: refuses
 * Source:   [si-brochure]
 *
 * @param value in the unit `from`
 * @returns in the unit `to`
 * @throws {Refusal} `wrong-unit` above 200 mS/cm, `impossible` below 0
 * @example ecInUnit(1413, "uS/cm", "mS/cm") // 1.413
 */
export function ecInUnit(value: number, from: EcUnit, to: EcUnit): number {
  ec25(value / ecUnits[from], from === "mS/cm" ? "EC" : `EC ${value} ${from} =`);
  return (value * ecUnits[to]) / ecUnits[from];
}
