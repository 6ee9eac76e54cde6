import { type LogReading, readLog } from "../../src/index";
import { readCsv } from "../../workbench/files/read-csv";
import { logGrid, type PlacedGrid } from "../../workbench/timeline/log-grid";
import { type PotCase } from "./case-book";

/** A log as a file of its own would give it. */
export const caseText = (log: readonly string[]): string => `${log.join("\n")}\n`;

const gridOf = (log: readonly string[]): PlacedGrid =>
  logGrid(readCsv(new TextEncoder().encode(caseText(log)), "log"), undefined, undefined);

/** A log of lines through the reader that every log goes through. */
export const readText = (log: readonly string[]): LogReading => readLog(gridOf(log).grid);

export const caseGrid = ({ log }: PotCase): PlacedGrid => gridOf(log);
export const readCase = ({ log }: PotCase): LogReading => readText(log);

/** The cells of a case as they were typed, for a page. */
export function caseCells({ log }: PotCase): string[][] {
  const sign = log[0]?.includes(",") === true ? "," : ";";
  return log.map((line) => line.split(sign));
}
