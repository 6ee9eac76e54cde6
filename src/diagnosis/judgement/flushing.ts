import { type Band } from "../../bands/band";
import { type FlushReading } from "../../flush/flush-reading";
import { flushStop } from "../../flush/flush-stop";
import { type FlushStop, type FlushVerdict } from "../../flush/flush-verdict";
import { overFlushLimit } from "../../flush/over-flush-limit";
import { untilTarget } from "../../flush/until-target";
import { isBelow } from "../../maths/compare";
import { type Ec25, type Litres, quantities } from "../../quantities";
import { acidityOf } from "./acidity";
import { saltCauses } from "./causes";
import { type Conclusion } from "./conclusion";
import { rampAfterFlush, readingsAfter } from "./course/common-steps";
import { drainTarget, fullFeed, rampOn } from "./course/feed-target";
import { flushFigures } from "./course/flush-figures";
import { step } from "./course/step";
import { type Facts } from "./facts";
import { type Entry, tells } from "./entry";
import { type Side, sideOf } from "./level";
import { runsPast } from "./runs-past";
import { saltOf } from "./salt";
import { flushingSays, measureSays } from "./says/other-says";
import { type Cause, type VerdictWord } from "./words";

/**
 * While a flush is under way: go on, pause or stop, by the stop check and nothing else.
 *
 * Errs to pausing: a last reading that cannot be read is measured before more is poured.
 */
export function flushingConclusion(facts: Facts): Conclusion {
  const { band, phase } = facts;
  const last = phase.flush.at(-1);
  const salt = saltOf(facts);
  const isReset =
    phase.flush.some((entry) => tells(entry, "pH reset")) ||
    (salt.degree === "none" && acidityOf(facts).degree !== "none");
  const limits = { ...band, ec: [band.ec[0], drainTarget(facts)] } as const;
  const isFlooded = last !== undefined && tells(last, "heavy pot");
  const isPast = !isReset && runsPast(facts);
  const stop = isPast ? past(last) : isFlooded ? flooded : isReset ? resetStop(facts) : stopCheck(facts, limits);
  const read = last?.runoffEc === undefined ? undefined : sideOf(last.runoffEc, "ec", limits);
  const side = isPast && read !== undefined ? "high" : read;
  const phSide = last?.runoffPh === undefined ? undefined : sideOf(last.runoffPh, "ph", limits);
  const goesOn = stop.answer === "keep going";
  return {
    verdict: goesOn && side === "inside" && !isReset ? "salt buildup" : verdictOf(side, phSide, { isReset }),
    urgency: goesOn && salt.urgency === "now" ? "now" : side === "inside" && !goesOn ? "next watering" : "today",
    causes: causesOf(facts, side),
    steps: stepsOf(
      { answer: stop.answer, why: stop.reasons[0], after: isReset ? "rinse" : "flush", isDone: side !== "high" },
      facts,
    ),
    reasons: stop.reasons,
  };
}

/** A pot that takes no more water gets none, whatever it reads. */
const flooded = {
  answer: "stop: enough water",
  reasons: ["water stands on the pot: it takes no more, and the roots need air"],
} as const;

/** What runs past the roots says nothing of them: what it did not reach is as salty as before. */
const past = (last: Entry | undefined): ReturnType<typeof resetStop> => ({
  answer: "stop: no longer falling",
  reasons: [`the water runs past the roots: what it did not reach is as salty as before${noteOf(last)}`],
});
const noteOf = (last: Entry | undefined): string => (last?.notes === undefined ? "" : ` (noted: ${last.notes})`);

/** To a little inside the band, as the course that began the flush said; never past the over-flush limit. */
function stopCheck(facts: Facts, limits: Band): FlushVerdict {
  const readings = flushReadings(facts);
  const { medium } = facts.band;
  const verdict = flushStop(readings, limits, medium === "water culture" ? undefined : facts.options.containerLitres);
  return untilTarget(verdict, readings, flushFigures(facts).target as Ec25);
}

function flushReadings({ evidence, phase, band }: Facts): FlushReading[] {
  const tellsPh = phase.flush.some(({ runoffPh }) => runoffPh !== undefined);
  const asReading = ({ runoffPh, runoffEc, inputLitres }: Entry, litres = inputLitres): FlushReading => ({
    ph: tellsPh ? runoffPh : band.phAim,
    ec: runoffEc,
    litres: litres as Litres | undefined,
  });
  return [
    ...evidence.slice(-1).map((entry) => ({ ...asReading(entry), litres: undefined })),
    ...phase.flush.map((entry) => asReading(entry)),
  ];
}

/** pH that moves by less than this from portion to portion no longer moves. Common practice. */
const stillMoving = 0.1;

