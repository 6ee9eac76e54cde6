import { type LogReading, readLog } from "../../src/index";
import { readCsv } from "../../workbench/files/read-csv";
import { logGrid, type PlacedGrid } from "../../workbench/timeline/log-grid";
import { type PotCase } from "./case-book";

/** The log of a case as a file of its own would give it. */
export const caseText = ({ log }: PotCase): string => `${log.join("\n")}\n`;

export const caseGrid = (pot: PotCase): PlacedGrid =>
  logGrid(readCsv(new TextEncoder().encode(caseText(pot)), "log"), undefined, undefined);

/** The log of a case through the reader that every log goes through. */
export const readCase = (pot: PotCase): LogReading => readLog(caseGrid(pot).grid);
