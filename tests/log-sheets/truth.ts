import { type LogQuantity, logQuantities } from "../../src/index";

/** What a person says a column is, and which answers of a reader are as good. */
export interface ColumnTruth {
  /** "keeper": only its keeper knows, so it must not be read. */
  readonly quantity: LogQuantity | "keeper";
  readonly unit: string;
  /** Being asked is as good as being read right. */
  readonly mayAsk: boolean;
  /** Being left unread, with a word why, is as good. */
  readonly mayTell: boolean;
}

/** What one unit is in mS/cm, L, C or %. CF is 0.1 mS/cm: common practice, no source. */
const factors: Readonly<Record<string, number>> = {
  "": 1, "mS/cm": 1, "dS/m": 1, "uS/cm": 0.001, "mS/m": 0.01, "S/m": 10, "CF": 0.1,
  "ppm 500": 1 / 500, "ppm 700": 1 / 700, "L": 1, "mL": 0.001, "C": 1, "%": 1, "share": 100,
};

/**
 * The truth of each column, from one line parted by "|".
 *
 * A column is a quantity and a unit, then "?" where asking is as good, "~" where leaving it unread with a word is, and
 * "/" between two truths that are both good. "keeper" stands where only the keeper knows, "unknown" for a unit that
 * the sheet does not tell.
 */
export function columnTruths(line: string): ColumnTruth[][] {
  return line.split(" | ").map((column) => column.split(" / ").map(oneTruth));
}

function oneTruth(words: string): ColumnTruth {
  const name = words.replace(/[?~]+$/, "").trim();
  const marks = words.slice(name.length);
  const quantity = ["keeper" as const, ...logQuantities].find((known) => `${name} `.startsWith(`${known} `));
  if (quantity === undefined) throw new Error(`no such column: ${words}`);
  const unit = name.slice(quantity.length).trim();
  if (unit !== "unknown" && factors[unit] === undefined) throw new Error(`no such unit: ${words}`);
  const open = quantity === "keeper" || unit === "unknown";
  return { quantity, unit, mayAsk: open || marks.includes("?"), mayTell: marks.includes("~") };
}

const blanks = new Set(["", "-", "NaN", "n/a"]);

/** A plain cell in mS/cm, L, C or %; null when nothing was measured. What is not plain has its value in the data. */
export function plainValue(cell: unknown, unit: string, comma: boolean): number | null {
  if (typeof cell === "string" && blanks.has(cell.trim())) return null;
  const value = typeof cell === "number" ? cell : Number(comma ? String(cell).replace(",", ".") : String(cell));
  if (Number.isNaN(value)) throw new Error(`the data must say what ${JSON.stringify(cell)} is`);
  return value * (factors[unit] ?? Number.NaN);
}
