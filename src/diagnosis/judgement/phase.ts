import { lastPlace } from "../../maths/latest";
import { usualRamp } from "../../mix/recovery-feed";
import { calendarDays, daysBetween, type Entry, isFilled, isRead, tells } from "./entry";
import { flushRows, type PotSize } from "./flush-rows";
import { type Phase } from "./words";

/** Flush rows less than this many days apart are the portions of one. Common practice. */
const sameFlushDays = 1.5;
/** A row so many days later is of another day, whatever it holds: the flush is over. Common practice. */
const dayAfter = 0.75;
/** Without dates so many readings after a flush are its days of recovery. Common practice. */
const recoveryReadings = 3;

/** Where the pot stands in time. */
export interface PhaseFound {
  readonly phase: Phase;
  /** The rows of the latest flush, oldest first; empty where there was none. */
  readonly flush: readonly Entry[];
  /** Days since its end, where the log has dates. */
  readonly daysSince: number | undefined;
  /** How many flushes ended in the week up to the latest. */
  readonly flushesInAWeek: number;
  /** The rows that are evidence: before a flush that is under way, otherwise since the last flush or repotting. */
  readonly evidence: readonly Entry[];
  /** The rows before the latest flush, no flush rows among them. */
  readonly before: readonly Entry[];
}

/**
 * Whether a flush is under way or just over, and which rows count as evidence: rows of a flush never do.
 *
 * Errs to seeing a flush: water poured on top of one harms more than a week of patience.
 *
 * Source:   common practice; the rows of a flush as `flushRows`
 */
export function phaseOf(entries: readonly Entry[], size: PotSize): PhaseFound {
  const filled = entries.filter(isFilled);
  const flushed = flushRows(filled, size);
  const last = flushed.lastIndexOf(true);
  if (last < 0)
    return {
      phase: "quiet",
      flush: [],
      daysSince: undefined,
      flushesInAWeek: 0,
      evidence: sinceRepotting(filled),
      before: filled,
    };
  const first = firstOf(filled, flushed, last);
  const before = filled.slice(0, first).filter((_, at) => flushed[at] !== true);
  const since = filled.slice(last + 1);
  const ended = filled[last];
  const daysSince = calendarDays(ended, filled.at(-1));
  const flush = filled.slice(first, last + 1);
  const flushesInAWeek = flushesUpTo(filled, flushed, last);
  const isOver = (daysBetween(ended, filled.at(-1)) ?? 0) >= dayAfter;
  if (!isOver && since.every((entry) => !isRead(entry) && entry.inputEc === undefined)) {
    return { phase: "flushing", flush, daysSince, flushesInAWeek, evidence: sinceRepotting(before), before };
  }
  const recovering =
    daysSince === undefined ? since.filter(isRead).length <= recoveryReadings : daysSince <= usualRamp.daysToFull;
  return {
    phase: recovering ? "after a flush" : "quiet",
    flush,
    daysSince,
    flushesInAWeek,
    evidence: sinceRepotting(since),
    before,
  };
}

/** The first row of the flush that ends at `last`. */
function firstOf(filled: readonly Entry[], flushed: readonly boolean[], last: number): number {
  let first = last;
  while (flushed[first - 1] === true && (daysBetween(filled[first - 1], filled[first]) ?? 0) < sameFlushDays) first--;
  return first;
}

function flushesUpTo(filled: readonly Entry[], flushed: readonly boolean[], last: number): number {
  let count = 0;
  for (let at = last; at >= 0; at = firstOf(filled, flushed, at) - 1) {
    while (at >= 0 && flushed[at] !== true) at--;
    if (at < 0 || (daysBetween(filled[at], filled[last]) ?? 0) > usualRamp.daysToFull) break;
    count++;
  }
  return count;
}

/** A repotted plant stands in another medium: what was read before is history. */
function sinceRepotting(rows: readonly Entry[]): readonly Entry[] {
  const at = lastPlace(rows, (entry) => tells(entry, "repotting"));
  const since = at < 0 ? rows : rows.slice(at);
  return since.some(isRead) ? since : rows;
}
