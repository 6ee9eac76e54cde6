import { colToLetter } from "hucre";
import { type Entry } from "../scenario/diary";
import { type Question } from "./bench-sheet";
import { logColumns } from "./log-sheet";

/** Rows of the log that a question looks at. */
export interface Span {
  readonly first: number;
  readonly last: number;
}

/** The rows written from one day to another, both included. */
export function rowsOfDays(entries: readonly Entry[], from: number, to: number): Span {
  const rows = entries.flatMap(({ day }, i) => (day >= from && day <= to ? [i + 2] : []));
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined) throw new Error(`nothing was written from day ${from} to day ${to}`);
  return { first, last };
}

/** The cells of a column over some rows of the log, as another sheet names them. */
export function cellsOf(header: string, { first, last }: Span): string {
  const letter = colToLetter(logColumns.findIndex((column) => column.header === header));
  return `Log!${letter}${first}:${letter}${last}`;
}

/** The same with anchored rows and columns, as a chart names them. */
export const absoluteCells = (header: string, span: Span): string => cellsOf(header, span).replaceAll(/([A-Z]+)(\d+)/g, "$$$1$$$2").replace(/!(.+):\1$/, "!$1");

const readings = (span: Span): string => ["Feed pH", "Feed EC", "Runoff pH", "Runoff EC"].map((header) => cellsOf(header, span)).join(",");

/** "Salt, pH, both or neither?", with the reason in the next cell. */
export const askedVerdict = (when: string, span: Span): Question => ({
  asked: `Salt, pH, both or neither: ${when}`,
  formula: `RUNOFF.DIAGNOSE(${readings(span)},Band,AVERAGE(${cellsOf("Leached", span)}),TRUE)`,
  lines: 5,
});

export const askedLeached = (when: string, span: Span): Question => ({
  asked: `Share that drained, ${when}`,
  formula: `AVERAGE(${cellsOf("Leached", span)})`,
  style: "answerShare",
  how: "leaching fraction: what drained over what was poured",
});

export const askedCeiling = (when: string, span: Span): Question => ({
  asked: `Ratio at which that share settles, ${when}`,
  formula: `RUNOFF.RATIOCEILING(AVERAGE(${cellsOf("Leached", span)}))`,
  style: "answerHundredths",
  how: "a ratio below this line is what so little drain leads to; more drain lowers the line",
});

/** How fast a reading moves over some rows. */
export const askedDrift = (header: "Runoff EC" | "Runoff pH", when: string, span: Span): Question => ({
  asked: `${header}, change per day, ${when}`,
  formula: `RUNOFF.DRIFT(${cellsOf("Date", span)},${cellsOf(header, span)})`,
  style: "answerThousandths",
  how: header === "Runoff EC" ? "mS/cm a day, from all readings at once; a single outlier does not turn it" : "pH a day, from all readings at once",
});

/** "Is it recovering?", against the limits on the bench sheet. */
export const askedRecovery = (header: "Runoff EC" | "Runoff pH", when: string, span: Span): Question => {
  const limit = header === "Runoff EC" ? "ec" : "ph";
  const limits = `RUNOFF.BANDLIMIT(Band,"${limit} low"),RUNOFF.BANDLIMIT(Band,"${limit} high")`;
  return { asked: `${header}: is it recovering, ${when}`, formula: `RUNOFF.RECOVERYTREND(${cellsOf("Date", span)},${cellsOf(header, span)},${limits},TRUE)` };
};
