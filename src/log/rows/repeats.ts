import { isBlank } from "../../cells/text";

type Cells = readonly unknown[];

/**
 * Finds the earlier row that a row repeats in every cell; hashes first, for a long log has many rows and few repeats.
 */
export function repeatFinder(rows: readonly Cells[]): (row: number, under: string | undefined) => number | undefined {
  /** By the end of its hash the latest row, and for each row the one before it; one more, so that 0 is none. */
  const latest = new Int32Array(2 ** Math.ceil(Math.log2(rows.length + 1)));
  const before = new Int32Array(rows.length);
  const hashes = new Int32Array(rows.length);
  const headings = new Map<number, string | undefined>();
  return (row, under) => {
    const cells = rows[row] ?? [];
    const hash = hashOf(cells);
    const end = hash & (latest.length - 1);
    if (under !== undefined) headings.set(row, under);
    for (let other = (latest[end] ?? 0) - 1; other >= 0; other = (before[other] ?? 0) - 1)
      if (hashes[other] === hash && headings.get(other) === under && sameCells(cells, rows[other] ?? [])) return other;
    hashes[row] = hash;
    before[row] = latest[end] ?? 0;
    latest[end] = row + 1;
    return undefined;
  };
}

function sameCells(one: Cells, other: Cells): boolean {
  const length = Math.max(one.length, other.length);
  for (let at = 0; at < length; at += 1) {
    const [a, b] = [one[at], other[at]];
    if (!Object.is(a, b) && !(isBlank(a) && isBlank(b))) return false;
  }
  return true;
}

/** FNV-1a over the cells that are filled, its upper half folded into the lower; 32 bits. */
function hashOf(cells: Cells): number {
  let hash = fnvStart;
  for (let at = 0; at < cells.length; at += 1) {
    const cell = cells[at];
    if (typeof cell === "number") hash = Math.imul(Math.imul(hash ^ at ^ cell, fnvPrime) ^ (cell * finest), fnvPrime);
    else if (typeof cell === "string" && !isBlank(cell)) hash = withText(hash ^ at, cell);
  }
  return hash ^ (hash >>> 16);
}

function withText(start: number, text: string): number {
  let hash = start;
  for (let place = 0; place < text.length; place += 1) hash = Math.imul(hash ^ text.charCodeAt(place), fnvPrime);
  return hash;
}

/** The constants of FNV-1a, 32 bits: draft-eastlake-fnv, section 2. */
const fnvStart = 0x811c9dc5;
const fnvPrime = 0x01000193;
/** Figures of a log differ in their fourth decimal at the latest; finer ones are told apart cell by cell. */
const finest = 10_000;
