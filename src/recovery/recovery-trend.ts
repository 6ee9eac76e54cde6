import { type Judgement } from "../judgement";
import { type Dated, daysSpanned, inOrder } from "../maths/dated";
import { lastPlace } from "../maths/latest";
import { limitsInOrder } from "../maths/limits";
import { mannKendall } from "../maths/mann-kendall";
import { median } from "../maths/median";
import { theilSen } from "../maths/theil-sen";
import { rounded } from "../quantities";
import { inUnitOfLimits, meterStep, meterTolerance } from "../readings/series-unit";

export type RecoveryTrend = "recovered" | "recovering" | "likely recovering" | "holding" | "relapsed" | "worsening";

/** A trend counts when chance alone shows one as strong less often than this, one-sided. Common practice. */
const trendChance = 0.05;
/** The earliest count of readings that reaches it: 1 of 4! orders is 4.2 % [kendall-1975]. */
const fewestForTrend = 4;
/** Median distance from the line to a standard deviation, for normal scatter: 1 / 0.6745 [hollander-wolfe-1999]. */
const scatterPerMedianDistance = 1.4826;
/** Half a step as the machine writes it, 0.00499999, is half a step. */
const roundOff = 1e-6;

/** The readings as steps of their meter outside the band, so that one log says the same in mS/cm and in uS/cm. */
interface Course {
  readonly steps: readonly Dated[];
  readonly step: number;
  readonly high: number;
  /** Where the last reading stands, in words. */
  readonly now: string;
}

/**
 * Is the pot recovering? Each reading counts by how far it stands outside the band, so that it works from above and
 * below.
 *
 * Feeds the watch after a flush and the days after. It errs to patience: "recovered" needs the last two readings in
 * band, "recovering" and "worsening" a trend that chance would show less than once in 20, "holding" a change within the
 * scatter.
 *
 * Formula:  d = steps of the meter outside the band; last two d = 0: recovered; last two outside after one inside:
 *           relapsed, but for a trend back; 2 or 3 readings, each nearer by more than the meter can be off: likely
 *           recovering; Mann-Kendall on d at 5 %, one-sided: falling, recovering; rising, worsening; else |Theil-Sen
 *           slope of d| x days <= 2 scatters of d about its line, or one step: holding
 * Valid:    readings since the flush or the change, in any order of rows; pH, or EC in mS/cm, uS/cm or ppm as its
 *           limits are
 * Source:   [mann-1945], [sen-1968]; the band's membership and the other rules: common practice
 *
 * @throws {Refusal} `order` when low is not below high; `wrong-unit` for readings a hundredfold beyond their limits
 * @example recoveryTrend([6, 5.2, 4.6, 4.1].map((value, day) => ({ day, value })), 2, 3.5).answer // "recovering"
 */
export function recoveryTrend(readings: readonly Dated[], low: number, high: number): Judgement<RecoveryTrend> {
  limitsInOrder(low, high);
  inUnitOfLimits(readings.map(({ value }) => value), low, high);
  const course = courseOf(readings, low, high);
  const { steps } = course;
  const [latest, before] = [steps.at(-1), steps.at(-2)];
  if (latest === undefined) return { answer: "cannot say", reasons: ["no reading yet"] };
  if (latest.value === 0 && before?.value === 0) {
    return { answer: "recovered", reasons: [`the last two readings are in the band ${low} to ${high}`] };
  }
  const outSince = steps.slice(lastPlace(steps, ({ value }) => value === 0) + 1);
  if (outSince.length >= 2 && outSince.length < steps.length) return afterRelapse({ ...course, steps: outSince });
  return steps.length < fewestForTrend ? fewReadings(course) : byTrend(course);
}

function courseOf(readings: readonly Dated[], low: number, high: number): Course {
  const step = meterStep(high);
  const outside = (value: number): number =>
    Math.max(0, Math.round(Math.max(low - value, value - high) / step - roundOff));
  const steps = inOrder(inOrder(readings).map(({ day, value }) => ({ day, value: outside(value) })));
  const last = steps.at(-1)?.value ?? 0;
  const band = `the band ${low} to ${high}`;
  return {
    steps,
    step,
    high,
    now: last === 0 ? `the last reading is in ${band}` : `the last reading is ${rounded(last * step)} outside ${band}`,
  };
}

/** Back in the band once and out again: a trend back is told, otherwise the relapse. */
function afterRelapse(course: Course): Judgement<RecoveryTrend> {
  const back = byTrend(course);
  if (back.answer === "recovering") return back;
  return {
    answer: "relapsed",
    reasons: [course.now, `out of the band ${course.steps.length} times in a row after it was back in`],
  };
}

/** Two or three readings make no trend; each nearer to the band by more than its meter can be off is a good sign. */
function fewReadings({ steps, step, high, now }: Course): Judgement<RecoveryTrend> {
  const nearer = steps.slice(1).every(({ value }, at) => {
    const earlier = steps[at]?.value ?? NaN;
    return (earlier - value) * step > meterTolerance(high + earlier * step);
  });
  if (steps.length >= 2 && nearer) {
    const said = "each reading nearer to the band by more than the meter can be off";
    return {
      answer: "likely recovering",
      reasons: [now, said, `${fewestForTrend} readings would tell it from chance`],
    };
  }
  return { answer: "cannot say", reasons: [now, `${steps.length} of the ${fewestForTrend} readings a trend needs`] };
}

const inAHundred = (share: number): string =>
  share < 0.01 ? "fewer than 1 of 100 such logs" : `about ${Math.round(100 * share)} of 100 such logs`;

function byTrend({ steps, step, now }: Course): Judgement<RecoveryTrend> {
  const { s, oneSided } = mannKendall(steps);
  if (oneSided <= trendChance) {
    const [answer, moves] = s < 0 ? (["recovering", "falls"] as const) : (["worsening", "grows"] as const);
    const chance = `chance alone shows as much in ${inAHundred(oneSided)}`;
    return { answer, reasons: [now, `the distance to the band ${moves}: ${chance}`] };
  }
  const days = daysSpanned(steps);
  if (!(days > 0)) return { answer: "cannot say", reasons: [now, "all readings are of one moment"] };
  const { slope, at } = theilSen(steps);
  const scatter = scatterPerMedianDistance * median(steps.map(({ day, value }) => Math.abs(value - at(day))));
  const change = Math.abs(slope) * days;
  const said = `a change of ${rounded(change * step)} over ${rounded(days)} days beside a scatter of ${rounded(scatter * step)}`;
  if (change <= Math.max(2 * scatter, 1)) return { answer: "holding", reasons: [now, said] };
  return { answer: "cannot say", reasons: [now, `${said}: too few readings to tell a trend from chance`] };
}
