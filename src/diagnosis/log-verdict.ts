import { type Band } from "../bands/band";
import { logInTime, type PlacedRow } from "../log/in-time";
import { type LogRow } from "../log/log";
import { type Share } from "../quantities";
import { leachingFraction } from "./leaching-fraction";
import { verdict, type Verdict } from "./verdict";

export interface LogVerdict extends Verdict {
  /** The rows of the grid it rests on. */
  readonly rows: readonly number[];
}

/**
 * The verdict on a log: its rows in order of time, and the leaching fraction of the latest row that tells both volumes.
 *
 * Feeds the pane and the command line, so that both say what DIAGNOSE says in a cell about the same rows.
 *
 * @param vessel only this vessel's rows; readings of several pots are never weighed together by the caller's leave
 * @example logVerdict([], bandFor("coir")).answer // "cannot say"
 */
export function logVerdict(rows: readonly LogRow[], band: Band, vessel?: string): LogVerdict {
  const placed = logInTime(rows, vessel).rows;
  const found = verdict(placed, band, { leachingFraction: latestLeachingFraction(placed) });
  return { ...found, rows: found.restsOn.flatMap((place) => placed[place]?.row ?? []) };
}

/** `undefined` where no row tells both volumes, or its two volumes contradict each other. */
function latestLeachingFraction(placed: readonly PlacedRow[]): Share | undefined {
  const row = placed.filter(({ inputLitres, runoffLitres }) => inputLitres !== undefined && runoffLitres !== undefined).at(-1);
  const [poured, drained] = [row?.inputLitres, row?.runoffLitres];
  if (poured === undefined || drained === undefined || !(poured > 0) || drained > poured) return undefined;
  return leachingFraction(drained, poured);
}
