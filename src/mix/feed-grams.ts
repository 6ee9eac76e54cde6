import { type Litres, type Percent, type Ppm, rounded } from "../quantities";
import { Refusal } from "../refusal";
import { type Analyte, elementShare } from "./analyte";

const milligramsPerGram = 1000;
/**
 * g/L: what is stated at 1 % or less are traces, of which no feed takes so much; a share was typed for a percentage.
 * Common practice.
 */
const mostForTraces = 10;

/** A fertiliser by what its label says. */
export interface LabelAnalysis {
  /** % by weight. */
  readonly percent: Percent;
  readonly analyte: Analyte;
}

/**
 * Grams of a fertiliser that give a tank so many ppm of an element: the inverse of `labelPpm`.
 *
 * Feeds mixing the recovery feed. What the water already holds is not taken off.
 *
 * Formula:  grams = V x ppm / 1000 / (label % / 100 x share of the element in the analyte)
 * Valid:    a fertiliser that dissolves wholly
 * Source:   as `labelPpm`
 *
 * @param target mg/L of the element
 * @throws {Refusal} `wrong-unit` for a share typed as a percentage; `impossible` when the label holds none of it, or
 *   more would be needed than the water's own weight
 * @example feedGrams(litres(100), ppm(200), { percent: labelPercent(20), analyte: "N" }) // 100
 */
export function feedGrams(volume: Litres, target: Ppm, { percent, analyte }: LabelAnalysis): number {
  const share = (percent / 100) * elementShare(analyte);
  const perLitre = target / milligramsPerGram / share;
  if (percent > 0 && percent <= 1 && perLitre > mostForTraces) {
    const allowed = `a percentage, 20 for 20 %: ${percent} % would take ${rounded(perLitre)} g in each litre`;
    throw new Refusal("wrong-unit", { quantity: "label analysis", given: percent, unit: "%", allowed });
  }
  if (perLitre >= 0 && perLitre <= milligramsPerGram) return volume * perLitre;
  throw new Refusal("impossible", {
    quantity: `${target} ppm from a label of`,
    given: percent,
    unit: "%",
    allowed: "reachable with less than 1000 g in a litre",
  });
}
