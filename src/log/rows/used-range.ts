import { type LogUnit, measureOf } from "../../cells/units";
import { quantities } from "../../quantities";
import { type Measure } from "../columns/measures";
import { ghostPh } from "./measure-checks";

/** Between which figures, in the engine's unit, a single cell is read; beyond them its reading is left out. */
export interface UsedRange {
  readonly low: number;
  /** Whether the low end itself is read. */
  readonly withLow: boolean;
  readonly high: number;
}

const [lowestEc] = quantities.ec.plausible;
const [, highestEc] = quantities.ec.physical;
const [, highestPh] = quantities.ph.physical;
const [lowestLitres, highestLitres] = quantities.litres.physical;
const [coldest, warmest] = quantities.airCelsius.plausible;
const [driest, wettest] = quantities.humidityPercent.physical;

const ranges: Readonly<Record<Measure, UsedRange>> = {
  EC: { low: lowestEc, withLow: true, high: highestEc },
  pH: { low: ghostPh, withLow: false, high: highestPh },
  volume: { low: lowestLitres, withLow: true, high: highestLitres },
  temperature: { low: coldest, withLow: true, high: warmest },
  humidity: { low: driest, withLow: false, high: wettest },
};

/**
 * The range in which `loggedReading` reads a figure of a column in this unit: for formulas that cannot call it.
 *
 * Source:   src/log/rows/measure-checks.ts
 *
 * @param unit of the column; "" for pH
 * @example usedRange("uS/cm") // { low: 0.1, withLow: true, high: 200 }
 */
export function usedRange(unit: LogUnit): UsedRange {
  if (unit === "") return ranges.pH;
  return ranges[(unit.startsWith("ppm ") ? undefined : measureOf(unit as "mS/cm")) ?? "EC"];
}
