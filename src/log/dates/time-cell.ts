import { partOfDay } from "../../cells/serial-date";
import { plain } from "../../cells/text";

/** A time of day as a part of a day, perhaps with a doubt; or a reason why there is none. */
export type TimeCell = { readonly part: number; readonly doubt?: string } | { readonly reason: string };

const clockText = /^(\d{1,2})\s?[:.h]\s?(\d{2})(?::(\d{2})(?:\.\d+)?)?\s*(am|pm|a\.m\.|p\.m\.|uhr|h|hrs)?$/;
const hourText = /^(\d{1,2})\s*(am|pm|a\.m\.|p\.m\.|h|uhr)$/;
const runText = /^(\d{3,4})\s*(am|pm|h|hrs|uhr)?$/;

/**
 * Reads a time: a part of a day, a date with one, 940 and 1530, "9:40 PM". `hoursOnly`: the column's whole numbers are
 * all hours; otherwise a lone 9 could be nine o'clock or nine past midnight, and stays unread.
 */
export function timeCell(cell: number | string, hoursOnly: boolean): TimeCell {
  if (typeof cell === "number") return timeOfNumber(cell, hoursOnly);
  const text = plain(cell);
  if (/^0?[.,]\d{3,}$/.test(text)) return { part: Number(text.replace(",", ".")) };
  const found = clockText.exec(text);
  if (found) return timeOf(Number(found[1]), Number(found[2]), Number(found[3] ?? 0), found[4]);
  const run = runText.exec(text);
  if (run) return timeOf(Math.floor(Number(run[1]) / 100), Number(run[1]) % 100, 0, run[2]);
  const hour = hourText.exec(text);
  if (hour) return timeOf(Number(hour[1]), 0, 0, hour[2]);
  return { reason: "is not a time" };
}

function timeOfNumber(cell: number, hoursOnly: boolean): TimeCell {
  if (!Number.isFinite(cell)) return { reason: "is not a time" };
  if (cell >= 0 && cell < 1) return { part: cell };
  if (!Number.isInteger(cell)) return cell > 1 ? { part: cell - Math.floor(cell) } : { reason: "is not a time" };
  if (hoursOnly && cell > 0) return { part: partOfDay(cell % 24, 0) };
  if (cell >= 100) return timeOf(Math.floor(cell / 100), cell % 100, 0, undefined);
  return { reason: "is not a time: type it as 9:40" };
}

function timeOf(hours: number, minutes: number, seconds: number, half: string | undefined): TimeCell {
  if (hours > 23 || minutes > 59 || seconds > 59) return { reason: "is not a time" };
  const afternoon = half?.startsWith("p") === true;
  const morning = half?.startsWith("a") === true;
  if ((afternoon || morning) && hours === 0) return { reason: "is not a time: 12 comes before 1 with am and pm" };
  if (morning && hours > 12) return { reason: "is after noon and says am" };
  if (afternoon && hours > 12) return { part: partOfDay(hours, minutes, seconds), doubt: "says pm after a 24 h time" };
  const hour24 = afternoon || morning ? (hours % 12) + (afternoon ? 12 : 0) : hours;
  return { part: partOfDay(hour24, minutes, seconds) };
}
