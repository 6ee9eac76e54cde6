import { rankOf, shareDays } from "../../src/index";
import { type Findings } from "./findings";

/** Whether a pot asked for is the whole of a tab: no pot asked for, or a tab of that name without pots of its own. */
export const isTab = ({ placed, report: { reading } }: Findings, pot: string | undefined): boolean =>
  pot === undefined || (reading.vessels.length === 0 && placed.sheet === pot);

/**
 * Which of a book's logs is shown: the one that holds the pot asked for; of tabs that are a pot each the worst; else the first.
 */
export function shownOf(logs: readonly Findings[], pot: string | undefined): Findings {
  const [first] = logs;
  if (first === undefined) throw new RangeError("a book has a log to show");
  if (pot !== undefined) return logs.find((log) => log.report.reading.vessels.includes(pot) || isTab(log, pot)) ?? first;
  const readings = logs.map(({ report }) => report.reading);
  if (readings.some(({ vessels }) => vessels.length > 0) || !shareDays(readings)) return first;
  return logs.reduce((worst, log) => (rank(log) < rank(worst) ? log : worst));
}

/** Lower is worse; a log that is not judged comes last. */
const rank = ({ report: { judgement } }: Findings): number => (judgement === undefined ? Infinity : rankOf(judgement));
