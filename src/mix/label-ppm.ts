import { type GramsPerLitre, type Percent, type Ppm } from "../quantities";
import { type Analyte, elementShare } from "./analyte";

const milligramsPerGram = 1000;

/**
 * ppm of an element that a fertiliser gives at so many grams per litre. Labels state oxides: 20 % P2O5 is 8.7 % P.
 *
 * Feeds the strength of the recovery feed, element by element.
 *
 * Formula:  ppm = grams per litre x 1000 x label % / 100 x share of the element in the analyte
 * Valid:    a fertiliser that dissolves wholly
 * Source:   [iupac-weights-2021]; label arithmetic as extension bulletins teach it [extension-label-arithmetic]
 *
 * @param percent % by weight on the label
 * @param analyte what that percentage counts
 * @returns mg/L of the element
 * @example labelPpm(gramsPerLitre(1), labelPercent(20), "P2O5") // 87.3
 */
export function labelPpm(grams: GramsPerLitre, percent: Percent, analyte: Analyte): Ppm {
  return (((grams * milligramsPerGram * percent) / 100) * elementShare(analyte)) as Ppm;
}
