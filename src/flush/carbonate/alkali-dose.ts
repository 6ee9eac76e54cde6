import { type Celsius, type Ph } from "../../quantities";
import { Refusal } from "../../refusal";
import { type BaseName, baseTable } from "./bases";
import { carbonateConstants, standardCelsius } from "./constants";
import { cautions, checkDirection, checkWater, type Dose, measurable, type TreatedWater } from "./dose";
import { carbonateCharge, freeAcid, milliequivalents, thousand, totalCarbonate } from "./water";

/**
 * Potassium of a published media drench at its strongest, 2 lb potassium bicarbonate in 100 US gal, mmol/L.
 * [gpn-drench]
 */
const mostPotassium = 24;
const potassiumGramsPerMole = 39.098;

/**
 * Base to bring water to a pH, g of the pure substance.
 *
 * Errs to less: rounded down, first 80 %, and a technical grade is weaker than the pure substance reckoned here.
 *
 * Formula:  n = (CT c - (H - OH) - alkalinity) / (k - m c), mmol/L; c charge per mole of carbonate at the target pH,
 *           k potassium and m carbonate that a mole of the base brings
 * Valid:    closed water, target pH 4.5 to 7.5, at most 24 mmol/L of potassium
 * Source:   charge balance; constants [plummer-busenberg-1982]
 *
 * @param target pH wanted, not below the pH now
 * @returns g, exact and measured, with cautions
 * @throws {Refusal} `order` for a target below the pH now; `outside-validity` for a target out of range or a salt load
 *   too large
 */
export function alkaliDose(
  water: TreatedWater,
  target: Ph,
  base: { readonly name: BaseName; readonly celsius?: Celsius },
): Dose {
  checkWater(water, target);
  checkDirection(target, water.phNow, "above");
  const constants = carbonateConstants(base.celsius ?? standardCelsius);
  const alkalinity = milliequivalents(water.alkalinity);
  const total = totalCarbonate(alkalinity, water.phNow, constants);
  const charge = carbonateCharge(target, constants);
  const { molarMass, potassium, carbonate, caution } = baseTable[base.name];
  const millimoles = Math.max(
    0,
    (total * charge - freeAcid(target, constants) - alkalinity) / (potassium - carbonate * charge),
  );
  refuseSaltLoad(millimoles * potassium, base.name);
  const exact = (millimoles * water.litres * molarMass) / thousand;
  const measured = measurable(exact);
  return {
    exact,
    measured,
    unit: "g",
    reasons: [
      `${millimoles.toFixed(2)} mmol/L of ${base.name}: pH ${water.phNow} to ${target}`,
      ...cautions(measured, "g"),
      "add it to the full volume of water, slowly, stirring; never beside an acid in the bottle or a concentrated stock",
      caution,
      `adds ${(millimoles * potassium * potassiumGramsPerMole).toFixed(0)} mg/L K, which is feed and salt too`,
      "in open water the pH drifts on as carbon dioxide comes and goes: measure again before use",
    ],
  };
}

function refuseSaltLoad(potassium: number, name: BaseName): void {
  if (potassium <= mostPotassium) return;
  throw new Refusal("outside-validity", {
    quantity: `${name} for this step`,
    given: `${potassium.toFixed(0)} mmol/L of potassium`,
    allowed: `up to ${mostPotassium} mmol/L; take potassium hydroxide or carbonate, or a smaller step in pH`,
  });
}
