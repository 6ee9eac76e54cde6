import { type Draft, type RowRead } from "./draft";
import { type LogRow } from "../log";
import { type CellProblem, type SetAside } from "../reading";
import { noDate } from "../dates/row-moment";

/** With fewer dated rows there is no foot to tell from the body. */
const datedRowsNeeded = 3;

/**
 * A date typed once over the rows of several vessels: a row without one, of a vessel that this day has not had yet, belongs to
 * the day above, and the row says so. Gives back what is said of the row.
 */
export function takeDayAbove({ draft, problems }: RowRead, rows: readonly LogRow[]): readonly CellProblem[] {
  const missing = problems.find(({ reason }) => reason === noDate);
  const day = rows.at(-1)?.day;
  if (missing === undefined || day === undefined || draft.vessel === undefined) return problems;
  for (let at = rows.length - 1; at >= 0 && rows[at]?.day === day; at -= 1) {
    const above = rows[at]?.vessel;
    if (above === undefined || above === draft.vessel) return problems;
  }
  draft.day = day;
  return problems.map((problem) => (problem === missing ? { ...missing, used: true, reason: "no date: taken for the day of the row above" } : problem));
}

/** At the foot of a dated log, figures without a date are sums or averages that nobody has labelled. */
export function dropFoot(log: { readonly rows: Draft[]; readonly problems: CellProblem[]; readonly setAside: SetAside[] }): void {
  if (log.rows.filter(({ day }) => day !== undefined).length < datedRowsNeeded) return;
  for (let last = log.rows.at(-1); last !== undefined && isFoot(last, log.problems); last = log.rows.at(-1)) {
    const { row } = last;
    log.rows.pop();
    log.setAside.push({ row, reason: "no date, below the last dated row: it looks like a total or an average" });
    while ((log.problems.at(-1)?.row ?? -1) >= row) log.problems.pop();
  }
}

const isFoot = (row: LogRow, problems: readonly CellProblem[]): boolean =>
  row.day === undefined && row.notes === undefined && row.vessel === undefined &&
  problems.some((problem) => problem.row === row.row && problem.reason === noDate);
