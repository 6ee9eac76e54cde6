import { missingWords } from "../../cells/missing-words";
import { type DayAt } from "./dates";
import { type Draft } from "../rows/draft";
import { type CellProblem, type LogGrid } from "../reading";
import { isBlank, plain, quoted } from "../../cells/text";
import { timeCell } from "./time-cell";
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

export function putTime(cell: unknown, column: number, hoursOnly: boolean, { draft, problems }: Found): void {
  if (draft.day === undefined || (typeof cell !== "number" && typeof cell !== "string") || isBlank(cell)) return;
  const word = plain(String(cell));
  if (missingWords.has(word) || partsOfDay.has(word)) return;
  const read = timeCell(cell, hoursOnly);
  if ("reason" in read)
    problems.push({ row: draft.row, column, used: false, reason: `${quoted(cell)} ${read.reason}` });
  else {
    draft.day = Math.floor(draft.day) + read.part;
    if (read.doubt !== undefined)
      problems.push({ row: draft.row, column, used: true, reason: `${quoted(cell)} ${read.doubt}` });
  }
}

/** The clock of a row whose day is not known, as a part of a day. */
export function clockOf(cell: unknown, hoursOnly: boolean): number | undefined {
  if ((typeof cell !== "number" && typeof cell !== "string") || isBlank(cell)) return undefined;
  const read = timeCell(cell, hoursOnly);
  return "part" in read ? read.part : undefined;
}

/** Which part of the day a cell of the row names; 0 where none does. */
export function partOfDayIn(cells: readonly unknown[]): number {
  for (const cell of cells) {
    const rank = typeof cell === "string" && cell.length <= longestPart ? partsOfDay.get(plain(cell)) : undefined;
    if (rank !== undefined) return rank;
  }
  return 0;
}

/** "nachmittags" */
const longestPart = 12;

/** Whether all whole numbers of a time column could be hours. */
export const isHoursOnly = (grid: LogGrid, column: number, firstRow: number): boolean =>
  grid.cells.every((cells, row) => {
    const cell = cells[column];
    return row < firstRow || typeof cell !== "number" || !Number.isInteger(cell) || cell <= 24;
  });

