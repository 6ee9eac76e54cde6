import { type Judgement } from "../judgement";
import { standing } from "../maths/compare";
import { type Dated, inOrder } from "../maths/dated";
import { limitsInOrder } from "../maths/limits";
import { mannKendall } from "../maths/mann-kendall";
import { median } from "../maths/median";
import { theilSen } from "../maths/theil-sen";
import { quantities, rounded } from "../quantities";

export type RecoveryTrend = "recovered" | "recovering" | "holding" | "worsening";

/** A trend counts when chance alone shows one as strong less often than this, one-sided. Common practice. */
const trendChance = 0.05;
/** The earliest count of readings that reaches it: 1 of 4! orders is 4.2 % [kendall-1975]. */
const fewestForTrend = 4;
/** Median distance from the line to a standard deviation, for normal scatter: 1 / 0.6745 [hollander-wolfe-1999]. */
const scatterPerMedianDistance = 1.4826;

/**
 * Is the pot recovering? Each reading counts by how far it stands outside the band, so that it works from above and below.
 *
 * Feeds the watch after a flush and the days after. It errs to patience: "recovered" needs the last two readings in band,
 * "recovering" and "worsening" a trend that chance would show less than once in 20, "holding" a change within the scatter.
 *
 * Formula:  d = distance to the band; last two d = 0: recovered; Mann-Kendall on d at 5 %, one-sided: falling, recovering;
 *           rising, worsening; else |Theil-Sen slope of d| x days <= 2 scatters of d about its line: holding
 * Valid:    readings since the flush or the change, in any order of rows; pH, or EC in mS/cm
 * Source:   [mann-1945], [sen-1968]; the band's membership and the holding rule: common practice
 *
 * @throws {Refusal} `order` when low is not below high
 * @example recoveryTrend([6, 5.2, 4.6, 4.1].map((value, day) => ({ day, value })), 2, 3.5).answer // "recovering"
 */
export function recoveryTrend(readings: readonly Dated[], low: number, high: number): Judgement<RecoveryTrend> {
  limitsInOrder(low, high);
  const distances = inOrder(inOrder(readings).map(({ day, value }) => ({ day, value: distance(value, low, high) })));
  const [latest, before] = [distances.at(-1), distances.at(-2)];
  if (latest === undefined) return { answer: "cannot say", reasons: ["no reading yet"] };
  const band = `the band ${low} to ${high}`;
  if (latest.value === 0 && before?.value === 0) return { answer: "recovered", reasons: [`the last two readings are in ${band}`] };
  const now = latest.value === 0 ? `the last reading is in ${band}` : `the last reading is ${rounded(latest.value)} outside ${band}`;
  if (distances.length < fewestForTrend) {
    return { answer: "cannot say", reasons: [now, `${distances.length} of the ${fewestForTrend} readings a trend needs`] };
  }
  return byTrend(distances, now);
}

function distance(value: number, low: number, high: number): number {
  const inside = standing(value, [low, high], quantities.ph.resolution) === "inside";
  return inside ? 0 : Math.max(low - value, value - high);
}

const inAHundred = (share: number): string => (share < 0.01 ? "fewer than 1 of 100 such logs" : `about ${Math.round(100 * share)} of 100 such logs`);

function byTrend(distances: readonly Dated[], now: string): Judgement<RecoveryTrend> {
  const { s, oneSided } = mannKendall(distances);
  const chance = `chance alone shows as much in ${inAHundred(oneSided)}`;
  if (oneSided <= trendChance && s < 0) return { answer: "recovering", reasons: [now, `the distance to the band falls: ${chance}`] };
  if (oneSided <= trendChance && s > 0) return { answer: "worsening", reasons: [now, `the distance to the band grows: ${chance}`] };
  const days = (distances.at(-1)?.day ?? 0) - (distances[0]?.day ?? 0);
  if (!(days > 0)) return { answer: "cannot say", reasons: [now, "all readings are of one moment"] };
  const { slope, at } = theilSen(distances);
  const scatter = scatterPerMedianDistance * median(distances.map(({ day, value }) => Math.abs(value - at(day))));
  const change = Math.abs(slope) * days;
  const said = `a change of ${rounded(change)} over ${rounded(days)} days beside a scatter of ${rounded(scatter)}`;
  if (change <= Math.max(2 * scatter, quantities.ph.resolution)) return { answer: "holding", reasons: [now, said] };
  return { answer: "cannot say", reasons: [now, `${said}: too few readings to tell a trend from chance`] };
}
