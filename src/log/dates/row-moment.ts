import { missingWords } from "../../cells/missing-words";
import { type DayAt } from "./dates";
import { type Draft } from "../rows/draft";
import { type CellProblem, type LogGrid } from "../reading";
import { readOnce } from "../../cells/read-once";
import { isBlank, plain, quoted } from "../../cells/text";
import { type TimeCell, timeCell } from "./time-cell";
import { partsOfDay } from "./date-words";

/** Said of a row that stands in a dated log without a date of its own. */
export const noDate = "the row has no date";

interface Found {
  readonly draft: Draft;
  readonly problems: CellProblem[];
}

export function putDay(at: DayAt, column: number, { draft, problems }: Found): void {
  if (at === "waits") return;
  if (at === "blank") problems.push({ row: draft.row, column, used: false, reason: noDate });
  else if ("reason" in at) problems.push({ row: draft.row, column, used: false, reason: at.reason });
  else {
    draft.day = at.day;
    if (at.doubt !== undefined) problems.push({ row: draft.row, column, used: true, reason: at.doubt });
  }
}

export function putTime(read: TimeCell | undefined, cell: unknown, column: number, { draft, problems }: Found): void {
  if (draft.day === undefined || read === undefined) return;
  if ("reason" in read)
    problems.push({ row: draft.row, column, used: false, reason: `${quoted(cell)} ${read.reason}` });
  else {
    draft.day = Math.floor(draft.day) + read.part;
    if (read.doubt !== undefined)
      problems.push({ row: draft.row, column, used: true, reason: `${quoted(cell)} ${read.doubt}` });
  }
}

/** How a column's times are read: nothing where a cell holds none, or only names a part of the day. */
export function timeReader(hoursOnly: boolean): (cell: unknown) => TimeCell | undefined {
  const readText = readOnce((text) => {
    const word = plain(text);
    return isBlank(text) || missingWords.has(word) || partsOfDay.has(word) ? undefined : timeCell(text, hoursOnly);
  });
  return (cell) => {
    if (typeof cell === "string") return readText(cell);
    return typeof cell !== "number" || Number.isNaN(cell) ? undefined : timeCell(cell, hoursOnly);
  };
}

/** Which part of the day a cell of the row names, counted from the morning. */
export function partOfDayIn(cells: readonly unknown[]): number | undefined {
  for (const cell of cells) {
    const rank = typeof cell === "string" && cell.length <= longestPart ? partsOfDay.get(plain(cell)) : undefined;
    if (rank !== undefined) return rank;
  }
  return undefined;
}

/** "nachmittags" */
const longestPart = 12;

/** Whether all whole numbers of a time column could be hours. */
export const isHoursOnly = (grid: LogGrid, column: number, firstRow: number): boolean =>
  grid.cells.every((cells, row) => {
    const cell = cells[column];
    return row < firstRow || typeof cell !== "number" || !Number.isInteger(cell) || cell <= 24;
  });

