import { type Band } from "../../bands/band";
import { latest } from "../../maths/latest";
import { median } from "../../maths/median";
import { quantities } from "../../quantities";
import { doubts } from "../doubts";
import { daysBetween, type Entry, isRead, tells } from "./entry";
import { leapsAcross, leapsTogether } from "./leaps";
import { calibrationDays, overdueIntervals } from "./limits";
import { isMeterOff } from "./meter-notes";
import { sameRecipeDrift } from "./same-recipe";

export interface TrustFound {
  /** Why the meter is doubted, one fact a line; empty when nothing speaks against it. */
  readonly doubts: readonly string[];
  /** No note of the last 30 days says that the pH meter was calibrated. */
  readonly uncalibrated: boolean;
}

export interface TrustOptions {
  readonly band: Band;
  /** Right after a flush weak runoff beside a full feed is no contradiction. */
  readonly afterFlush: boolean;
}

/**
 * So many rows in which input and runoff pH agree to the last digit are no chance; fewer where both stand at 7.0.
 * Common practice.
 */
const equalRows = 5;
const pinnedRows = 3;
/** A glass electrode that has failed rests near 0 mV: pH 7 (Nernst). */
const deadPh = 7;
const deadWithin = 0.05;

/**
 * Whether the readings can be believed, before what they say. A doubted meter never leads to a flush, an acid or a
 * drench.
 *
 * Errs to doubt: a buffer costs five minutes, a flush a week.
 *
 * Source:   believable ranges: src/quantities.ts; the rest common practice
 *
 * @param rows those that are evidence, oldest first
 * @param all the whole log, for its calibration notes
 */
export function trustIn(rows: readonly Entry[], all: readonly Entry[], options: TrustOptions): TrustFound {
  const read = rows.filter(isRead);
  const calibrations = all.filter(calibratesPh);
  const last = all.at(-1);
  const days = daysBetween(calibrations.at(-1), last);
  return {
    doubts: [
      ...new Set([
        ...overdue(calibrations, days),
        ...read.slice(-2).flatMap((entry) => doubts(options.afterFlush ? { ...entry, inputEc: undefined } : entry)),
        ...all.slice(-2).flatMap(({ unread }) => unread ?? []),
        ...leapsAcross(read, options.band),
        ...leapsTogether(sinceCalibrated(read, calibrations), options.band),
        ...saidOff(all, calibrations),
        // Of EC a calibration is seldom told apart: any of them ends the doubt.
        ...sameRecipeDrift(sinceCalibrated(read, all.filter((entry) => tells(entry, "calibration")))),
        ...pinned(read),
      ]),
    ],
    uncalibrated: calibrations.length === 0 || (days !== undefined && days > calibrationDays),
  };
}

/** A leap that a calibration followed is explained; the readings since are believed. */
const sinceCalibrated = (read: readonly Entry[], calibrations: readonly Entry[]): readonly Entry[] =>
  calibrations.length === 0 ? read : read.filter(({ place }) => place >= (calibrations.at(-1)?.place ?? -1));

/** The note that the meter was found to be off, until a calibration after it. */
function saidOff(all: readonly Entry[], calibrations: readonly Entry[]): string[] {
  const found = all.filter(isMeterOff).at(-1);
  if (found === undefined || (calibrations.at(-1)?.place ?? -1) > found.place) return [];
  return [`the note says that the meter is off: ${found.notes ?? ""}`];
}

/** A note of calibration that succeeded, and not of the EC meter alone. */
const calibratesPh = (entry: Entry): boolean =>
  !isMeterOff(entry) &&
  entry.events.some(
    ({ kind, words }) =>
      kind === "calibration" && (!/\bec\b/i.test(words) || /\bph\b|\bboth\b|\bmeters\b|\bpens\b/i.test(words)),
  );

function overdue(calibrations: readonly Entry[], daysSince: number | undefined): string[] {
  const gaps = calibrations.slice(1).map((each, at) => daysBetween(calibrations[at], each) ?? 0);
  if (gaps.length === 0 || daysSince === undefined) return [];
  const usual = median(gaps);
  if (!(daysSince > Math.max(calibrationDays, overdueIntervals * usual))) return [];
  return [
    `last calibrated ${Math.round(daysSince)} days before the last reading; this log does it every ${Math.round(usual)} days`,
  ];
}

/** Input and runoff pH alike to the last digit, row after row. */
function pinned(read: readonly Entry[]): string[] {
  const pairs = latest(read, equalRows, (entry) =>
    entry.inputPh === undefined || entry.runoffPh === undefined ? undefined : entry,
  );
  const alike = pairs
    .filter(({ inputPh, runoffPh }) => Math.abs((inputPh ?? 0) - (runoffPh ?? 0)) < quantities.ph.resolution / 2);
  const dead = pairs
    .slice(-pinnedRows)
    .filter(({ inputPh, runoffPh }) => [inputPh, runoffPh].every((ph) => Math.abs((ph ?? 0) - deadPh) <= deadWithin));
  if (dead.length === pinnedRows)
    return [`input and runoff pH both stand at 7.0 in ${pinnedRows} rows running: a failed electrode reads so`];
  if (alike.length < equalRows) return [];
  return [`input and runoff pH are equal to the last digit in ${equalRows} rows running: two waters never are`];
}
