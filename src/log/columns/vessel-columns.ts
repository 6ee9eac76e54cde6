import { isBlank, plain } from "../../cells/text";
import { type LogGrid } from "../reading";
import { type Column } from "./column";

/** So many rows are looked at to learn how the log tells its pots apart. */
const rowsLookedAt = 2000;
/** A second row on more than this share of the moments: the log keeps several pots, or parts of one. */
const repeatsNeeded = 0.25;
/** Of the rows of one moment, this share must be told apart. */
const apartNeeded = 0.8;
/** Lower case and plain: part of a day, not a pot. */
const partsOfDay =
  /^(?:am|pm|morning|noon|midday|afternoon|evening|night|morgens?|mittags?|abends?|manana|tarde|noche|matin|midi|soir|ochtend|middag|avond)$/;

/**
 * Which columns tell the pots apart. A column named as a pot does; where rows of one date are left that nothing tells
 * apart, a column of kinds or places does, and any other column of words is asked about. A count of plants is no pot.
 */
export function settleVessels(columns: readonly Column[], grid: LogGrid, firstRow: number): Column[] {
  const rows = Array.from(
    { length: Math.min(grid.cells.length - firstRow, rowsLookedAt) },
    (_, at) => grid.cells[firstRow + at] ?? [],
  );
  const moments = momentsOf(columns, rows);
  const counted = columns.map((column) =>
    isCount(column) && !tellsApart([column], rows, moments) ? unread(column, "it counts plants or pots") : column,
  );
  if (!hasRepeats(moments)) return counted;
  const vessels = counted.filter(({ quantity }) => quantity === "vessel");
  if (tellsApart(vessels, rows, moments)) return counted;
  const candidates = counted.filter((column) => isCandidate(column, rows));
  const helps = helping(candidates, vessels, (some) => tellsApart(some, rows, moments));
  const known = helps.every(({ header }) => knownKinds.some((concept) => header.meaning.concepts.has(concept)));
  return counted.map((column) => {
    if (!helps.includes(column)) return column;
    return known
      ? { ...column, quantity: "vessel" as const, choices: [], why: "it tells the rows of one day apart" }
      : asked(column);
  });
}

/** Words of kinds and places: what they name can be a pot's name. */
const knownKinds = ["place", "medium"] as const;

/** The columns that tell pots apart: one of kinds or places first, then any other, then two together. */
function helping(
  candidates: readonly Column[],
  vessels: readonly Column[],
  apart: (columns: readonly Column[]) => boolean,
): readonly Column[] {
  const alone = candidates.filter((column) => !isMedium(column) && apart([...vessels, column]));
  const place = alone.find(({ header }) => header.meaning.concepts.has("place"));
  if (place !== undefined) return [place];
  if (alone.length > 0) return alone;
  for (const [at, one] of candidates.entries()) {
    const other = candidates.slice(at + 1).find((each) => apart([...vessels, one, each]));
    if (other !== undefined) return [one, other];
  }
  return [];
}

const isMedium = ({ header }: Column): boolean => header.meaning.concepts.has("medium");

/** A cell as names are compared. */
const textOf = (cell: unknown): string =>
  typeof cell === "string" ? plain(cell) : typeof cell === "number" ? String(cell) : "";

/** The moment of each row as its cells say it; a blank date is the one above. */
function momentsOf(columns: readonly Column[], rows: readonly (readonly unknown[])[]): string[] {
  const at = (wanted: "date" | "time"): number | undefined =>
    columns.find(({ quantity }) => quantity === wanted)?.column;
  const [date, time] = [at("date"), at("time")];
  if (date === undefined) return [];
  let day: unknown;
  return rows.map((cells) => {
    if (!isBlank(cells[date])) day = cells[date];
    return `${textOf(day)} ${time === undefined ? "" : textOf(cells[time])}`;
  });
}

function hasRepeats(moments: readonly string[]): boolean {
  const distinct = new Set(moments).size;
  return moments.length - distinct > distinct * repeatsNeeded;
}

/** Whether the cells of these columns are never the same in two rows of one moment, and come back at other moments. */
function tellsApart(
  columns: readonly Column[],
  rows: readonly (readonly unknown[])[],
  moments: readonly string[],
): boolean {
  if (moments.length === 0) return false;
  const keys = rows.map((cells) => columns.map(({ column }) => textOf(cells[column])).join(" / "));
  const both = new Set(keys.map((key, at) => `${moments[at] ?? ""}|${key}`)).size;
  const names = new Set(keys).size;
  return names > 1 && both >= rows.length * apartNeeded && (names <= rows.length / 2 || new Set(moments).size === 1);
}

/** Pots are numbered up to this; greater figures are readings. */
const highestNumber = 999;

/** An unread column of short words or numbers, or of a kind or place; parts of the day are none. */
function isCandidate(
  { quantity, measure, answer, sample, header, column, saysSide }: Column,
  rows: readonly (readonly unknown[])[],
): boolean {
  if (saysSide === true || quantity !== "other" || measure !== undefined || answer !== undefined || sample.filled === 0)
    return false;
  const { concepts, unit } = header.meaning;
  if (concepts.has("noReading") || concepts.has("person") || unit !== undefined || sample.dates > 0) return false;
  if (concepts.has("place")) return true;
  const isWords = sample.numbers * 2 < sample.filled;
  const isNumber =
    sample.numbers === sample.filled &&
    sample.figures.every(({ value }) => Number.isInteger(value) && value <= highestNumber);
  return (isWords || isNumber) && !rows.some((cells) => partsOfDay.test(textOf(cells[column])));
}

/** "Plants", "No. of pots" over figures: how many there are. */
const isCount = ({ quantity, answer, sample, header: { meaning } }: Column): boolean =>
  quantity === "vessel" && answer === undefined && sample.numbers > 0 && sample.numbers === sample.filled &&
  (meaning.concepts.has("several") || (meaning.concepts.has("number") && meaning.concepts.has("filler")));

const unread = (column: Column, why: string): Column => ({ ...column, quantity: "other", choices: [], why });
const asked = (column: Column): Column => ({
  ...column,
  quantity: undefined,
  choices: ["vessel"],
  why: "rows of one day repeat, and it tells them apart",
  insists: true,
});
