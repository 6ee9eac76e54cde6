import { type EcUnit } from "../readings/ec-units";
import { type VolumeUnit } from "../readings/volume";
import { plain } from "./text";

/** Units an EC column can be in; a ppm figure means nothing without its scale, so the scale is part of the unit. */
export type EcLogUnit = EcUnit | "CF" | `ppm ${number}`;
export type VolumeLogUnit = VolumeUnit;
export type TemperatureLogUnit = "C" | "F";
/** A humidity as a percentage, or as a share of 1. */
export type HumidityLogUnit = "%" | "share";
/** The unit of a column as it stands in the sheet; `""` for what has none (pH, dates, names, notes). */
export type LogUnit = EcLogUnit | VolumeLogUnit | TemperatureLogUnit | HumidityLogUnit | "";

/**
 * A unit as written: `ppm` may still lack its scale; `mV`, doses and what else the log does not read (`per`) are units
 * of nothing in it; `each` is a volume of one plant or one area.
 */
export type WrittenUnit = Exclude<LogUnit, `ppm ${number}`> | "ppm" | "mV" | "per" | "each";

const free = (pattern: string): RegExp => new RegExp(`(?<![a-z])(?:${pattern})(?![a-z])`);

/** In this order: the longer spelling first. Works on text made plain. */
const patterns: readonly (readonly [RegExp, WrittenUnit])[] = [
  [
    free(
      `(?:ml|l|lit(?:er|re)s?|gal)\\s?(?:/|per|a|pro|par|por|je)\\s?(?:plants?|pots?|pflanze|topf|planta?e?|m2|sqm|maceta)`,
    ),
    "each",
  ],
  [free("(?:ml|l|g|mg|gal|tsp)\\s?/\\s?(?:gal|h|hr|min|day|d|m3|kg|plants?)|(?:ml|g|tsp)\\s?/\\s?l"), "per"],
  [free("(?:mmol|meq|umol|mol)(?:\\s?/\\s?(?:l|m2.*|s|kg))?|g\\s?/\\s?m3|(?:g|mg)\\s?/\\s?kg"), "per"],
  [free("umhos?\\s?/\\s?cm"), "uS/cm"],
  [free("mmhos?\\s?/\\s?cm"), "mS/cm"],
  [free("us(?:\\s?/\\s?cm|\\s?cm-1)?|micro\\s?s(?:iemens)?(?:\\s?/\\s?cm)?"), "uS/cm"],
  [free("ms\\s?/\\s?m"), "mS/m"],
  [free("ms(?:\\s?/\\s?cm|\\s?cm-1)?|milli\\s?s(?:iemens)?(?:\\s?/\\s?cm)?"), "mS/cm"],
  [free("ds\\s?/\\s?m|ds m-1"), "dS/m"],
  [free("s\\s?/\\s?m"), "S/m"],
  [free("cf"), "CF"],
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
  [free("[km]?pa|hpa|mbar|lux|mm|cm|inch(?:es)?|kg|g"), "per"],
];

/** A ppm scale beside the word ppm: 500, 640, 700, or as a factor. */
const scalePattern = /(?:[x×*]\s?)?(?<![\d.])(500|640|700|0[.,]50?|0[.,]64|0[.,]70?)(?![\d.]|\s?(?:ml|l)\b)/;
/** A meter that shows ten times, or a thousand times, mS/cm. */
const timesTen = /[x×*]\s?10(?!\d)/;
const timesThousand = /[x×*]\s?1000(?!\d)/;

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
  if (unit === undefined && timesTen.test(rest))
    return { unit: "CF", scale: undefined, rest: rest.replace(timesTen, " § ") };
  if (unit === undefined && timesThousand.test(rest))
    return { unit: "uS/cm", scale: undefined, rest: rest.replace(timesThousand, " § ") };
  if (unit !== "ppm" && !/\btds/.test(rest)) return { unit, scale: undefined, rest };
  const scale = scalePattern.exec(rest);
  if (!scale) return { unit, scale: undefined, rest };
  const figure = Number((scale[1] ?? "").replace(",", "."));
  return { unit, scale: figure < 1 ? Math.round(figure * 1000) : figure, rest: rest.replace(scale[0], " ") };
}

/** Whether a written unit is one that a figure can be read in as it stands. */
export const isReadable = (unit: WrittenUnit | undefined): unit is Exclude<LogUnit, `ppm ${number}` | ""> =>
  unit !== undefined && unit !== "ppm" && measureOf(unit) !== undefined;

/** What kind of quantity a unit measures. */
export function measureOf(unit: WrittenUnit): "EC" | "volume" | "temperature" | "humidity" | undefined {
  if (unit === "C" || unit === "F") return "temperature";
  if (unit === "%" || unit === "share") return "humidity";
  if (unit === "" || unit === "mV" || unit === "per" || unit === "each") return undefined;
  return unit === "L" || unit === "mL" || unit === "gal" || unit === "qt" || unit === "fl oz" ? "volume" : "EC";
}