/** The stop check of a pH reset: back inside, no longer moving, or enough water. */
function resetStop({ band, phase, options }: Facts): {
  readonly answer: FlushStop | "cannot say";
  readonly reasons: readonly [string, ...string[]];
} {
  const values = phase.flush.flatMap(({ runoffPh }) => runoffPh ?? []);
  const [last, before] = [values.at(-1), values.at(-2)];
  if (last === undefined || phase.flush.at(-1)?.runoffPh === undefined)
    return { answer: "cannot say", reasons: ["the last runoff pH was not measured: measure it before pouring more"] };
  const poured = phase.flush.reduce((sum, { inputLitres }) => sum + (inputLitres ?? 0), 0);
  const limit =
    options.containerLitres === undefined || band.medium === "water culture"
      ? Infinity
      : overFlushLimit(options.containerLitres, band.medium);
  const side = sideOf(last, "ph", band);
  if (side === "inside" || side.startsWith("barely"))
    return { answer: "stop: in band", reasons: [`runoff pH ${last} is back in ${band.ph[0]} to ${band.ph[1]}`] };
  if (!isBelow(poured, limit, quantities.litres.resolution))
    return { answer: "stop: enough water", reasons: ["the water limit is reached: more only keeps the roots wet"] };
  if (before !== undefined && Math.abs(last - before) < stillMoving)
    return { answer: "stop: no longer falling", reasons: [`runoff pH ${before}, then ${last}: it no longer moves`] };
  return { answer: "keep going", reasons: [`runoff pH ${last} is still outside ${band.ph[0]} to ${band.ph[1]}`] };
}

function verdictOf(
  side: Side | undefined,
  phSide: Side | undefined,
  { isReset }: { readonly isReset: boolean },
): VerdictWord {
  if (side === undefined && phSide === undefined) return "cannot say";
  if (side === "high") return "salt buildup";
  if (side === "low" && !isReset) return "too much water";
  return phSide === "low" || phSide === "high" ? "pH out of range" : "in band";
}

function causesOf(facts: Facts, side: Side | undefined): readonly Cause[] {
  if (side === "low") return ["washed out"];
  return side === "high" ? saltCauses(facts, saltOf(facts)).filter((cause) => cause !== "rebound after a flush") : [];
}

interface Stopped {
  readonly answer: FlushStop | "cannot say";
  readonly why: string;
  readonly after: "flush" | "rinse";
  /** The runoff is in band. */
  readonly isDone: boolean;
}

function stepsOf({ answer, why, after, isDone }: Stopped, facts: Facts): Conclusion["steps"] {
  const portion = facts.phase.flush.at(-1)?.inputLitres;
  switch (answer) {
    case "keep going":
      return [step("go on flushing", "now", flushingSays.goOn(portion), { litres: portion, ph: facts.band.phAim })];
    case "stop: in band":
    case "stop: no longer falling":
    case "stop: enough water":
      return [step("stop flushing", "now", flushingSays.stop(why)), ...afterIt(facts, { after, isDone })];
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
function afterIt(
  facts: Facts,
  { after, isDone }: Pick<Stopped, "after" | "isDone">,
): Conclusion["steps"] {
  if (isDone && isWashedOut(facts)) return [feedAtOnce(facts), ...readingsAfter()];
  if (isDone || after === "rinse") return [rampAfterFlush(facts, fullFeed(facts), after), ...readingsAfter()];
  if (runsPast(facts)) return [step("measure again now", "within the hour", flushingSays.soakSlowly), ...readingsAfter()];
  const [first] = readingsAfter();
  return [
    facts.band.medium === "soil" ? noFeedYet() : heldFeed(facts),
    ...(first === undefined ? [] : [first]),
    step("measure again now", "48 h after", flushingSays.rinseAgain),
  ];
}

/** Waterlogged or still salty soil is not fed. */
const noFeedYet = (): Conclusion["steps"][number] =>
  step("lower the feed", "at the next watering", flushingSays.noFeedYet, { share: 0 });

/** The ramp's first step, held until a reading is in band. */
function heldFeed(facts: Facts): Conclusion["steps"][number] {
  const { share, ec } = rampOn(facts, 0, fullFeed(facts));
  return step("feed by the ramp", "at the next watering", flushingSays.heldFeed(share, ec), { share, ec });
}

/** Below what the plant lives on. */
const isWashedOut = ({ phase, band }: Facts): boolean =>
  isBelow(phase.flush.at(-1)?.runoffEc ?? Infinity, band.ec[0], quantities.ec.resolution);

/** A pot that was washed out is fed at once, not below the lower end of its band. */
function feedAtOnce(facts: Facts): Conclusion["steps"][number] {
  const { ec = 0, share } = rampOn(facts, 0, fullFeed(facts));
  const to = Math.max(ec, facts.band.ec[0]);
  return step("feed by the ramp", "now", flushingSays.feedAtOnce(to), { ec: to, share });
}
