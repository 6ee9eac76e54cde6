import { type LogReading } from "./reading";

/** What is said of one row or cell, or of many in the same words. */
export interface SaidOfRows {
  /** Where the first of them stands, counted from 0; a whole row has no column. */
  readonly row: number;
  readonly column: number | undefined;
  /** All of them, in order. */
  readonly rows: readonly number[];
  /** In the words of the first. */
  readonly reason: string;
  readonly used: boolean;
}

/** Up to this many lines in the same words are read one by one; more are one line. */
const mostAlike = 3;
/** What differs between two reasons in the same words: what the cell holds, and figures. */
const particulars = /"[^"]*"|-?\d+(?:\.\d+)?/g;

/**
 * Rows set aside and cells doubted, in the order of the sheet; where many are said in the same words, they are one
 * line.
 */
export function saidOfRows({ setAside, problems }: Pick<LogReading, "setAside" | "problems">): SaidOfRows[] {
  const lines: SaidOfRows[] = [
    ...setAside.map(({ row, column, reason }) => ({ row, column, rows: [row], reason, used: false })),
    ...problems.map(({ row, column, reason, used }) => ({ row, column, rows: [row], reason, used })),
  ];
  const alike = new Map<string, SaidOfRows[]>();
  for (const line of lines) {
    const key = `${line.column ?? ""}|${String(line.used)}|${line.reason.replace(particulars, "#")}`;
    const group = alike.get(key);
    if (group) group.push(line);
    else alike.set(key, [line]);
  }
  const grouped = [...alike.values()].flatMap((group) => (group.length > mostAlike ? together(group) : group));
  return grouped.sort((a, b) => a.row - b.row || (a.column ?? -1) - (b.column ?? -1));
}

const together = (group: readonly SaidOfRows[]): SaidOfRows[] =>
  group.slice(0, 1).map((first) => ({ ...first, rows: group.flatMap(({ rows }) => rows) }));
