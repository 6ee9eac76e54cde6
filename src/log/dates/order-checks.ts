import { type PlacedRow } from "../in-time";
import { type LogRow } from "../log";

/** A row whose date stands out, and how. */
export interface DateDoubt {
  readonly row: number;
  readonly reason: string;
}

/**
 * A log with two readings on more than this share of its days is kept so; on fewer, the second is a slip of the date.
 */
const twoADayShare = 0.25;

/** Names the rows whose dates break the order of their vessel's rows, and dates used twice. All stay in the log. */
export function dateDoubts(rows: readonly LogRow[]): DateDoubt[] {
  const byVessel = new Map<string | undefined, PlacedRow[]>();
  for (const row of rows.filter(isPlaced)) {
    const own = byVessel.get(row.vessel);
    if (own) own.push(row);
    else byVessel.set(row.vessel, [row]);
  }
  return [...byVessel.values()].flatMap((own) => [...outOfOrder(own), ...usedTwice(own)]);
}

const isPlaced = (row: LogRow): row is PlacedRow => row.day !== undefined;

function outOfOrder(rows: readonly PlacedRow[]): DateDoubt[] {
  let steps = 0;
  for (let at = 1; at < rows.length; at += 1) steps += Math.sign(Number(rows[at]?.day) - Number(rows[at - 1]?.day));
  const direction = steps < 0 ? -1 : 1;
  const values = moments(rows, direction);
  if (neverFalls(values)) return [];
  const inOrder = longestRun(values);
  return rows
    .filter((_, at) => !inOrder.has(at))
    .map(({ row }) => ({ row, reason: "this date is out of order with the rows around it" }));
}

/** The rows' moments; a day without a time stands at no hour of its own, so it keeps step with the row before it. */
function moments(rows: readonly PlacedRow[], direction: number): number[] {
  let before = Number.NaN;
  return rows.map(({ day }) => {
    if (!Number.isInteger(day) || Math.floor(before) !== day) before = day;
    return before * direction;
  });
}

function neverFalls(values: readonly number[]): boolean {
  for (let at = 1; at < values.length; at += 1) if (Number(values[at]) < Number(values[at - 1])) return false;
  return true;
}

/**
 * Places of the longest run of values that never falls: what is left out is the fewest rows that explain the disorder.
 * Taken from the end, so that of two rows in the wrong order the later one is named.
 */
function longestRun(values: readonly number[]): ReadonlySet<number> {
  const tails: number[] = [];
  const next: (number | undefined)[] = [];
  for (let at = values.length - 1; at >= 0; at -= 1) {
    let low = 0;
    let high = tails.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (Number(values[Number(tails[middle])]) >= Number(values[at])) low = middle + 1;
      else high = middle;
    }
    next[at] = tails[low - 1];
    tails[low] = at;
  }
  const kept = new Set<number>();
  for (let at = tails.at(-1); at !== undefined; at = next[at]) kept.add(at);
  return kept;
}

function usedTwice(rows: readonly PlacedRow[]): DateDoubt[] {
  if (alwaysChanges(rows)) return [];
  const seen = new Set<number>();
  const again: PlacedRow[] = [];
  for (const row of rows) {
    if (seen.has(row.day)) again.push(row);
    seen.add(row.day);
  }
  if (again.length > seen.size * twoADayShare) return [];
  return again.map(({ row }) => ({
    row,
    reason: "this date is already used by an earlier row: two readings, or a slip?",
  }));
}

/** Whether the days only rise, or only fall: then none is used twice, and nearly every log's are so. */
function alwaysChanges(rows: readonly PlacedRow[]): boolean {
  const direction = Math.sign(Number(rows.at(-1)?.day) - Number(rows[0]?.day));
  for (let at = 1; at < rows.length; at += 1)
    if (Math.sign(Number(rows[at]?.day) - Number(rows[at - 1]?.day)) !== direction) return false;
  return direction !== 0;
}
