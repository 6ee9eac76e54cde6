import { type Judgement } from "../judgement";
import { isAbove, isBelow, standing } from "../maths/compare";
import { acceptedSlope, type ProbeLine } from "./ph-probe";

export type ProbeWord = "good" | "clean and repeat" | "usable, watch it" | "reject";

/**
 * Slope, % of Nernst. 95 to 102: [electrode-notes]; 85 to 105 as the outer limits: [probe-acceptance]; between: our
 * judgement.
 */
const slopeTiers: readonly { readonly limits: readonly [number, number]; readonly word: ProbeWord }[] = [
  { limits: [95, 102], word: "good" },
  { limits: [90, 105], word: "clean and repeat" },
  { limits: [85, 105], word: "usable, watch it" },
];
/**
 * mV at pH 7. 30 as the outer limit: [probe-acceptance]; 15, and 60 (one pH) beyond which cleaning does not help: our
 * judgement.
 */
const goodOffset = 15;
const acceptedOffset = 30;
const mostOffset = 60;
/** What a calibration can tell apart: % of slope, mV of offset. */
const slopeResolution = 0.1;
const offsetResolution = 1;

/** When slope and offset disagree the more careful word wins: cleaning comes before use. */
const mostCarefulFirst: readonly ProbeWord[] = ["reject", "clean and repeat", "usable, watch it", "good"];

/**
 * Whether a pH electrode can be trusted, from its slope and its offset.
 *
 * Feeds the trust in every pH of the log; when unsure it errs to cleaning and repeating, which harms no plant. 90 to 95
 * % is mostly a dirty junction, which cleaning brings back; 85 to 90 % is accepted, but the electrode is near its end.
 *
 * Source:   [probe-acceptance], [electrode-notes]; tiers between are our judgement
 *
 * @returns a word, or "cannot say" when slope or offset is no number; the reasons hold both figures
 * @example probeCheck({ slopePercent: 98.8, offsetMillivolts: -15 }).answer // "good"
 */
export function probeCheck({ slopePercent, offsetMillivolts }: ProbeLine): Judgement<ProbeWord> {
  const words = [slopeWord(slopePercent), offsetWord(offsetMillivolts)];
  const answer = words.includes(undefined) ? undefined : mostCarefulFirst.find((word) => words.includes(word));
  return {
    answer: answer ?? "cannot say",
    reasons: [
      `slope ${slopePercent.toFixed(1)} % of Nernst (good 95 to 102, accepted 85 to 105)`,
      `offset ${offsetMillivolts.toFixed(0)} mV at pH 7 (good within 15, accepted within 30, rejected beyond 60)`,
    ],
  };
}

function slopeWord(percent: number): ProbeWord | undefined {
  const [low, high] = acceptedSlope;
  if (isBelow(percent, low, slopeResolution) || isAbove(percent, high, slopeResolution)) return "reject";
  if (!Number.isFinite(percent)) return undefined;
  return slopeTiers.find(({ limits }) => standing(percent, limits, slopeResolution) === "inside")?.word;
}

function offsetWord(millivolts: number): ProbeWord | undefined {
  const size = Math.abs(millivolts);
  if (isAbove(size, mostOffset, offsetResolution)) return "reject";
  if (isAbove(size, acceptedOffset, offsetResolution)) return "clean and repeat";
  if (isAbove(size, goodOffset, offsetResolution)) return "usable, watch it";
  return Number.isFinite(size) ? "good" : undefined;
}
