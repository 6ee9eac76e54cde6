import { type EcUnit } from "../readings/ec-units";
import { type VolumeUnit } from "../readings/volume";
import { plain } from "./text";

/** Units an EC column can be in; a ppm figure means nothing without its scale, so the scale is part of the unit. */
export type EcLogUnit = EcUnit | `ppm ${number}`;
export type VolumeLogUnit = VolumeUnit;
export type TemperatureLogUnit = "C" | "F";
/** The unit of a column as it stands in the sheet; `""` for what has none (pH, dates, names, notes). */
export type LogUnit = EcLogUnit | VolumeLogUnit | TemperatureLogUnit | "%" | "";

/** A unit as written: `ppm` may still lack its scale; `mV` and doses are units of nothing the log reads. */
export type WrittenUnit = Exclude<LogUnit, `ppm ${number}`> | "ppm" | "mV" | "per";

const free = (pattern: string): RegExp => new RegExp(`(?<![a-z])(?:${pattern})(?![a-z])`);

/** In this order: the longer spelling first. Works on text made plain. */
const patterns: readonly (readonly [RegExp, WrittenUnit])[] = [
  [free("(?:ml|l|g|mg|gal|tsp)\\s?/\\s?(?:gal|h|hr|min|day|d|m2)|(?:ml|g|tsp)\\s?/\\s?l"), "per"],
  [free("us(?:\\s?/\\s?cm|\\s?cm-1)?|micro\\s?s(?:iemens)?(?:\\s?/\\s?cm)?"), "uS/cm"],
  [free("ms\\s?/\\s?m"), "mS/m"],
  [free("ms(?:\\s?/\\s?cm|\\s?cm-1)?|milli\\s?s(?:iemens)?(?:\\s?/\\s?cm)?"), "mS/cm"],
  [free("ds\\s?/\\s?m|ds m-1"), "dS/m"],
  [free("s\\s?/\\s?m"), "S/m"],
  [free("ppm|mg\\s?/\\s?l"), "ppm"],
  [free("mv|millivolts?"), "mV"],
  [/\u00b0\s?c(?![a-z])|(?<![a-z])(?:deg\.?\s?c|celsius|c)(?![a-z])/, "C"],
  [/\u00b0\s?f(?![a-z])|(?<![a-z])(?:deg\.?\s?f|fahrenheit|f)(?![a-z])/, "F"],
  [free("ml|millilit(?:er|re)s?|cc"), "mL"],
  [free("gal|gals|gallons?"), "gal"],
  [free("qt|qts|quarts?"), "qt"],
  [free("fl\\.?\\s?oz"), "fl oz"],
  [free("l|lt|ltr|ltrs|lit(?:er|re)s?|litros?"), "L"],
  [/%/, "%"],
];

/** A ppm scale beside the word ppm: 500, 640, 700, or as a factor. */
const scalePattern = /(?:[x×*]\s?)?(?<![\d.])(500|640|700|0[.,]50?|0[.,]64|0[.,]70?)(?![\d.])/;

/** "EC at 25 °C" says to what the reading is corrected, not what was measured. */
const referenceTemperature = /(?:@|\bat|\bbei)?\s*\b25\s?\u00b0?\s?c(?![a-z])/;

export interface FoundUnits {
  readonly unit: WrittenUnit | undefined;
  /** ppm per mS/cm. */
  readonly scale: number | undefined;
  /** The text without its units; where one stood is a `§`. */
  readonly rest: string;
}

/** The unit named in a text, if one is. */
export function findUnit(text: string): FoundUnits {
  let rest = plain(text).replace(referenceTemperature, " ");
  let unit: WrittenUnit | undefined;
  for (const [pattern, found] of patterns) {
    if (!pattern.test(rest)) continue;
    unit ??= found;
    rest = rest.replace(pattern, " § ");
  }
  if (unit !== "ppm" && !/\btds/.test(rest)) return { unit, scale: undefined, rest };
  const scale = scalePattern.exec(rest);
  if (!scale) return { unit, scale: undefined, rest };
  const figure = Number((scale[1] ?? "").replace(",", "."));
  return { unit, scale: figure < 1 ? Math.round(figure * 1000) : figure, rest: rest.replace(scale[0], " ") };
}

/** What kind of quantity a unit measures. */
export function measureOf(unit: WrittenUnit): "EC" | "volume" | "temperature" | "humidity" | undefined {
  if (unit === "C" || unit === "F") return "temperature";
  if (unit === "%") return "humidity";
  if (unit === "" || unit === "mV" || unit === "per") return undefined;
  return unit === "L" || unit === "mL" || unit === "gal" || unit === "qt" || unit === "fl oz" ? "volume" : "EC";
}
