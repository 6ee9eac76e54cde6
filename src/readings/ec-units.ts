import { Refusal } from "../refusal";

/** How much of each unit makes one mS/cm. Source: definition of the siemens, [si-brochure]; dS/m = mS/cm = the older mmho/cm. */
export const ecUnits = { "mS/cm": 1, "uS/cm": 1000, "dS/m": 1, "mS/m": 100, "S/m": 0.1 } as const;
export type EcUnit = keyof typeof ecUnits;

/** Other spellings growers and meters use, after `tidy`; mho is the siemens' older name. */
const spellings: Readonly<Record<string, EcUnit>> = {
  ms: "mS/cm",
  "millisiemens/cm": "mS/cm",
  "mmho/cm": "mS/cm",
  "mmhos/cm": "mS/cm",
  us: "uS/cm",
  "microsiemens/cm": "uS/cm",
  "umho/cm": "uS/cm",
  "umhos/cm": "uS/cm",
  ds: "dS/m",
};

/** Lower case without blanks; U+00B5 (micro sign) and U+03BC (Greek mu) are both a u. */
const tidy = (text: string): string => text.toLowerCase().replaceAll(/\s+/g, "").replaceAll(/[\u00B5\u03BC]/g, "u");

/**
 * The unit a text names, whatever micro sign or case it is written with.
 *
 * @throws {Refusal} `unknown-choice`, listing the units
 * @example ecUnitNamed("\u00B5S/cm") // "uS/cm"
 */
export function ecUnitNamed(text: string): EcUnit {
  const word = tidy(text);
  const names = Object.keys(ecUnits) as EcUnit[];
  const found = names.find((name) => name.toLowerCase() === word) ?? spellings[word];
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "EC unit", given: text, allowed: names.join(", ") });
}
