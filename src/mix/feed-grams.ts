import { type Litres, type Percent, type Ppm } from "../quantities";
import { Refusal } from "../refusal";
import { type Analyte, elementShare } from "./analyte";

const milligramsPerGram = 1000;

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
 * @throws {Refusal} `impossible` when the label holds none of it, or more would be needed than the water's own weight
 * @example feedGrams(litres(100), ppm(200), { percent: labelPercent(20), analyte: "N" }) // 100
 */
export function feedGrams(volume: Litres, target: Ppm, { percent, analyte }: LabelAnalysis): number {
  const share = (percent / 100) * elementShare(analyte);
  const perLitre = target / milligramsPerGram / share;
  if (perLitre >= 0 && perLitre <= milligramsPerGram) return volume * perLitre;
  throw new Refusal("impossible", {
    quantity: `${target} ppm from a label of`,
    given: percent,
    unit: "%",
    allowed: "reachable with less than 1000 g in a litre",
  });
}
