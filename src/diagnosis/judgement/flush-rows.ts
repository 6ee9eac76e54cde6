import { type Medium } from "../../bands/media-table";
import { containerCapacity } from "../../flush/container-capacity";
import { median } from "../../maths/median";
import { type Litres } from "../../quantities";
import { weakestFeedEc } from "../root-zone-reading";
import { daysBetween, type Entry, shareDrained, tells } from "./entry";

/** A flush by its water: so many times the usual watering, or this share of what the pot holds. Common practice. */
const timesUsual = 3;
const shareOfCapacity = 0.5;
/** A flush runs through: more than this part drains. Common practice. */
const flushDrains = 0.8;
/** Weak against the usual feed: below this share of it. Common practice. */
const weakShare = 0.6;
/** The next portion of a flush follows within two hours and a little, in days. Common practice. */
const nextPortionDays = 2.1 / 24;
/** It is of the same water, within this share, and of at least this part of the litres before. Common practice. */
const sameWater = 0.2;
const samePour = 0.5;

export interface PotSize {
  readonly containerLitres: Litres | undefined;
  readonly medium: Medium | undefined;
}

/**
 * Which rows are of a flush, row by row.
 *
 * Errs to seeing a flush, as `phaseOf`.
 *
 * Formula:  a row is of a flush when its note says so; when it took weak water (below 0.5 mS/cm, or 0.6 of the usual
 *           feed), at least 3 usual waterings or half of what the pot holds, and more than 0.8 of it drained; or when
 *           it follows such a row within two hours, in the same water and at least half the litres
 * Source:   common practice
 */
export function flushRows(filled: readonly Entry[], size: PotSize): readonly boolean[] {
  const flushed = filled.map(flushFinder(filled, size));
  for (let at = flushed.indexOf(true) + 1; at > 0 && at < filled.length; at++) {
    if (flushed[at - 1] === true) flushed[at] ||= isNextPortion(filled[at - 1], filled[at]);
  }
  return flushed;
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

/** Whether a row goes on with a flush whose word was written once. */
function isNextPortion(before: Entry | undefined, entry: Entry | undefined): boolean {
  const days = daysBetween(before, entry);
  if (days === undefined || !(days > 0 && days <= nextPortionDays)) return false;
  const [ec, ecBefore] = [entry?.inputEc, before?.inputEc];
  const [litres, litresBefore] = [entry?.inputLitres, before?.inputLitres];
  if (ec === undefined || ecBefore === undefined || Math.abs(ec - ecBefore) > sameWater * ecBefore) return false;
  return litres === undefined || litresBefore === undefined || litres >= samePour * litresBefore;
}
