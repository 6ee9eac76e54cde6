import { days1904, isDay, serialOf } from "../../cells/serial-date";
import { type DateOrder } from "../reading";
import { plain } from "../../cells/text";
import { timeCell } from "./time-cell";
import { monthWords, weekdayBefore } from "./date-words";

/** A date as written: known, or waiting for the column to say which figure is the day. */
export type DateCell =
  | { readonly kind: "day"; readonly day: number }
  | {
      readonly kind: "either";
      readonly first: number;
      readonly second: number;
      readonly year: number;
      readonly shortYear: boolean;
      readonly dots: boolean;
      readonly part: number;
    }
  | { readonly kind: "none"; readonly reason: string };

/** Serials of 1954 to 2119: what a log's dates can be; smaller figures count days, larger ones are yyyymmdd. */
const serials: readonly [number, number] = [20_000, 80_300];
/** A log of readings is kept in these years; a "year" outside them is a figure read the wrong way round. */
const years: readonly [number, number] = [1990, 2099];
/** A last figure below this is more likely a day behind its year ("24-05-03") than the year of a log. */
const oldestFiguresYear = 2010;

const isoText = /^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})(?:(?:t|,?\s)\s*(.*))?$/;
const figuresText = /^(\d{1,2})\s?([-/.])\s?(\d{1,2})\s?\2\s?'?(\d{4}|\d{2})(?:,?\s+(.*))?$/;
const dayMonthText =
  /^(\d{1,2})(?:\.|st|nd|rd|th)?[\s-]*(?:de\s)?([a-z]{3,10})\.?[\s,-]*(?:de\s)?'?(\d{4}|\d{2})(?:,?\s+(.*))?$/;
const monthDayText = /^([a-z]{3,10})\.?\s*(\d{1,2})(?:st|nd|rd|th)?,?\s+(\d{4})(?:,?\s+(.*))?$/;
const noYearText = /^(?:\d{1,2}[./-]\d{1,2}\.?|\d{1,2}\.?[\s-]*[a-z]{3,10}|[a-z]{3,10}\s\d{1,2})$/;

const none = (reason: string): DateCell => ({ kind: "none", reason });

/** Reads one date cell; dates with figures only wait for `settledDay`. */
export function dateCell(cell: unknown, date1904: boolean): DateCell {
  if (typeof cell === "number") return dateOfNumber(cell, date1904);
  if (typeof cell !== "string") return none("is not a date");
  const text = plain(cell).replace(weekdayBefore, "");
  if (/^(?:\d{8}|\d{5}(?:\.\d+)?)$/.test(text)) return dateOfNumber(Number(text), date1904);
  const iso = isoText.exec(text);
  if (iso) return civil(Number(iso[1]), Number(iso[2]), Number(iso[3]), iso[4]);
  const figures = figuresText.exec(text);
  if (figures) return either(figures);
  const dayMonth = dayMonthText.exec(text);
  if (dayMonth) return civil(fullYear(dayMonth[3]), monthOf(dayMonth[2]), Number(dayMonth[1]), dayMonth[4]);
  const monthDay = monthDayText.exec(text);
  if (monthDay) return civil(Number(monthDay[3]), monthOf(monthDay[1]), Number(monthDay[2]), monthDay[4]);
  const word = /[a-z]+/.exec(text)?.[0];
  const lacksYear = noYearText.test(text) && (word === undefined || monthOf(word) > 0);
  return none(lacksYear ? "has no year" : "is not a date");
}

function dateOfNumber(cell: number, date1904: boolean): DateCell {
  if (cell >= serials[0] && cell < serials[1]) return { kind: "day", day: date1904 ? cell + days1904 : cell };
  if (!/^\d{8}$/.test(String(cell))) return none("is not a date");
  return civil(Math.floor(cell / 10_000), Math.floor(cell / 100) % 100, cell % 100, undefined);
}

function either(found: RegExpExecArray): DateCell {
  const year = fullYear(found[4]);
  const isShort = found[4]?.length === 2;
  if (isShort && year < oldestFiguresYear) return none("is not a date of a log: type the year with four digits");
  if (!(year >= years[0] && year <= years[1])) return none(`lies in the year ${year}`);
  return {
    kind: "either",
    first: Number(found[1]),
    second: Number(found[3]),
    year,
    shortYear: isShort,
    dots: found[2] === ".",
    part: timePart(found[5]),
  };
}

function civil(year: number, month: number, day: number, time: string | undefined): DateCell {
  if (!isDay(year, month, day)) return none("is not a day of the calendar");
  if (!(year >= years[0] && year <= years[1])) return none(`lies in the year ${year}`);
  return { kind: "day", day: serialOf(year, month, day) + timePart(time) };
}

/** The time behind a date; a zone is not needed, the log's own clock is meant. */
function timePart(text: string | undefined): number {
  if (text === undefined || text === "") return 0;
  const read = timeCell(text.replace(/\s*(?:z|[+-]\d{2}:?\d{2})$/, ""), false);
  return "part" in read ? read.part : 0;
}

/** Two digits mean this century: no log is older. */
const fullYear = (digits: string | undefined): number => Number(digits) + (digits?.length === 2 ? 2000 : 0);

const monthOf = (word: string | undefined): number =>
  monthWords.findIndex((starts) => starts.some((start) => word?.startsWith(start) === true)) + 1;

/** The day that a date of figures means in the column's order; `undefined` when the calendar has none. */
export function settledDay(date: DateCell & { kind: "either" }, order: DateOrder): number | undefined {
  const [day, month] = order === "day first" ? [date.first, date.second] : [date.second, date.first];
  return isDay(date.year, month, day) ? serialOf(date.year, month, day) + date.part : undefined;
}
