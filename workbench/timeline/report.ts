import { cellRef } from "hucre";
import { type LogReading, type LogVerdict, type Timeline } from "../../src/index";
import { dayInWords } from "../../taskpane/drawing/time-axis";
import { type PlacedGrid } from "./log-grid";

/** All that was found in a log. */
export interface TimelineFindings {
  readonly placed: PlacedGrid;
  readonly reading: LogReading;
  readonly vessel: string | undefined;
  /** Waits for a medium or limits. */
  readonly verdict: LogVerdict | undefined;
  readonly timeline: Timeline;
}

/** The findings as one JSON object, for other programs. */
export function asJson({ placed, reading, vessel, verdict, timeline }: TimelineFindings): string {
  const address = addresses(placed);
  const questionOf = (column: number): string | undefined => reading.questions.find(({ columns }) => columns.includes(column))?.text;
  const found = {
    sheet: placed.sheet,
    columns: reading.columns.map(({ column, letters, header, quantity, unit }) => {
      const question = questionOf(column);
      return { address: letters, header, quantity, unit: unit ?? null, ...(question === undefined ? {} : { question }) };
    }),
    questions: reading.questions.map(({ text, choices }) => ({ text, choices })),
    vessels: reading.vessels,
    vessel: vessel ?? null,
    rowsUsed: reading.rows.length,
    rowsSetAside: reading.setAside.map(({ row, column, reason }) => ({ cell: address.cell(row, column), reason })),
    rowsBlank: reading.blankRows,
    cellProblems: reading.problems.map(({ row, column, reason, used }) => ({ cell: address.cell(row, column), reason, used })),
    verdict: verdict?.answer ?? null,
    reasons: verdict?.reasons ?? [],
    next: verdict?.next ?? null,
    measureAgain: verdict?.measureAgain ?? null,
    afterFlush: timeline.afterFlush ?? null,
    restsOnRows: (verdict?.rows ?? []).map((row) => address.row(row)),
    lanes: timeline.lanes.map(({ name, unit, trend }) => ({ name, unit, trend: trend.words, changePerDay: trend.changePerDay ?? null })),
    events: timeline.events.map(({ kind, words, day, row }) => ({
      kind, words, date: timeline.axis === "dates" ? dayInWords(day) : null, row: address.row(row),
    })),
  };
  return `${JSON.stringify(found, null, 2)}\n`;
}

/** The findings as lines for a person at a terminal. */
export function asText({ placed, reading, vessel, verdict, timeline }: TimelineFindings): string {
  const address = addresses(placed);
  const columns = reading.columns
    .filter(({ quantity }) => quantity !== "other")
    .map(({ letters, header, quantity, unit, read }) => `  ${letters} "${header}": ${quantity}${unit ? `, ${unit}` : ""}${read ? "" : " (not read)"}`);
  const aside = reading.setAside.slice(0, 20).map(({ row, column, reason }) => `  ${address.cell(row, column)}: ${reason}`);
  const more = reading.setAside.length > 20 ? [`  and ${reading.setAside.length - 20} more`] : [];
  const stands =
    verdict === undefined
      ? ["Where things stand: name the medium (--medium coir) or limits (--band) to have it judged"]
      : [`Where things stand: ${verdict.answer}`, ...verdict.reasons.map((reason) => `  - ${reason}`), `Next: ${verdict.next}`, `Measure again: ${verdict.measureAgain}`];
  const lanes = timeline.lanes.map(({ name, unit, trend }) => `  ${name}${unit === "" ? "" : `, ${unit}`}: ${trend.words}`);
  const events = timeline.events.map(({ kind, words, day }) => `  ${timeline.axis === "dates" ? `${dayInWords(day)}: ` : ""}${kind} (${words})`);
  return [
    `${placed.sheet}: ${reading.rows.length} rows used, ${reading.setAside.length} set aside, ${reading.blankRows} blank${vessel === undefined ? "" : `; shown: ${vessel} of ${reading.vessels.join(", ")}`}`,
    "Columns", ...columns, ...(aside.length > 0 ? ["Set aside", ...aside, ...more] : []),
    ...stands, ...(timeline.afterFlush === undefined ? [] : [timeline.afterFlush]), "Lanes", ...lanes, ...(events.length > 0 ? ["Events", ...events] : []), "",
  ].join("\n");
}

/** What the log's keeper must answer before it can be read, and with which option. */
export function unanswered({ reading }: TimelineFindings): string {
  const option: Record<LogReading["questions"][number]["kind"], string> = {
    "what is this column": '--column "C=runoff EC"',
    "ppm scale": "--ppm-scale 500",
    "EC unit": "--ec-unit uS/cm",
    "volume unit": "--volume-unit gal",
    "temperature unit": "--temperature-unit F",
    "date order": '--date-order "day first"',
    "which row is the header": "--header-row 3",
    layout: "in the sheet itself",
  };
  return reading.questions.map(({ kind, text }) => `${text} Answer with ${option[kind]}`).join("\n");
}

function addresses({ grid }: PlacedGrid) {
  const row = (place: number): number => (grid.rowNumbers[place] ?? place) + 1;
  const cell = (place: number, across: number | undefined): string => cellRef(row(place) - 1, grid.columnNumbers[across ?? 0] ?? 0);
  return { row, cell };
}
