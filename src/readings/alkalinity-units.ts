import { unitNamed } from "./unit-named";

/**
 * How much of each unit makes one milliequivalent in a litre. CaCO3 100.087 g/mol carries two, HCO3 61.017 one; a
 * degree of carbonate hardness (dH) is 10 mg/L of CaO, 56.077 g/mol, which carries two. Source: molar masses
 * [iupac-weights-2021]; the degree by its definition.
 */
export const alkalinityUnits = {
  "mg/L CaCO3": 50.0435,
  "mg/L HCO3": 61.017,
  "meq/L": 1,
  "mmol/L HCO3": 1,
  dH: 2.803_85,
} as const;
export type AlkalinityUnit = keyof typeof alkalinityUnits;

/** Other spellings of water reports and test kits. */
const spellings: ReadonlyMap<string, AlkalinityUnit> = new Map([
  ["caco3mg/l", "mg/L CaCO3"], ["caco3", "mg/L CaCO3"],
  ["hco3mg/l", "mg/L HCO3"], ["hco3", "mg/L HCO3"], ["mg/lhco3-", "mg/L HCO3"], ["mg/lbicarbonate", "mg/L HCO3"],
  ["meq", "meq/L"], ["mval/l", "meq/L"], ["mmol/lhco3-", "mmol/L HCO3"], ["mmol/lbicarbonate", "mmol/L HCO3"],
  ["\u00B0dh", "dH"], ["dkh", "dH"], ["\u00B0dkh", "dH"], ["kh", "dH"], ["\u00B0kh", "dH"], ["degrees", "dH"],
]);

/**
 * The unit of alkalinity that a text names. A bare mg/L or mmol/L is refused: of CaCO3 and of HCO3 it means different
 * waters.
 *
 * @throws {Refusal} `unknown-choice`, listing the units
 * @example alkalinityUnitNamed("ppm as CaCO3") // "mg/L CaCO3"
 */
export const alkalinityUnitNamed = (text: string): AlkalinityUnit =>
  unitNamed(text, { table: alkalinityUnits, spellings, called: "alkalinity unit" });
