import { acidityOf } from "../acidity";
import { type Conclusion } from "../conclusion";
import { type Facts } from "../facts";
import { type PotReading } from "../pot-reading";
import { besides, levelReason } from "../reasons";
import { offPh } from "./tank-ph";
import { tooSalty, tooWeak } from "./tank-salt";
import { isOld } from "./tank-state";
import { worthChanging, wellTank } from "./tank-well";

/** In a tank without a drain the solution is one: what is read of it counts, whichever column it stands in. */
export function tankReadings(readings: readonly PotReading[]): readonly PotReading[] {
  return readings.map(({ inputEc, inputPh, runoffEc, runoffPh, ...others }) => ({
    ...others,
    runoffEc: runoffEc ?? inputEc,
    runoffPh: runoffPh ?? inputPh,
    inputEc: undefined,
    inputPh: undefined,
  }));
}

/**
 * A tank without a drain: EC up, the plants drink water; EC down, they take salt; pH follows nitrogen, alkalinity and
 * roots.
 *
 * Errs to water and small steps; salt is set right before pH, and a tank eaten empty is fed before it.
 *
 * Source:   common practice; set points of 5 and 10 alike for tomatoes [signore-2016]
 */
export function tankConclusion(facts: Facts): Conclusion {
  const { ec, ph, plant } = facts;
  const acidity = acidityOf(facts);
  const reasons = [levelReason(ec, "ec", facts), levelReason(ph, "ph", facts), ...besides(facts)];
  if (ec?.side === "high") return tooSalty(facts, ec.latest, { acidity, reasons });
  const isStarved = ec?.side === "low" && acidity.degree !== "far";
  if (acidity.degree !== "none" && !isStarved) return offPh(facts, acidity, reasons);
  if (ec?.side === "low") return tooWeak(facts, { acidity, reasons });
  return plant.ill || isOld(facts) ? worthChanging(facts, reasons) : wellTank(facts, reasons);
}
