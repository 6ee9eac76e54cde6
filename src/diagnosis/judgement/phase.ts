import { type Medium } from "../../bands/media-table";
import { containerCapacity } from "../../flush/container-capacity";
import { lastPlace } from "../../maths/latest";
import { median } from "../../maths/median";
import { usualRamp } from "../../mix/recovery-feed";
import { type Litres } from "../../quantities";
import { weakestFeedEc } from "../root-zone-reading";
import { calendarDays, daysBetween, type Entry, isFilled, isRead, shareDrained, tells } from "./entry";
import { type Phase } from "./words";

/** Flush rows less than this many days apart are the portions of one. Common practice. */
const sameFlushDays = 1.5;
/** A row so many days later is of another day, whatever it holds: the flush is over. Common practice. */
const dayAfter = 0.75;
/** Without dates so many readings after a flush are its days of recovery. Common practice. */
const recoveryReadings = 3;
/** A flush by its water: so many times the usual watering, or this share of what the pot holds. Common practice. */
const timesUsual = 3;
const shareOfCapacity = 0.5;
/** A flush runs through: more than this part drains. Common practice. */
const flushDrains = 0.8;
/** Weak against the usual feed: below this share of it. Common practice. */
const weakShare = 0.6;

export interface PotSize {
  readonly containerLitres: Litres | undefined;
  readonly medium: Medium | undefined;
}

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
 * Formula:  a row is of a flush when its note says so, or when it took weak water (below 0.5 mS/cm, or 0.6 of the
 *           usual feed), at least 3 usual waterings or half of what the pot holds, and more than 0.8 of it drained
 * Source:   common practice
 */
export function phaseOf(entries: readonly Entry[], size: PotSize): PhaseFound {
  const filled = entries.filter(isFilled);
  const isFlush = flushFinder(filled, size);
  const flushed = withItsPortions(filled, filled.map(isFlush));
  const last = flushed.lastIndexOf(true);
  const plain = last < 0 ? filled : filled.filter((_, at) => flushed[at] !== true);
  if (last < 0)
    return {
      phase: "quiet",
      flush: [],
      daysSince: undefined,
      flushesInAWeek: 0,
      evidence: sinceRepotting(plain),
      before: plain,
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

function flushFinder(filled: readonly Entry[], { containerLitres, medium }: PotSize): (entry: Entry) => boolean {
  const litres = filled.flatMap(({ inputLitres }) =>
    inputLitres !== undefined && inputLitres > 0 ? [inputLitres] : [],
  );
  const usual = litres.length === 0 ? Infinity : median(litres);
  let known: number | undefined;
  const usualFeed = (): number => (known ??= usualFeedOf(filled));
  const holds =
    containerLitres === undefined || medium === undefined || medium === "water culture"
      ? Infinity
      : containerCapacity(containerLitres, medium);
  const least = Math.min(timesUsual * usual, shareOfCapacity * holds);
  return (entry) => {
    if (tells(entry, "flush", "pH reset")) return true;
    const { inputEc, inputLitres } = entry;
    if (inputEc === undefined || inputLitres === undefined) return false;
    const runsThrough = inputLitres >= least && (shareDrained(entry) ?? 0) > flushDrains;
    return runsThrough && (inputEc < weakestFeedEc || inputEc < weakShare * usualFeed());
  };
}

/** The middle of what was fed; 0 where no row tells it. */
function usualFeedOf(filled: readonly Entry[]): number {
  const feeds = filled.flatMap(({ inputEc }) => (inputEc !== undefined && inputEc >= weakestFeedEc ? [inputEc] : []));
  return feeds.length === 0 ? 0 : median(feeds);
}

/** Portions of one flush follow within two hours, in days, alike in water and litres. Common practice. */
const nextPortionDays = 2.1 / 24;
const sameWater = 0.2;
const samePour = 0.5;

/** The rows that go on with a flush whose word was written once. */
function withItsPortions(filled: readonly Entry[], found: readonly boolean[]): readonly boolean[] {
  const flushed = [...found];
  filled.forEach((entry, at) => {
    const before = filled[at - 1];
    if (flushed[at] !== true && flushed[at - 1] === true && before !== undefined)
      flushed[at] = isNextPortion(before, entry);
  });
  return flushed;
}

function isNextPortion(before: Entry, entry: Entry): boolean {
  const days = daysBetween(before, entry);
  const { inputEc: ec, inputLitres: litres } = entry;
  if (days === undefined || !(days > 0 && days <= nextPortionDays) || ec === undefined) return false;
  const isSameWater = before.inputEc !== undefined && Math.abs(ec - before.inputEc) <= sameWater * before.inputEc;
  return isSameWater && (litres === undefined || litres >= samePour * (before.inputLitres ?? 0));
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
