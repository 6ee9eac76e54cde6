import { type DateCell, dateCell, settledDay } from "./date-cell";
import { dateOrder, yearComesFirst } from "./date-order";
import { type DateOrder, type LogGrid } from "../reading";
import { readOnce } from "../../cells/read-once";
import { isBlank, quoted } from "../../cells/text";

/** A column of dates, ready to be asked row by row. */
export interface Dates {
  /** Whether its dates wait for an answer. */
  readonly asks: boolean;
  readonly at: (row: number) => DayAt;
}

/** The day of a row: known, or why not; `waits` while the column's order is open. */
export type DayAt = { readonly day: number; readonly doubt?: string } | { readonly reason: string } | "blank" | "waits";

const yearFirst: DateCell = { kind: "none", reason: "seems to begin with its year: type it as 2024-05-13" };

/** Reads a whole column of dates, for one cell alone cannot say whether 3/4 is in March or in April. */
export function readDates(grid: LogGrid, column: number, firstRow: number, stated: DateOrder | undefined): Dates {
  const read = (cell: unknown): DateCell => dateCell(cell, grid.date1904 === true);
  const readText = readOnce(read);
  const typed = grid.cells.map((cells, row) => {
    const cell = cells[column];
    if (row < firstRow || isBlank(cell)) return undefined;
    return typeof cell === "string" ? readText(cell) : read(cell);
  });
  const dates = yearComesFirst(typed)
    ? typed.map((date) => (date?.kind === "either" && date.shortYear ? yearFirst : date))
    : typed;
  const evidence = dateOrder(dates);
  const order = stated ?? evidence.order;
  const swapped = evidence.needed && couldBeSwapped(dates);
  return {
    asks: evidence.needed && order === undefined,
    at: (row) => dayAt(dates[row], grid.cells[row]?.[column], order, swapped),
  };
}

function dayAt(date: DateCell | undefined, cell: unknown, order: DateOrder | undefined, swapped: boolean): DayAt {
  if (date === undefined) return "blank";
  if (date.kind === "none") return { reason: `${quoted(cell)} ${date.reason}` };
  if (date.kind === "day") {
    return swapped
      ? { day: date.day, doubt: "a true date among dates typed as text: the sheet may have swapped day and month" }
      : date;
  }
  if (order === undefined) return "waits";
  const day = settledDay(date, order);
  return day === undefined
    ? { reason: `${quoted(cell)} is not a day of the calendar, read ${order}` }
    : { day };
}

/**
 * A sheet set to month-first turns 5/6 into a true date of its own making and leaves 13/6 as text. When the text dates
 * all have a day above 12, the true ones are those it could turn.
 */
const couldBeSwapped = (dates: readonly (DateCell | undefined)[]): boolean =>
  dates.every((date) => date?.kind !== "either" || date.first > 12);
