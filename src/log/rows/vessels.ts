import { plain, quoted } from "../../cells/text";
import { type LogRow } from "../log";

type NamedRow = Pick<LogRow, "row" | "vessel">;

/** One spelling of a vessel's name: its words, and its number with a letter behind it. */
interface Spelling {
  readonly text: string;
  readonly words: string;
  readonly number: string;
  count: number;
  readonly firstRow: number;
}

export interface Vessels {
  /** The name each spelling stands for. */
  readonly names: ReadonlyMap<string, string>;
  /** Spellings that were taken for another one's vessel, and where they stand first. */
  readonly joined: readonly { readonly row: number; readonly reason: string }[];
}

/**
 * "Pot 3", "pot3" and "P-03" are one vessel: the same number, and words that begin each other, as long as only one
 * fits.
 */
export function joinVessels(rows: readonly NamedRow[]): Vessels {
  const spellings = collect(rows);
  const all = [...spellings.values()];
  const full = fullWords(all);
  const groups = new Map<string, Spelling[]>();
  for (const spelling of all) {
    const key = `${full.get(spelling.words) ?? spelling.words}#${spelling.number}`;
    groups.set(key, [...(groups.get(key) ?? []), spelling]);
  }
  const names = new Map<string, string>();
  const joined: { row: number; reason: string }[] = [];
  for (const group of groups.values()) nameGroup(group, names, joined);
  return { names, joined: joined.sort((a, b) => a.row - b.row) };
}

function collect(rows: readonly NamedRow[]): Map<string, Spelling> {
  const spellings = new Map<string, Spelling>();
  for (const { row, vessel: text } of rows) {
    const known = text === undefined ? undefined : spellings.get(text);
    if (known) known.count += 1;
    else if (text !== undefined) spellings.set(text, { text, ...parts(text), count: 1, firstRow: row });
  }
  return spellings;
}

function parts(text: string): { words: string; number: string } {
  const found = /^(.*?)[\s\-_.#:]*0*(\d+)\s?([a-z]?)$/.exec(plain(text));
  const words = (found?.[1] ?? plain(text)).replace(/[\s\-_.#:]+/g, " ").trim();
  return { words, number: found === null ? "" : `${found[2] ?? ""}${found[3] ?? ""}` };
}

/** The longer word that each shorter one begins; none when two different ones would fit. */
function fullWords(spellings: readonly Spelling[]): Map<string, string> {
  const numbered = new Set(spellings.filter(({ number }) => number !== "").map(({ words }) => words));
  const full = new Map<string, string>();
  for (const words of numbered) {
    const longer = [...numbered].filter((other) => other.startsWith(words) && other !== words);
    const longest = longer.reduce((a, b) => (b.length > a.length ? b : a), words);
    if (longer.every((other) => longest.startsWith(other))) full.set(words, longest);
  }
  return full;
}

/** The spelling used most names the vessel; the first, when two are used as much. */
function nameGroup(
  group: readonly Spelling[],
  names: Map<string, string>,
  joined: { row: number; reason: string }[],
): void {
  const named = group.reduce((best, spelling) => (spelling.count > best.count ? spelling : best));
  for (const { text, firstRow } of group) {
    names.set(text, named.text);
    if (plain(text) !== plain(named.text))
      joined.push({ row: firstRow, reason: `${quoted(text)} is taken for ${quoted(named.text)}` });
  }
}

/** A vessel's name as typed: text, or a number. */
export const vesselText = (cell: unknown): string =>
  typeof cell === "string" ? cell.trim() : typeof cell === "number" ? String(cell) : "";

