/** One look at a pot after something was done to it. */
export interface WatchStep {
  readonly name: string;
  /** Hours after it. */
  readonly hours: number;
  /** Of the usual light, 0 to 1: while the roots are in trouble the leaves are asked for less. */
  readonly lightShare: number;
  /** What to measure and what to look at. */
  readonly look: string;
}

const hoursPerDay = 24;
const day = (count: number, lightShare: number, look: string): WatchStep => ({
  name: `day ${count}`,
  hours: count * hoursPerDay,
  lightShare,
  look,
});

/**
 * The looks at a pot after a flush, a pH reset, a weaker feed or a diluted tank: at once, after 1, 24 and 48 hours,
 * then daily to a week.
 *
 * Feeds the watch on the flush sheet and the sheet of its own. Errs to less light and to looking once more.
 *
 * Source:   common practice
 */
export const watchPlan: readonly WatchStep[] = [
  {
    name: "0 h",
    hours: 0,
    lightShare: 0.6,
    look: "runoff pH and EC of the last drain; the saucer empty, the surface free of crust",
  },
  {
    name: "1 h",
    hours: 1,
    lightShare: 0.6,
    look: "one more small sample: a rise says that pockets were missed. Leaves no limper than before",
  },
  {
    name: "24 h",
    hours: hoursPerDay,
    lightShare: 0.6,
    look: "runoff pH and EC before anything else is done. Posture: upright again in the morning?",
  },
  {
    name: "48 h",
    hours: 2 * hoursPerDay,
    lightShare: 0.7,
    look: "runoff pH and EC: inside the limits, or say so. New growth: no fresh burn, no paler tip",
  },
  day(3, 0.7, "new growth and spread; the pot as heavy as usual before a watering"),
  day(4, 0.8, "runoff EC against the day before: a rise means salt from pockets or from the medium"),
  day(5, 0.8, "roots at the wall of the pot: white tips, no smell"),
  day(6, 0.9, "the plant drinks as much as before the trouble?"),
  day(7, 1, "full feed only after two readings in a row inside the limits"),
];
