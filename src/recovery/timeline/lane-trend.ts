import { trendChance } from "../../diagnosis/judgement/limits";
import { daysSpanned } from "../../maths/dated";
import { mannKendall } from "../../maths/mann-kendall";
import { theilSen } from "../../maths/theil-sen";
import { type LogEvent } from "../../log/log";
import { type TimelinePoint } from "./segments";

/** Where a lane is heading, in words with its number. */
export interface LaneTrend {
  readonly answer: "rising" | "falling" | "no clear trend" | "too few readings";
  /** "rising 0.06 a day (12 readings, since the flush)". */
  readonly words: string;
  /** Per day, or per reading where the log has no dates; `undefined` with too few readings. */
  readonly changePerDay: number | undefined;
  readonly readings: number;
}

interface TrendOptions {
  readonly events: readonly (LogEvent & { readonly day: number })[];
  readonly axis: "dates" | "readings";
  readonly resolution: number;
  readonly decimals: number;
}

/** The trend told is that of the last two weeks, or since the last flush when that is nearer. Common practice. */
const trendDays = 14;

/** With fewer readings no trend can be told from chance at 5 % (Mann-Kendall, exact, one-sided). */
const fewestReadings = 4;

/**
 * The trend of the latest readings of a lane: Theil-Sen slope, told only where Mann-Kendall is significant
 * that way, at the chance by which the judgement names a trend too.
 *
 * Feeds the words beside each lane. When unsure it says "no clear trend", which asks for another reading and harms
 * nothing.
 *
 * Source:   [sen-1968], [mann-1945]
 */
export function laneTrend(points: readonly TimelinePoint[], options: TrendOptions): LaneTrend {
  const { recent, since } = latest(points, options);
  const period = since === "flush" ? "since the flush" : options.axis === "dates" ? `last ${trendDays} days` : "so far";
  const readings = recent.length;
  const days = new Set(recent.map(({ day }) => day)).size;
  if (!(readings >= fewestReadings && days >= fewestReadings)) {
    return {
      answer: "too few readings",
      words: `too few readings (${readings}, ${period})`,
      changePerDay: undefined,
      readings,
    };
  }
  const changePerDay = theilSen(recent).slope;
  const over = `(${readings} readings, ${period})`;
  const { oneSided } = mannKendall(recent);
  const change = Math.abs(changePerDay) * daysSpanned(recent);
  const isClear = oneSided <= trendChance && change >= options.resolution;
  if (!isClear) return { answer: "no clear trend", words: `no clear trend ${over}`, changePerDay, readings };
  const answer = changePerDay > 0 ? "rising" : "falling";
  const step = options.axis === "dates" ? "a day" : "each";
  const amount = Math.abs(changePerDay).toFixed(options.decimals + 1);
  return { answer, words: `${answer} ${amount} ${step} ${over}`, changePerDay, readings };
}

function latest(
  points: readonly TimelinePoint[],
  { events, axis }: TrendOptions,
): { recent: readonly TimelinePoint[]; since: "flush" | "days" } {
  const last = points.at(-1)?.day ?? 0;
  const flushed = events.filter(({ kind, day }) => kind === "flush" && day <= last).at(-1)?.day ?? -Infinity;
  const start = axis === "dates" ? last - trendDays : -Infinity;
  if (flushed >= start && flushed > -Infinity)
    return { recent: points.filter(({ day }) => day > flushed), since: "flush" };
  return { recent: points.filter(({ day }) => day >= start), since: "days" };
}
