import { type Medium } from "../bands/media-table";

/** How far off, in pH, two readings of one sample may be: [usgs-nfm] asks a field reading to settle within 0.1. */
const phTolerance = 0.1;
/** The same for EC, as a share of the limit: [usgs-nfm] passes a meter within 3 % of its standard above 0.1 mS/cm. */
const ecToleranceShare = 0.03;

/** Runoff of soil comes from the large pores and the wall; its pH stands up to 0.3 off the soil's own. Common practice. */
const soilPhTolerance = 0.3;
/** The lowest third of a pot, which the runoff last met, is up to 48 % saltier than its middle [ku-hershey-1991]. */
const soilEcToleranceShare = 0.48;

/** By how much a reading must stand beyond a limit before it is told from it: wider in soil. */
export const tolerance = {
  ph: (_limit: number, medium: Medium | undefined): number => (medium === "soil" ? soilPhTolerance : phTolerance),
  ec: (limit: number, medium: Medium | undefined): number =>
    limit * (medium === "soil" ? soilEcToleranceShare : ecToleranceShare),
} as const;

/** A trend counts when chance alone shows it less often than this, one-sided; it takes 4 readings or more. Common practice. */
export const trendChance = 0.05;
