import { type Judgement } from "../judgement";
import { isAbove, isBelow } from "../maths/compare";
import { type Ppm } from "../quantities";

type Cation = "K" | "Ca" | "Mg";

/** One pair that competes for uptake, and the ppm ratio within which neither holds the other back. */
interface Pair {
  readonly over: Cation;
  readonly under: Cation;
  readonly low: number;
  readonly high: number;
  readonly source: string;
}

/**
 * K : Ca : Mg of 3 to 5 : 2 to 3 : 1 [producegrower-cations] gives K/Ca 1 to 2.5, K/Mg 3 to 5, Ca/Mg 2 to 3. Widened
 * where other published figures reach further: Ca/Mg to 5 [producegrower-hardness]; the extract optimum of K 150 to
 * 249, Ca above 200, Mg above 70 [warncke-sme] takes K/Ca to 0.75 and K/Mg to 2; tomato feeds take K/Mg to 7 (common
 * practice).
 */
const pairs: readonly Pair[] = [
  { over: "K", under: "Ca", low: 0.75, high: 2.5, source: "[producegrower-cations] [warncke-sme]" },
  { over: "K", under: "Mg", low: 2, high: 7, source: "[warncke-sme]; up to 7 common practice" },
  { over: "Ca", under: "Mg", low: 2, high: 5, source: "[producegrower-cations] [producegrower-hardness]" },
];

/** Ratios are shown and compared to two decimal places. */
const resolution = 0.01;
const decimals = 2;

/** "balanced", or one or more of "K high against Ca", joined by "; ". */
export type CationWord = string;

/**
 * Whether potassium, calcium and magnesium of a feed stand in each other's way.
 *
 * Feeds the choice of the recovery feed: high K holds Ca and Mg back, high Ca holds Mg back, whatever the EC says. It
 * judges ratios, not amounts: a weak feed can be balanced. When unsure it errs to "balanced", for adding salts does
 * more harm.
 *
 * Formula:  K / Ca, K / Mg, Ca / Mg, each against its limits
 * Valid:    ppm of the elements (not of oxides) in one feed; a missing one: "cannot say"
 * Source:   [producegrower-cations], [producegrower-hardness], [warncke-sme]; the rest common practice
 *
 * @returns "balanced", or the pairs out of balance joined by "; "; the reasons give every ratio and its limits
 * @example cations(ppm(200), ppm(100), ppm(50)).answer // "balanced"
 */
export function cations(k: Ppm, ca: Ppm, mg: Ppm): Judgement<CationWord> {
  const amounts = { K: k, Ca: ca, Mg: mg };
  if (!Object.values(amounts).every((amount) => amount > 0 && Number.isFinite(amount))) {
    return { answer: "cannot say", reasons: ["K, Ca and Mg are all needed, each above 0 ppm"] };
  }
  const reasons = pairs.map(({ over, under, low, high }) => {
    const ratio = (amounts[over] / amounts[under]).toFixed(decimals);
    return `${over}/${under} ${ratio} (${low} to ${high})`;
  });
  const breaches = pairs.flatMap((pair) => breachOf(pair, amounts[pair.over] / amounts[pair.under]));
  return { answer: breaches.length > 0 ? breaches.join("; ") : "balanced", reasons: [reasons.join(", "), basis] };
}

const basis = "limits by weight in ppm of the element; EC cannot show this";

function breachOf({ over, under, low, high }: Pair, value: number): string[] {
  if (isAbove(value, high, resolution)) return [`${over} high against ${under}`];
  return isBelow(value, low, resolution) ? [`${under} high against ${over}`] : [];
}
