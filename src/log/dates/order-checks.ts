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
  const byVessel = new Map<string | undefined, LogRow[]>();
  for (const row of rows) {
    if (row.day === undefined) continue;
    const own = byVessel.get(row.vessel);
    if (own) own.push(row);
    else byVessel.set(row.vessel, [row]);
  }
  return [...byVessel.values()].flatMap((own) => [...outOfOrder(own), ...usedTwice(own)]);
}

const dayOf = (row: LogRow): number => row.day ?? 0;

function outOfOrder(rows: readonly LogRow[]): DateDoubt[] {
  let steps = 0;
  rows.forEach((row, at) => {
    const before = rows[at - 1];
    if (before !== undefined) steps += Math.sign(dayOf(row) - dayOf(before));
  });
  const direction = steps < 0 ? -1 : 1;
  const inOrder = longestRun(moments(rows, direction));
  return rows
    .filter((_, at) => !inOrder.has(at))
    .map(({ row }) => ({ row, reason: "this date is out of order with the rows around it" }));
}

/** The rows' moments; a day without a time stands at no hour of its own, so it keeps step with the row before it. */
function moments(rows: readonly LogRow[], direction: number): number[] {
  const found: number[] = [];
  for (const row of rows) {
    const day = dayOf(row);
    const before = (found.at(-1) ?? Number.NaN) * direction;
    found.push((Number.isInteger(day) && Math.floor(before) === day ? before : day) * direction);
  }
  return found;
}

/**
 * Places of the longest run of values that never falls: what is left out is the fewest rows that explain the disorder.
 * Taken from the end, so that of two rows in the wrong order the later one is named.
 */
function longestRun(values: readonly number[]): ReadonlySet<number> {
  const tails: number[] = [];
  const next: number[] = [];
  for (let at = values.length - 1; at >= 0; at -= 1) {
    let low = 0;
    let high = tails.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((values[tails[middle] ?? 0] ?? 0) >= (values[at] ?? 0)) low = middle + 1;
      else high = middle;
    }
    next[at] = tails[low - 1] ?? -1;
    tails[low] = at;
  }
  const kept = new Set<number>();
  for (let at = tails.at(-1) ?? -1; at >= 0; at = next[at] ?? -1) kept.add(at);
  return kept;
}

function usedTwice(rows: readonly LogRow[]): DateDoubt[] {
  const seen = new Map<number, number>();
  const again: LogRow[] = [];
  for (const row of rows) {
    const day = dayOf(row);
    const times = seen.get(day) ?? 0;
    if (times > 0) again.push(row);
    seen.set(day, times + 1);
  }
  if (again.length > seen.size * twoADayShare) return [];
  return again.map(({ row }) => ({
    row,
    reason: "this date is already used by an earlier row: two readings, or a slip?",
  }));
}
