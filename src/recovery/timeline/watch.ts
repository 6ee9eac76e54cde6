import { type LogEvent } from "../../log/log";

/** The time after a flush in which the root zone is watched before anything else is done, in days. */
export interface Watch {
  readonly flushed: number;
  readonly from: number;
  readonly to: number;
}

/** Hours after a flush between which the first recovery shows. Common practice. */
const watchHours: readonly [from: number, to: number] = [24, 48];

const hoursPerDay = 24;

/** Flushes less than this many days apart are the portions of one. */
const sameFlushDays = 1.5;

/**
 * The 24 to 48 hour watch after each flush; several flush notes within a day and a half are one flush, timed from the
 * last.
 *
 * @param events in order of time
 * @example watches([{ kind: "flush", words: "flushed", day: 10, row: 3 }]) // [{ flushed: 10, from: 11, to: 12 }]
 */
export function watches(
  events: readonly (LogEvent & { readonly day: number; readonly row?: number })[],
): readonly Watch[] {
  const flushes = events.filter(({ kind }) => kind === "flush").map(({ day }) => day);
  const last = flushes.filter((day, place) => !((flushes[place + 1] ?? Infinity) - day < sameFlushDays));
  return last.map((flushed) => ({
    flushed,
    from: flushed + watchHours[0] / hoursPerDay,
    to: flushed + watchHours[1] / hoursPerDay,
  }));
}
