import { type LogRow } from "./log";

/** A row that has a place in time. */
export interface PlacedRow extends LogRow {
  readonly day: number;
}

export interface LogInTime {
  /** `readings` when no row has a date: then a day is the place of the row in the log, counted from 1. */
  readonly axis: "dates" | "readings";
  /** Oldest first; rows of one moment keep their order in the sheet. */
  readonly rows: readonly PlacedRow[];
  /** Rows without a date in a log that has dates: nobody can tell where they belong. */
  readonly undated: number;
}

/**
 * The rows of a log, or of one of its vessels, in order of time.
 *
 * @example logInTime([]).axis // "readings"
 */
export function logInTime(rows: readonly LogRow[], vessel?: string): LogInTime {
  const chosen = vessel === undefined ? rows : rows.filter((row) => row.vessel === vessel);
  const dated = chosen.filter((row): row is PlacedRow => row.day !== undefined);
  if (dated.length === 0)
    return { axis: "readings", rows: chosen.map((row, place) => ({ ...row, day: place + 1 })), undated: 0 };
  return {
    axis: "dates",
    rows: dated.sort((a, b) => a.day - b.day || a.row - b.row),
    undated: chosen.length - dated.length,
  };
}
