import { type SeriesRole } from "../../src/index";

const sides: Readonly<Record<SeriesRole, string>> = { input: "in", runoff: "runoff", only: "" };

/** The words of single readings: pointed at in the timeline, or listed in its table. */
export const readingsWords = {
  table: "The same as a table",
  tableLabel: "The readings as a table",
  latest: (shown: number, older: number): string =>
    `The latest ${shown} readings; ${older} older ones are in the picture only.`,
  row: "Row",
  rowOf: (row: number): string => `Row ${row}`,
  date: "Date",
  reading: "Reading",
  flags: "Flags",
  events: "Events",
  inBand: "in band",
  readingOf: (place: number): string => `reading ${place}`,
  side: (role: SeriesRole): string => sides[role],
} as const;
