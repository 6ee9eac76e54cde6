import { type EcUnit, ecUnits } from "../readings/ec-units";
import { celsiusFromFahrenheit } from "../readings/temperature";
import { litresPerUnit, type VolumeUnit } from "../readings/volume";
import { type LogUnit } from "./units";

/** A conductivity factor is ten times mS/cm, by definition; common practice. */
const cfPerMillisiemens = 10;

/** mS/cm, L, C or %. */
export function inEngineUnit(value: number, unit: LogUnit): number {
  if (unit === "mS/cm" || unit === "" || unit === "L" || unit === "C" || unit === "%") return value;
  if (unit === "F") return celsiusFromFahrenheit(value);
  if (unit === "CF") return value / cfPerMillisiemens;
  if (unit === "share") return value * 100;
  if (unit in ecUnits) return value / ecUnits[unit as EcUnit];
  if (unit in litresPerUnit) return value * litresPerUnit[unit as VolumeUnit];
  return unit.startsWith("ppm ") ? value / Number(unit.slice("ppm ".length)) : value;
}
