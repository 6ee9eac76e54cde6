import { alkalinity } from "../quantities";
import { type AlkalinityUnit, alkalinityUnits } from "./alkalinity-units";

/**
 * One alkalinity in another unit, as water reports print it.
 *
 * Feeds the acid dose, which reckons in mg/L as CaCO3. 122 mg/L of bicarbonate is 100 mg/L as CaCO3: taken for each
 * other, a dose is a fifth too strong.
 *
 * Formula:  alkalinity(to) = alkalinity(from) x units of `to` in a meq/L / units of `from` in a meq/L
 * Valid:    alkalinity that is carbonate's, up to 5000 mg/L as CaCO3; outside: refuses
 * Source:   [iupac-weights-2021]
 *
 * @param value in the unit `from`
 * @returns in the unit `to`
 * @throws {Refusal} `impossible` below 0 or above 5000 mg/L as CaCO3
 * @example alkalinityInUnit(122.034, "mg/L HCO3", "meq/L") // 2
 */
export function alkalinityInUnit(value: number, from: AlkalinityUnit, to: AlkalinityUnit): number {
  const caco3 = (value * alkalinityUnits["mg/L CaCO3"]) / alkalinityUnits[from];
  alkalinity(caco3, from === "mg/L CaCO3" ? "alkalinity" : `alkalinity ${value} ${from} =`);
  return (value * alkalinityUnits[to]) / alkalinityUnits[from];
}
