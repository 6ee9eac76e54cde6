import { shareOn, usualRamp } from "../mix/recovery-feed";
import { days } from "../quantities";
import { type Watch } from "./timeline/watch";

/** The first two days after a flush are watched before anything else is done. Common practice. */
const watchedDays = 2;

/**
 * What the days after a flush ask for, in words: a gentle feed, and when to measure; `undefined` when none is that near.
 *
 * Feeds the pane and the command line beside the verdict, which knows readings but no events. The share is that of
 * `recoveryFeed`; it errs to the weaker feed.
 *
 * Source:   common practice
 *
 * @param flushes in order of time
 * @param lastDay the day of the latest row
 * @example afterFlush([{ flushed: 10, from: 11, to: 12 }], 30) // undefined
 */
export function afterFlush(flushes: readonly Watch[], lastDay: number): string | undefined {
  const flushed = flushes.at(-1)?.flushed;
  const since = flushed === undefined ? NaN : Math.floor(lastDay - flushed);
  if (!(since >= 0 && since <= usualRamp.daysToFull)) return undefined;
  const when = since === 0 ? "Flushed on the day of the last row" : since === 1 ? "Flushed the day before the last row" : `Flushed ${since} days before the last row`;
  const share = Math.floor(100 * shareOn(days(since), usualRamp));
  const feed = since < usualRamp.daysToFull ? `feed at ${share} % of what the full feed adds to the water` : "the feed may be at full strength again";
  const measure = since <= watchedDays ? "measure the runoff 24 and 48 h after the flush before anything else is done" : "measure at each irrigation until a week after it";
  return `${when}: ${feed}, and ${measure}.`;
}
