import { isBelow } from "../../../maths/compare";
import { quantities } from "../../../quantities";
import { type Facts } from "../facts";
import { type CourseStep } from "../pot-judgement";
import { type PotStop } from "../pot-stop";
import { flushingSays, measureSays } from "../says/other-says";
import { rampAfterFlush, readingsAfter } from "./common-steps";
import { fullFeed, rampOn } from "./feed-target";
import { step } from "./step";

/** What a flush was, and whether its runoff was read in band: what was not read is not done. */
interface Washed {
  readonly after: "flush" | "rinse";
  readonly isDone: boolean;
}

/** What to do by the stop check: pour on, or let it drain and feed gently. */
export function flushSteps(facts: Facts, stop: PotStop, { after, isDone }: Washed): CourseStep[] {
  const portion = facts.phase.flush.at(-1)?.inputLitres;
  switch (stop.answer) {
    case "keep going":
      return [step("go on flushing", "now", flushingSays.goOn(portion), { litres: portion, ph: facts.band.phAim })];
    case "stop: in band":
    case "stop: no longer falling":
    case "stop: enough water":
      return [step("stop flushing", "now", flushingSays.stop(stop.reasons[0])), ...afterIt(facts, stop, { after, isDone })];
    case "pause and measure again":
    case "cannot say":
      return [
        step("measure again now", "within the hour", measureSays.pause),
        ...(facts.band.medium === "soil" && !isDone ? [noFeedYet()] : [rampAfterFlush(facts, fullFeed(facts), after)]),
        ...readingsAfter(),
      ];
  }
}

/** The days after a flush that has ended: the ramp where it reached the band; otherwise it is not done. */
function afterIt(facts: Facts, { ranPast }: PotStop, { after, isDone }: Washed): CourseStep[] {
  if (isDone && isWashedOut(facts)) return [feedAtOnce(facts), ...readingsAfter()];
  if (isDone || after === "rinse") return [rampAfterFlush(facts, fullFeed(facts), after), ...readingsAfter()];
  if (ranPast === true)
    return [step("measure again now", "within the hour", flushingSays.soakSlowly), ...readingsAfter()];
  const [first] = readingsAfter();
  return [
    facts.band.medium === "soil" ? noFeedYet() : heldFeed(facts),
    ...(first === undefined ? [] : [first]),
    step("measure again now", "48 h after", flushingSays.rinseAgain),
  ];
}

/** Waterlogged or still salty soil is not fed. */
const noFeedYet = (): CourseStep =>
  step("lower the feed", "at the next watering", flushingSays.noFeedYet, { share: 0 });

/** The ramp's first step, held until a reading is in band. */
function heldFeed(facts: Facts): CourseStep {
  const { share, ec } = rampOn(facts, 0, fullFeed(facts));
  return step("feed by the ramp", "at the next watering", flushingSays.heldFeed(share, ec), { share, ec });
}

/** Below what the plant lives on. */
const isWashedOut = ({ phase, band }: Facts): boolean =>
  isBelow(phase.flush.at(-1)?.runoffEc ?? Infinity, band.ec[0], quantities.ec.resolution);

/** A pot that was washed out is fed at once, not below the lower end of its band. */
function feedAtOnce(facts: Facts): CourseStep {
  const { ec = 0, share } = rampOn(facts, 0, fullFeed(facts));
  const to = Math.max(ec, facts.band.ec[0]);
  return step("feed by the ramp", "now", flushingSays.feedAtOnce(to), { ec: to, share });
}
