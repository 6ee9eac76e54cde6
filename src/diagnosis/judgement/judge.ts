import { type Band } from "../../bands/band";
import { type Share } from "../../quantities";
import { verdict } from "../verdict";
import { type PotJudgement } from "./pot-judgement";
import { type PotReading } from "./pot-reading";

export interface JudgeOptions {
  /** What part of the water drains, 0 to 1, where the rows do not tell volumes. */
  readonly leachingFraction?: Share | undefined;
  /** Days since the meter's calibration fell due; 0 or less when it is not. */
  readonly calibrationOverdueDays?: number | undefined;
}

/**
 * The judgement of one pot: what an expert would say at it, from its readings, oldest first.
 *
 * @param readings of one pot, oldest first; several pots are never weighed together
 */
export function judge(readings: readonly PotReading[], band: Band, options: JudgeOptions = {}): PotJudgement {
  const { answer, reasons, next, restsOn } = verdict(readings, band, options);
  return {
    verdict: answer,
    urgency: answer === "in band" ? "none" : "next watering",
    phase: "quiet",
    causes: answer === "in band" ? [] : ["not known"],
    course: [{ act: answer === "in band" ? "carry on" : "measure again now", when: answer === "in band" ? "in a week" : "now", says: next }],
    reasons,
    restsOn,
  };
}
