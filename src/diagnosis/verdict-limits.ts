import { type Medium } from "../bands/media";

/** How far off a bench meter in good order may be: a reading less than this outside a limit may be inside. */
export const phTolerance = 0.1; // pH; [usgs-nfm-6.4] field readings are stable within 0.05 to 0.1
/** Share of the reading. */
export const ecToleranceShare = 0.03; // [usgs-nfm-6.3] acceptance above 100 uS/cm

/**
 * What runoff of mineral soil leaves in doubt: it comes from large pores and the wall. Its pH stands up to 0.3 off the
 * soil's; the lowest third of a pot is up to 48 % saltier than its middle.
 */
export const soilPhTolerance = 0.3; // common practice
export const soilEcToleranceShare = 0.48; // [ku-hershey-1991]

/** Soil is judged by trend: an exact one-sided test reaches 5 % with 4 readings at the earliest. */
export const trendChance = 0.05; // common practice
export const fewestForTrend = 4; // [kendall-1975], 1/4! = 0.042

/** What a reading of pH, or of EC, may be off before it is told from a limit. */
export function tolerances(medium: Medium | undefined): { readonly ph: (value: number) => number; readonly ec: (value: number) => number } {
  const soil = medium === "soil";
  const [phOff, ecShare] = soil ? [soilPhTolerance, soilEcToleranceShare] : [phTolerance, ecToleranceShare];
  return { ph: () => phOff, ec: (value) => value * ecShare };
}
