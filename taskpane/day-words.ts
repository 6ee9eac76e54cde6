import { instant } from "./drawing/instant";

const dayFormat = new Intl.DateTimeFormat("en-GB", {
  timeZone: "UTC",
  weekday: "short",
  day: "numeric",
  month: "short",
});
const fullFormat = new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", day: "numeric", month: "short", year: "numeric" });
const clockFormat = new Intl.DateTimeFormat("en-GB", { timeZone: "UTC", hour: "2-digit", minute: "2-digit" });

/** A sheet's day as it is said beside a step: "Thu 5 Mar", with the time of day where it has one. */
export function dayWords(day: number): string {
  const date = dayFormat.format(instant(day)).replace(",", "");
  return Number.isInteger(day) ? date : `${date}, ${clockFormat.format(instant(day))}`;
}

/** The same with its year, where the days of a whole log are named: "5 Mar 2026". */
export const dayWithYear = (day: number): string => fullFormat.format(instant(day));
