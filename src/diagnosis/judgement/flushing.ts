import { acidityOf } from "./acidity";
import { saltCauses } from "./causes";
import { type Conclusion } from "./conclusion";
import { drainTarget } from "./course/feed-target";
import { flushSteps } from "./course/flush-steps";
import { tells } from "./entry";
import { type Facts } from "./facts";
import { type Side, sideOf } from "./level";
import { stopOf } from "./pot-stop";
import { saltOf } from "./salt";
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
  const stop = stopOf(facts, limits, isReset);
  const read = last?.runoffEc === undefined ? undefined : sideOf(last.runoffEc, "ec", limits);
  const side = stop.ranPast === true && read !== undefined ? "high" : read;
  const phSide = last?.runoffPh === undefined ? undefined : sideOf(last.runoffPh, "ph", limits);
  const isDone = side !== undefined && side !== "high";
  const goesOn = stop.answer === "keep going";
  return {
    verdict: goesOn && side === "inside" && !isReset ? "salt buildup" : verdictOf(side, phSide, { isReset }),
    urgency: goesOn && salt.urgency === "now" ? "now" : side === "inside" && !goesOn ? "next watering" : "today",
    causes: causesOf(facts, side),
    steps: flushSteps(facts, stop, { after: isReset ? "rinse" : "flush", isDone }),
    reasons: stop.reasons,
  };
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
