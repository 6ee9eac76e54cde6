import { type Band } from "../bands/band";
import { judge, type JudgeOptions } from "./judgement/judge";
import { type PotJudgement, type PotStanding } from "./judgement/pot-judgement";
import { type PotReading } from "./judgement/pot-reading";
import { urgencies, type VerdictWord } from "./judgement/words";

/** A reading of one pot among several. */
export interface BenchReading extends PotReading {
  readonly vessel?: string | undefined;
}

/** Which trouble is seen to first among pots of one urgency, worst first. Common practice. */
const verdictOrder: readonly VerdictWord[] = [
  "salt buildup and pH out of range",
  "salt buildup",
  "too much water",
  "pH out of range",
  "check the meter",
  "short of feed",
  "confirm with a second reading",
  "cannot say",
  "in band",
];

/**
 * Which pot first: every pot judged by itself, the worst first. Readings of several pots are never weighed together.
 *
 * Feeds the round of a bench. Among pots alike the one that stands first in the log stays first.
 *
 * Formula:  by urgency, then by verdict; the work grows in step with the rows
 * Source:   common practice
 *
 * @param readings of all pots, in any order; rows of one moment keep theirs, and rows without a date in a log that has
 *   dates are left out
 * @example whichFirst([{ vessel: "A", runoffEc: 2.6 }], bandFor("coir"))[0].judgement.verdict // "in band"
 */
export function whichFirst(
  readings: readonly BenchReading[],
  band: Band,
  options: JudgeOptions = {},
): readonly PotStanding[] {
  const pots = [...byVessel(readings)].map(([vessel, rows]) => standingOf(vessel, rows, { band, options }));
  return pots.sort((a, b) => rankOf(a.judgement) - rankOf(b.judgement));
}

function standingOf(
  vessel: string | undefined,
  rows: readonly BenchReading[],
  given: { readonly band: Band; readonly options: JudgeOptions },
): PotStanding {
  const ordered = inTime(rows);
  return { vessel, judgement: judge(ordered, given.band, given.options), lastDay: ordered.at(-1)?.day };
}

/** Oldest first; a log without any date keeps the order of its rows. */
export function inTime<Reading extends PotReading>(rows: readonly Reading[]): readonly Reading[] {
  const isDated = rows.some(({ day }) => day !== undefined);
  return isDated ? rows.filter(({ day }) => day !== undefined).sort((a, b) => (a.day ?? 0) - (b.day ?? 0)) : rows;
}

/** The rows of each pot, in the order of their first appearance. */
export function byVessel<Reading extends BenchReading>(
  rows: readonly Reading[],
): ReadonlyMap<string | undefined, Reading[]> {
  const pots = new Map<string | undefined, Reading[]>();
  for (const row of rows) {
    const pot = pots.get(row.vessel);
    if (pot === undefined) pots.set(row.vessel, [row]);
    else pot.push(row);
  }
  return pots;
}

/** Lower is worse. */
export const rankOf = ({ urgency, verdict }: PotJudgement): number =>
  (urgencies.length - urgencies.indexOf(urgency)) * verdictOrder.length + verdictOrder.indexOf(verdict);
