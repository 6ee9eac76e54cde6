/** Days from 1899-12-30, the day 0 of the sheet's 1900 date system (from March 1900 on), to 1970-01-01. */
const serialOf1970 = 25_569;
/** What a serial of the 1904 date system lacks against one of the 1900 system. */
export const days1904 = 1462;
const monthLengths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;
const minutesPerDay = 1440;

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Whether the calendar has that day. */
export function isDay(year: number, month: number, day: number): boolean {
  const length = month === 2 && isLeap(year) ? 29 : monthLengths[month - 1];
  return length !== undefined && day >= 1 && day <= length;
}

/**
 * The sheet's serial number of a day, in the 1900 date system. Whole numbers only: no clock, no time zone.
 *
 * Formula:  days of the whole years from 1970, with a leap day every 4th year but not the 100th unless the 400th
 * Valid:    1901 to 9999
 */
export function serialOf(year: number, month: number, day: number): number {
  const before = year - 1;
  const leapDays = Math.floor(before / 4) - Math.floor(before / 100) + Math.floor(before / 400) - 477;
  let days = (year - 1970) * 365 + leapDays + (month > 2 && isLeap(year) ? 1 : 0) + day - 1;
  for (const length of monthLengths.slice(0, month - 1)) days += length;
  return days + serialOf1970;
}

/** A time of day as a part of a day. */
export const partOfDay = (hours: number, minutes: number, seconds = 0): number =>
  (hours * 60 + minutes + seconds / 60) / minutesPerDay;
