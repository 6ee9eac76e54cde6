import { type LogRow, type Timeline } from "../src/index";

/** Which part of a log is drawn. */
export const timeRanges = ["14 days", "60 days", "since the flush", "all"] as const;
export type TimeRange = (typeof timeRanges)[number];

const daysOf: Partial<Record<TimeRange, number>> = { "14 days": 14, "60 days": 60 };

/** The first day of a range, counted back from the last reading; the day of the flush is part of "since the flush". */
export function firstDay(
  { span, watches, axis }: Pick<Timeline, "span" | "watches" | "axis">,
  range: TimeRange,
): number {
  if (span === undefined || axis !== "dates") return -Infinity;
  const days = daysOf[range];
  if (days !== undefined) return span[1] - days;
  return range === "since the flush" ? Math.floor(watches.at(-1)?.flushed ?? -Infinity) : -Infinity;
}

/** The ranges that show something else than the whole log. */
export function rangesFor(timeline: Pick<Timeline, "span" | "watches" | "axis">): TimeRange[] {
  const [first = 0] = timeline.span ?? [];
  const shorter = timeRanges.filter((range) => range !== "all" && firstDay(timeline, range) > first);
  return shorter.length === 0 ? [] : [...shorter, "all"];
}

/** The rows of a range; rows without a date stay out of it. */
export const rowsFrom = (rows: readonly LogRow[], from: number): readonly LogRow[] =>
  from === -Infinity ? rows : rows.filter(({ day }) => day !== undefined && day >= from);
