import { type Alkalinity, type Ph } from "../../quantities";
import { alkalinityUnits } from "../../readings/alkalinity-units";
import { Refusal } from "../../refusal";
import { type CarbonateConstants } from "./constants";

const mgCaco3PerMilliequivalent = alkalinityUnits["mg/L CaCO3"];

/** meq/L of alkalinity. */
export const milliequivalents = (alkalinity: Alkalinity): number => alkalinity / mgCaco3PerMilliequivalent;

/** Millimoles in a mole, millilitres in a litre. */
export const thousand = 1000;

/** Hydrogen ions, mol/L. */
export const hydrogenAt = (ph: number): number => 10 ** (0 - ph);

/** H less OH, meq/L: the water's own part of the charge balance. */
export function freeAcid(ph: Ph, { water }: CarbonateConstants): number {
  const hydrogen = hydrogenAt(ph);
  return (hydrogen - water / hydrogen) * thousand;
}

/** Charge that one mole of dissolved carbonate carries at a pH: 0 as CO2, 1 as HCO3, 2 as CO3. */
export function carbonateCharge(ph: Ph, { first, second }: CarbonateConstants): number {
  const hydrogen = hydrogenAt(ph);
  const bicarbonate = first / hydrogen;
  const carbonate = (bicarbonate * second) / hydrogen;
  return (bicarbonate + 2 * carbonate) / (1 + bicarbonate + carbonate);
}

/**
 * All the dissolved carbonate of a water, mmol/L, from its alkalinity and pH.
 *
 * Formula:  CT = (alkalinity + H - OH) / charge per mole
 * Valid:    alkalinity that is carbonate's, as in most waters; otherwise a dose comes out wrong, which "first 80 %" is
 *           for
 * Source:   charge balance; constants [plummer-busenberg-1982]
 *
 * @param milliequivalentsPerLitre alkalinity, meq/L
 * @throws {Refusal} `impossible` when the alkalinity is too low for the pH
 * @example totalCarbonate(2.9974, ph(7.5), carbonateConstants()) // 3.205
 */
export function totalCarbonate(milliequivalentsPerLitre: number, ph: Ph, constants: CarbonateConstants): number {
  const total = (milliequivalentsPerLitre + freeAcid(ph, constants)) / carbonateCharge(ph, constants);
  if (total >= 0) return total;
  throw new Refusal("impossible", {
    quantity: "alkalinity",
    given: Math.round(milliequivalentsPerLitre * mgCaco3PerMilliequivalent),
    unit: "mg/L as CaCO3",
    allowed: `higher in water of pH ${ph}; measure both again`,
  });
}

/** The alkalinity, meq/L, that so much carbonate (mmol/L) makes at a pH: the inverse of `totalCarbonate`. */
export const alkalinityAt = (total: number, ph: Ph, constants: CarbonateConstants): number =>
  total * carbonateCharge(ph, constants) - freeAcid(ph, constants);
