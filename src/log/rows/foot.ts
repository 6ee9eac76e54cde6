import { noDate } from "../dates/row-moment";
import { type LogRow } from "../log";
import { type CellProblem, type SetAside } from "../reading";
import { type Draft } from "./draft";

/** With fewer dated rows there is no foot to tell from the body. */
const datedRowsNeeded = 3;
/** A sum or an average is written with two decimals at the most. */
const rounding = 0.006;
/** One figure alone can be the average by chance. */
const figuresNeeded = 2;

const measured = [
  "inputEc",
  "inputPh",
  "runoffEc",
  "runoffPh",
  "inputLitres",
  "runoffLitres",
  "solutionCelsius",
  "airCelsius",
  "humidityPercent",
] as const satisfies readonly (keyof LogRow)[];

/**
 * At the foot of a dated log, figures without a date that are the sums or averages of the rows above are no reading,
 * though nobody has labelled them; after a blank row one such figure is enough. Any other undated row stays, and says
 * so.
 */
export function dropFoot(
  log: { readonly rows: Draft[]; readonly problems: CellProblem[]; readonly setAside: SetAside[] },
  isBlankAbove: (row: number) => boolean,
): void {
  for (let last = log.rows.at(-1); last !== undefined && isUndated(last, log.problems); last = log.rows.at(-1)) {
    const body = log.rows.filter(({ day }) => day !== undefined);
    if (body.length < datedRowsNeeded || !sumsUp(last, body, isBlankAbove(last.row) ? 1 : figuresNeeded)) return;
    const { row } = last;
    log.rows.pop();
    log.setAside.push({
      row,
      reason: "no date, below the last dated row, and as the rows above add up: it looks like a total or an average",
    });
    while ((log.problems.at(-1)?.row ?? -1) >= row) log.problems.pop();
  }
}

const isUndated = (row: LogRow, problems: readonly CellProblem[]): boolean =>
  row.day === undefined && row.notes === undefined && row.vessel === undefined &&
  problems.some((problem) => problem.row === row.row && problem.reason === noDate);

function sumsUp(row: LogRow, body: readonly LogRow[], needed: number): boolean {
  const figures = measured.filter((field) => row[field] !== undefined);
  return (
    figures.length >= needed &&
    figures.every((field) =>
      isSummary(
        row[field] ?? Number.NaN,
        body.flatMap((one) => one[field] ?? []),
      ),
    )
  );
}

/** The sum, the mean, the least or the greatest of the values above. */
function isSummary(value: number, values: readonly number[]): boolean {
  if (values.length === 0) return false;
  let [sum, least, greatest] = [0, Infinity, -Infinity];
  for (const each of values) [sum, least, greatest] = [sum + each, Math.min(least, each), Math.max(greatest, each)];
  return [sum, sum / values.length, least, greatest].some(
    (known) => Math.abs(value - known) <= rounding * Math.max(1, Math.abs(known)),
  );
}
