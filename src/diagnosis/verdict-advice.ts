/** What to do and when to measure again, by what was found; short, and to the side that harms the plant less. */
export interface Advice {
  readonly next: string;
  readonly measureAgain: string;
}

const nextIrrigation = "at the next irrigation, input and runoff, collected the same way after the same wait";
const aroundFlush = "Keep drain water away from electrical gear.";
const afterFlush = "after each portion of the flush, then 24 to 48 h after it";

export const advice = {
  "in band": {
    next: "Nothing to mend. Carry on as you are.",
    measureAgain: "in a week, or sooner if the plant changes",
  },
  "salt from the pot": {
    next:
      "Flush once, in portions with pauses, and stop when the runoff is in band or no longer falls. " +
      `Then feed at reduced strength. ${aroundFlush}`,
    measureAgain: afterFlush,
  },
  "salt in soil": {
    next: `Leach slowly, in small portions with long pauses, and stop early. Test the soil itself before a second round. ${aroundFlush}`,
    measureAgain: "24 to 48 h after it, and at each irrigation until the trend turns",
  },
  "salt from the feed": {
    next: "Lower the EC of the feed first: a flush cannot bring the runoff below what you pour in.",
    measureAgain: nextIrrigation,
  },
  "salt from little leaching": {
    next:
      "Let more run off at the next irrigations, a little more each time. " +
      "Flush only if the runoff EC keeps rising or the plant shows it.",
    measureAgain: nextIrrigation,
  },
  "pH out of range": {
    next:
      "Bring the input pH back to the middle of the band and keep it there. " +
      "Correct in small steps, not in one; acids and bases by their labels.",
    measureAgain: "at the next irrigation, and 3 to 7 days after a correction",
  },
  "salt and pH": {
    next: `Salt first: flush once in portions with pauses, with water at a pH inside the band. Judge the pH again after it. ${aroundFlush}`,
    measureAgain: afterFlush,
  },
  "salt and pH, no flush yet": {
    next: "Bring the input pH into the band, and lower the feed's EC or let more run off at the next irrigations. Flush only if the runoff EC keeps rising or the plant shows it.",
    measureAgain: nextIrrigation,
  },
  "confirm with a second reading": {
    next: "Change nothing yet: one reading is not enough to act on.",
    measureAgain: nextIrrigation,
  },
  "check the meter": {
    next: "Rinse the probe, check the meter in fresh standards, and read the same sample again before you act.",
    measureAgain: "as soon as the meter reads its standards right",
  },
  "short of feed": {
    next: "It is neither salt nor pH: the runoff is weaker than the band. Raise the feed's EC a little at a time.",
    measureAgain: nextIrrigation,
  },
  "soil unclear": {
    next: "Do not act on runoff alone. Test the soil itself by a 1:2 or a saturated extract, and keep logging the runoff.",
    measureAgain: "at each irrigation: a trend needs 4 readings or more",
  },
  "measure": {
    next: "Measure pH and EC of what you pour in and of what drains.",
    measureAgain: nextIrrigation,
  },
} as const satisfies Record<string, Advice>;

export type AdviceName = keyof typeof advice;
