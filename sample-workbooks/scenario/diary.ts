/** One line of a grower's log; what was not measured is absent. EC in mS/cm, volumes in litres, temperature in C. */
export interface Entry {
  /** Days since the log began, 0 for the first. */
  readonly day: number;
  readonly vessel: string;
  readonly feedEc?: number | undefined;
  readonly runoffEc?: number | undefined;
  readonly feedPh?: number | undefined;
  readonly runoffPh?: number | undefined;
  readonly feedLitres?: number | undefined;
  readonly runoffLitres?: number | undefined;
  readonly celsius?: number | undefined;
  readonly note?: string | undefined;
}

/** The readings an entry may lack. */
export type Reading = Exclude<keyof Entry, "day" | "vessel" | "note">;

/** The first day of every log, in the spreadsheet's day count: 5 January 2026, a Monday. */
export const firstDay = 46027;

/** A day of the log in the spreadsheet's day count. */
export const sheetDay = (entry: Entry): number => firstDay + entry.day;
