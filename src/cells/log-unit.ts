import { Refusal } from "../refusal";
import { type LogUnit } from "./units";

/** Every unit that a column of a log can be in; pH is one of them, for it has no other. */
export const logUnits = [
  "mS/cm",
  "uS/cm",
  "dS/m",
  "mS/m",
  "S/m",
  "CF",
  "ppm 500",
  "ppm 640",
  "ppm 700",
  "pH",
  "L",
  "mL",
  "gal",
  "qt",
  "fl oz",
  "C",
  "F",
  "%",
  "share",
] as const;
export type NamedLogUnit = Exclude<LogUnit, `ppm ${number}` | ""> | "ppm 500" | "ppm 640" | "ppm 700" | "pH";

/**
 * The unit of a log's column that a text names.
 *
 * @throws {Refusal} `unknown-choice`, listing the units
 * @example logUnitNamed("us/cm") // "uS/cm"
 */
export function logUnitNamed(text: string): NamedLogUnit {
  const word = text.trim().toLowerCase().replaceAll(/[\u00B5\u03BC]/g, "u");
  const found = logUnits.find((unit) => unit.toLowerCase() === word);
  if (found !== undefined) return found;
  throw new Refusal("unknown-choice", { quantity: "unit", given: text, allowed: logUnits.join(", ") });
}
