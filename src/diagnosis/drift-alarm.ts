import { type Judgement } from "../judgement";
import { cusum } from "../maths/cusum";
import { ewma } from "../maths/ewma";
import { meanAndScatter } from "../maths/mean-and-scatter";
import { rounded } from "../quantities";
import { meterTolerance } from "../readings/series-unit";
import { Refusal } from "../refusal";

export type DriftAlarm = "steady" | "drifting up" | "drifting down";

/** k and h in scatters of the baseline: [montgomery-2009] gives h as 4 or 5; the larger rings falsely less often. */
const slackScatters = 0.5;
const alarmScatters = 5;
/**
 * A reading counts as at most this far off, so that one odd reading adds 3.5 of the 5 it takes; after
 * [lucas-crosier-1982].
 */
const mostScatters = 4;
/** How much the latest reading weighs in the level that is told: the example's weight [nist-handbook] 6.3.2.4. */
const levelWeight = 0.3;
/** Fewer readings say nothing about scatter. Common practice. */
const fewestBaseline = 3;
const usualBaseline = 5;

/**
 * Drift alarm: do the readings still stand where the first ones stood?
 *
 * Feeds the weekly look at a pot that is doing well. It errs to ringing: within 20 more steady readings it rings
 * falsely at some time in 39 of 100 logs with a baseline of 5 readings, in 24 with 10, in 13 with 20, and still rings
 * at the 20th in 27, 14 and 6 (simulated for normal scatter beyond the meter's tolerance; within it, less).
 *
 * Formula:  tabular CUSUM about the baseline's mean, k = 0.5 s, h = 5 s; s = the baseline's standard deviation, at
 *           least the meter's tolerance (2 %, at least 0.05); each reading counted as at most 4 s off; it rings while
 *           the last sum is above h
 * Valid:    pH, or EC in mS/cm, uS/cm or ppm, one reading after the other; a step or a slide, not a slow swing
 * Source:   [nist-handbook] 6.3.2.3; h [montgomery-2009]; the cap after [lucas-crosier-1982]; the level told
 *           [nist-handbook] 6.3.2.4
 *
 * @param baselineCount how many of the first readings are the baseline: 3 or more
 * @throws {Refusal} `impossible` when the baseline is not a whole number of 3 or more
 * @example driftAlarm([6, 6.02, 5.98, 6.01, 5.99, 6.3, 6.35, 6.4]).answer // "drifting up"
 */
export function driftAlarm(values: readonly number[], baselineCount: number = usualBaseline): Judgement<DriftAlarm> {
  if (!(Number.isInteger(baselineCount) && baselineCount >= fewestBaseline)) {
    const allowed = `a whole number of ${fewestBaseline} or more`;
    throw new Refusal("impossible", { quantity: "baseline count", given: baselineCount, allowed });
  }
  const [baseline, since] = [values.slice(0, baselineCount), values.slice(baselineCount)];
  if (since.length === 0) {
    const said = `${values.length} readings: ${baselineCount} make the baseline, at least one more is needed`;
    return { answer: "cannot say", reasons: [said] };
  }
  const { mean, scatter } = meanAndScatter(baseline);
  const tolerance = meterTolerance(mean);
  const step = Math.max(scatter, tolerance);
  const capped = since.map((value) => Math.min(mostScatters, Math.max(-mostScatters, (value - mean) / step)));
  const sums = cusum(capped, 0, slackScatters);
  const used = scatter < tolerance ? `${rounded(step)}, the meter's tolerance` : rounded(step);
  const level = mean + step * (ewma(capped, 0, levelWeight).at(-1) ?? 0);
  const against = `level now ${rounded(level)} against the first ${baselineCount} readings: mean ${rounded(mean)}, scatter ${used}`;
  return alarm(sums, against);
}

function alarm(sums: ReturnType<typeof cusum>, against: string): Judgement<DriftAlarm> {
  const { high, low } = sums.at(-1) ?? { high: NaN, low: NaN };
  const ringing = (side: "high" | "low"): string => {
    const quiet = [...sums].reverse().findIndex((sum) => !(sum[side] > alarmScatters));
    return `the sum stands above ${alarmScatters} scatters in the last ${quiet === -1 ? sums.length : quiet}`;
  };
  const [up, down] = [high > alarmScatters, low > alarmScatters];
  if (up && down) return { answer: "cannot say", reasons: ["the readings leap up and down", against] };
  if (up) return { answer: "drifting up", reasons: [`${ringing("high")} (${rounded(high)} now)`, against] };
  if (down) return { answer: "drifting down", reasons: [`${ringing("low")} (${rounded(low)} now)`, against] };
  if (high <= alarmScatters && low <= alarmScatters) {
    const said = `sums ${rounded(high)} up and ${rounded(low)} down, at most ${alarmScatters} scatters`;
    return { answer: "steady", reasons: [said, against] };
  }
  return { answer: "cannot say", reasons: ["a reading is no number"] };
}
