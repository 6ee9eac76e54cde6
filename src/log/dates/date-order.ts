import { type DateCell } from "./date-cell";
import { type DateOrder } from "../reading";

/** One slip against so many clear dates is a slip; more is two habits in one column. */
const slipShare = 0.2;

/**
 * Which figure of 3/4/2024 is the day: decided by the evidence of the whole column, never by place or locale. A figure
 * above 12 cannot be a month; dates with dots are written day first wherever dots are used.
 *
 * @returns `undefined` when nothing decides: ask. `needed` is false when the column holds no such dates.
 */
export function dateOrder(dates: readonly (DateCell | undefined)[]): {
  readonly order: DateOrder | undefined;
  readonly needed: boolean;
} {
  let dayFirst = 0;
  let monthFirst = 0;
  let dots = false;
  let needed = false;
  for (const date of dates) {
    if (date?.kind !== "either") continue;
    needed = true;
    if (date.first > 12 && date.second <= 12) dayFirst += 1;
    if (date.second > 12 && date.first <= 12) monthFirst += 1;
    if (date.dots) dots = true;
  }
  return { order: orderOf(dayFirst, monthFirst, dots), needed };
}

function orderOf(dayFirst: number, monthFirst: number, dots: boolean): DateOrder | undefined {
  if (dayFirst > 0 && monthFirst <= dayFirst * slipShare) return "day first";
  if (monthFirst > 0 && dayFirst <= monthFirst * slipShare) return "month first";
  return dayFirst === 0 && monthFirst === 0 && dots ? "day first" : undefined;
}

/**
 * Whether two-digit dates begin with their year: the last figure changes from row to row more than the first, as in
 * 24-05-13, 24-05-14. Read as days of 2013 and 2014 they would be years apart.
 */
export function yearComesFirst(dates: readonly (DateCell | undefined)[]): boolean {
  const firsts = new Set<number>();
  const lasts = new Set<number>();
  for (const date of dates) {
    if (date?.kind !== "either" || !date.shortYear) continue;
    firsts.add(date.first);
    lasts.add(date.year);
  }
  return lasts.size > firsts.size;
}
