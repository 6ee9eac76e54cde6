import { type Band } from "./band";

/** Limits that held until the day came on which others took their place. */
export interface EarlierBand {
  readonly band: Band;
  /** The sheet's day from which they no longer hold. */
  readonly until: number;
}

/**
 * The limits that held on a day: those of today, unless earlier ones held then.
 *
 * Feeds the flags of past rows, which are told by the limits that stood when they were written; the judgement of today
 * takes today's alone.
 *
 * Source:   common practice
 *
 * @param earlier oldest first
 * @example bandOn(46090, bandFor("coir"), [{ band: bandFor("peat"), until: 46093 }]).medium // "peat"
 */
export const bandOn = (day: number, today: Band, earlier: readonly EarlierBand[]): Band =>
  earlier.find(({ until }) => day < until)?.band ?? today;
