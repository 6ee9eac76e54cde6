import { type Sample } from "../../bands/limits";
import { type Medium } from "../../bands/media-table";

// Every limit of the judgement, with its source. "Common practice" where there is none.

/** How far off, in pH, two readings of one sample may be: [usgs-nfm] asks a field reading to settle within 0.1. */
const phTolerance = 0.1;
/** The same for EC, as a share of the limit: [usgs-nfm] passes a meter within 3 % of its standard above 0.1 mS/cm. */
export const ecToleranceShare = 0.03;
/**
 * Drain of soil comes from the large pores and the wall; its pH stands up to 0.3 off the soil's own. Common practice.
 */
const soilPhTolerance = 0.3;
/** The lowest third of a pot, which the drain last met, is up to 48 % saltier than its middle [ku-hershey-1991]. */
const soilEcToleranceShare = 0.48;

/**
 * By how much a reading must stand beyond a limit to be told from it; wider for the drain of soil, not for a test of
 * it.
 */
export function toleranceOf(
  name: "ph" | "ec",
  limit: number,
  { medium, sample }: { readonly medium: Medium | undefined; readonly sample: Sample },
): number {
  const vague = medium === "soil" && !isExtract(sample);
  if (name === "ph") return vague ? soilPhTolerance : phTolerance;
  return limit * (vague ? soilEcToleranceShare : ecToleranceShare);
}

/** An extract is a sample of the medium itself, mixed from several places. */
export const isExtract = (sample: Sample): boolean => sample === "1:2 extract" || sample === "saturated extract";

/**
 * A trend counts when chance alone shows it less often than this, one-sided; it takes 4 readings or more. Common
 * practice.
 */
export const trendChance = 0.05;
/** So many of the latest readings are asked for their trend. Common practice. */
export const trendReadings = 8;
/**
 * From one reading to the next, a rise by this share is one: pots of one treatment scatter by less. Common practice.
 */
export const riseShare = 0.1;

/**
 * From here on, in multiples of the upper limit, weak waterings no longer do: class high by pour-through ends at 6.5 /
 * 4.6 [umass-soluble-salts], rounded down.
 */
export const strongMultiple = 1.3;
/**
 * From here on, in multiples of the upper limit, salt can be an emergency: 7.8 against the medium feeder's 3.5 [umass-
 * soluble-salts].
 */
export const extremeMultiple = 2.2;
/** Beyond the bulletin's last class, mS/cm: extreme whatever the feeder [umass-soluble-salts]. */
export const extremeEc: Readonly<Record<Sample, number>> = {
  drain: 7.8,
  "pour-through": 7.8,
  "1:2 extract": 2.3,
  "saturated extract": 6.0,
};
/**
 * An ordinary drain is an emergency only from twice its upper limit on, for then it is twice any feed that is in band.
 * Common practice.
 */
export const drainMultiple = 2;
/**
 * Drain against feed from which salt is staying: growers' drains stood at 1.0 to 1.7 of their feed [contest-
 * tomato-2020].
 */
export const stayingRatio = 2;

/** pH beyond the limit by this much is far outside: steering alone takes weeks. Common practice. */
export const farPh = 0.7;
/** Within this of its limit a pH is no reason to leave a starving plant unfed. Common practice. */
export const marginalPh = 0.35;
/** A first and only pH reading counts when it stands out by twice what the meter can be off. Common practice. */
export const solePh = 0.2;

/**
 * Eight readings within this share of their middle are steady; foliage plants and poinsettias stood so without harm
 * [ku-hershey-1991].
 */
export const steadyReadings = 8;
export const steadyShare = 0.15;

/**
 * Below this part of the water draining, salt stays: 0.1 is extension's floor [psu-roots-2012], 0.1 to 0.15 the range
 * in which it piles up.
 */
export const littleRunoff = 0.15;
/** Nothing to speak of drains: the pot drinks all it gets. Common practice. */
export const noRunoff = 0.03;
/**
 * The part that should drain once salt is down [msu-accumulation]; a fifth gave the better strawberry crop than a
 * tenth [choi-2022].
 */
export const wantedRunoff = 0.2;
/** The same on salty water, where pots needed up to three times the field formula's share [moore-2022]. */
export const wantedOnSaltyWater = 0.3;
/** More than this part draining is wasted, and takes the feed along: nothing is gained past it [ku-hershey-1991]. */
export const muchRunoff = 0.4;

/** C: colder or warmer than this, the root zone itself is the trouble. Common practice. */
export const rootsAtLeast = 15;
export const rootsAtMost = 28;
/** C: in water itself from here on roots run short of oxygen and rot. Common practice. */
export const tankAtMost = 24;
/** C of the air from here on a plant droops by day whatever its roots do. Common practice. */
export const hotAir = 34;
/** kPa: drier than this does the same. Common practice. */
export const dryAir = 3;

/** Drinking this part of before or less is a plant in trouble. Common practice. */
export const lowUptake = 0.6;
/** A feed at this share of its own upper limit is near it. Common practice. */
export const nearLimit = 0.8;
/** A feed this many times its usual strength, with nothing said, was mixed wrong. Common practice. */
export const leapFactor = 1.4;
/** mS/cm: water of its own above this leaves little room for feed in a pot. Common practice. */
export const saltyWaterEc = 1.0;
/** mg/L as CaCO3 above which the water itself pulls the pH up, acid or not [umd-high-ph]. */
export const muchAlkalinity = 150;
/** At or below this pH the feed has been acidified, and what raises the pH lies elsewhere. Common practice. */
export const acidifiedPh = 6.0;

/** Days without a calibration note after which a verdict on pH begins with a buffer. Common practice. */
export const calibrationDays = 30;
/** A calibration is overdue by the log's own habit at twice its usual interval. Common practice. */
export const overdueIntervals = 2;

/**
 * Days, and readings, of a steady strong feed that make it the grower's choice; how far it may scatter. Common
 * practice.
 */
export const chosenFeedDays = 14;
export const chosenFeedReadings = 3;
export const chosenFeedScatter = 0.2;
/**
 * Drain against a feed chosen to be strong: growers stood at up to 1.7, the one build-up at 1.9 and 2.1 [contest-
 * tomato-2020].
 */
export const chosenFeedRatio = 1.8;

/** Days of topping up after which a tank is changed: what the plants leave has piled up. Common practice. */
export const tankDays = 21;
