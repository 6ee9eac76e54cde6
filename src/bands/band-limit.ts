import { Refusal } from "../refusal";
import { type Band } from "./band";

/** The four limits of a band, by the words a grower uses for them. */
export const bandLimits = ["ph low", "ph high", "ph aim", "ec low", "ec high"] as const;
export type BandLimitName = (typeof bandLimits)[number];

/**
 * One limit of a band: pH, the pH to pour at, or runoff EC in mS/cm at 25 C.
 *
 * Feeds a grower's own comparisons and charts.
 *
 * @throws {Refusal} `unknown-choice`, listing the names
 * @example bandLimit(bandFor("coir"), "ec high") // 3.5
 */
export function bandLimit(band: Band, limit: string): number {
  const name = limit.trim().toLowerCase().replaceAll(/\s+/g, " ");
  switch (bandLimits.find((each) => each === name)) {
    case "ph low":
      return band.ph[0];
    case "ph high":
      return band.ph[1];
    case "ph aim":
      return band.phAim;
    case "ec low":
      return band.ec[0];
    case "ec high":
      return band.ec[1];
    case undefined:
      throw new Refusal("unknown-choice", { quantity: "band limit", given: limit, allowed: bandLimits.join(", ") });
  }
}
