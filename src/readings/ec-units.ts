import { unitNamed } from "./unit-named";

/**
 * How much of each unit makes one mS/cm; dS/m = mS/cm = the older mmho/cm. CF is the trade's conductivity factor,
 * tenths of a mS/cm. Source: definition of the siemens, [si-brochure]; CF common practice.
 */
export const ecUnits = { "mS/cm": 1, "uS/cm": 1000, "dS/m": 1, "mS/m": 100, "S/m": 0.1, CF: 10 } as const;
export type EcUnit = keyof typeof ecUnits;

/** Other spellings growers and meters use; mho is the siemens' older name. */
const spellings: ReadonlyMap<string, EcUnit> = new Map([
  ["ms", "mS/cm"], ["millisiemens/cm", "mS/cm"], ["mmho/cm", "mS/cm"], ["mmhos/cm", "mS/cm"],
  ["us", "uS/cm"], ["microsiemens/cm", "uS/cm"], ["umho/cm", "uS/cm"], ["umhos/cm", "uS/cm"],
  ["ds", "dS/m"],
]);

/**
 * The unit a text names, whatever micro sign or case it is written with.
 *
 * @throws {Refusal} `unknown-choice`, listing the units
 * @example ecUnitNamed("\u00B5S/cm") // "uS/cm"
 */
export const ecUnitNamed = (text: string): EcUnit => unitNamed(text, { table: ecUnits, spellings, called: "EC unit" });
