import { parse } from "csv-parse/browser/esm/sync";
import { cellRef } from "hucre";
import type { Book, BookCell } from "../book";
import { FileProblem, messageOf } from "./file-problem";
import { limits } from "./open-package";

/** In this order where two fit equally well: a comma may be a decimal sign, the others hardly ever stand in a cell. */
const delimiters = ["\t", ";", ","] as const;
type Delimiter = (typeof delimiters)[number];
const sampleRows = 50;
/** More digits than a number of the sheet keeps: a serial number, not a reading. */
const mostDigits = 15;
/** What a sheet of the host can hold. */
const sheet = { rows: 1_048_576, columns: 16_384 } as const;
/** Letters of one row: a sheet's columns with sixty in each. Beyond it a quote was never closed, or it is no table. */
const longestRow = 1_000_000;
/** A year of a logger's readings, every five minutes, in nearly thirty columns. */
const mostCells = 3_000_000;

/** Reads a text table: a cell becomes a number only where nobody could read it otherwise; all else stays text, formulas too. */
export function readCsv(bytes: Uint8Array, name: string): Book {
  if (bytes.length > limits.packedBytes) throw new FileProblem(limits.tooLarge);
  const text = decoded(bytes);
  if (text.trim() === "") throw new FileProblem("it is empty");
  if (text.includes("\0")) throw new FileProblem("it is not a text table");
  checkLines(text);
  const delimiter = delimiterOf(text);
  checkCells(text, delimiter);
  const rows = rowsOf(text, delimiter, sheet.rows + 1);
  checkSize(rows);
  const hasDecimalCommas = rows.some((row) => row.some((cell) => /^\s*-?\d+,\d+\s*$/u.test(cell)));
  const cells = new Map<string, BookCell>();
  for (const [r, row] of rows.entries()) {
    for (const [c, cell] of row.entries()) if (cell !== "") cells.set(cellRef(r, c), { value: numberIn(cell, hasDecimalCommas) ?? cell });
  }
  return { sheets: [{ name, cells, tables: [] }], names: [], date1904: false };
}

/** Before anything is cut into cells: thirty million commas would be thirty million cells. */
function checkLines(text: string): void {
  let letters = 0;
  for (let at = 0; at < text.length; at++) {
    const code = text.charCodeAt(at);
    letters = code === lineFeed || code === carriageReturn ? 0 : letters + 1;
    if (letters > longestRow) throw rowTooLong();
  }
}

const [lineFeed, carriageReturn] = [0x0a, 0x0d] as const;

/** Every cell but the last of a row ends in the delimiter. */
function checkCells(text: string, delimiter: Delimiter): void {
  let cells = 0;
  for (let at = text.indexOf(delimiter); at >= 0; at = text.indexOf(delimiter, at + 1)) cells++;
  if (cells > mostCells) throw new FileProblem("it has far more cells than any log: it is not opened");
}

const rowTooLong = (): FileProblem => new FileProblem(`it is not a text table: a row of it has more than ${longestRow} letters`);

function checkSize(rows: readonly (readonly string[])[]): void {
  if (rows.length > sheet.rows) throw new FileProblem(`it has more than the ${sheet.rows} rows of a sheet`);
  const wide = rows.findIndex(({ length }) => length > sheet.columns);
  if (wide < 0) return;
  throw new FileProblem(`its row ${wide + 1} has ${rows[wide]?.length ?? 0} columns, more than the ${sheet.columns} of a sheet`);
}

/** Marked UTF-8 or UTF-16, else UTF-8, else what older spreadsheets on Windows write. */
function decoded(bytes: Uint8Array): string {
  const mark = bytes[0] === 0xff && bytes[1] === 0xfe ? "utf-16le" : bytes[0] === 0xfe && bytes[1] === 0xff ? "utf-16be" : "utf-8";
  try {
    return new TextDecoder(mark, { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** The sign that cuts the most of the first rows into equally many cells. */
function delimiterOf(text: string): Delimiter {
  const scores = delimiters.map((delimiter) => [delimiter, evenness(rowsOf(text, delimiter, sampleRows))] as const);
  const best = Math.max(...scores.map(([, score]) => score));
  return best === 0 ? "," : (scores.find(([, score]) => score === best)?.[0] ?? ",");
}

function evenness(rows: readonly string[][]): number {
  const counts = new Map<number, number>();
  for (const { length } of rows) if (length > 1) counts.set(length, (counts.get(length) ?? 0) + 1);
  return Math.max(0, ...counts.values());
}

/** Up to so many rows: thirty million blank lines would be thirty million rows. */
function rowsOf(text: string, delimiter: Delimiter, most: number): string[][] {
  try {
    return parse(text, { delimiter, bom: true, relaxColumnCount: true, relaxQuotes: true, maxRecordSize: longestRow, to: most });
  } catch (problem) {
    if ((problem as { code?: unknown }).code === "CSV_MAX_RECORD_SIZE") throw rowTooLong();
    throw new FileProblem(`it is not a text table: ${messageOf(problem)}`);
  }
}

function numberIn(cell: string, hasDecimalCommas: boolean): number | undefined {
  const text = cell.trim();
  const isPlain = /^-?(?:0|[1-9]\d*)?(?:\.\d+)?$/u.test(text) && /\d/u.test(text) && text.replaceAll(/\D/gu, "").length <= mostDigits;
  const mayBeThousands = hasDecimalCommas && /^-?\d{1,3}\.\d{3}$/u.test(text);
  return isPlain && !mayBeThousands ? Number(text) : undefined;
}
