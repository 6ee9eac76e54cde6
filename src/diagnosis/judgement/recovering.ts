import { type Conclusion } from "./conclusion";
import { measureNext, readingsAfter } from "./course/common-steps";
import { fullFeed, rampOn } from "./course/feed-target";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { isRead } from "./entry";
import { daysText } from "./says/figures";
import { feedSays } from "./says/other-says";
import { mostUrgent } from "./urgency";
import { type Act } from "./words";

/**
 * What the week after a flush has no room for: full feed, more feed, a rest that it has not earned yet, and a test of a
 * medium that is still evening out.
 */
const notYet: ReadonlySet<Act> = new Set<Act>(["carry on", "raise the feed", "feed by the ramp", "test the medium"]);

/**
 * The days after a flush: whatever the readings come to, the feed follows the ramp and the 24 and 48 h readings decide.
 *
 * Errs to the weaker feed: where the runoff is out of band the day of the ramp is held back to its start.
 */
export function recovering(facts: Facts, found: Conclusion): Conclusion {
  const { phase, ec } = facts;
  const day = phase.daysSince ?? phase.evidence.filter(isRead).length;
  const isOut = ec?.side === "high";
  const { share, ec: feedEc } = rampOn(facts, isOut ? 0 : day, fullFeed(facts));
  const others = found.steps.filter(
    ({ act, when }) => !notYet.has(act) && !(act === "measure again now" && when === "at the next watering"),
  );
  const due = readingsAfter().slice(day < 1 ? 0 : 1);
  const readings = day < 2 ? due : [measureNext()];
  const isFlushedAgain = others.some(({ act }) => act === "flush");
  const dayOfRamp = isFlushedAgain || phase.daysSince === undefined ? undefined : Math.floor(day);
  const says = feedSays.ramp(share, feedEc, dayOfRamp);
  const ramp = step("feed by the ramp", "at the next watering", says, { share, ec: feedEc });
  return {
    ...found,
    urgency: mostUrgent(found.urgency, "watch"),
    steps: [...others, ramp, ...(isFlushedAgain ? [] : readings)],
    reasons: [
      ...found.reasons,
      phase.daysSince === undefined
        ? "flushed a few readings before"
        : `flushed ${daysText(phase.daysSince)} before the last reading`,
    ],
  };
}
