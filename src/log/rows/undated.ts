import { type RowRead } from "./draft";
import { type LogRow } from "../log";
import { type CellProblem } from "../reading";
import { noDate } from "../dates/row-moment";

/**
 * A date typed once over several rows: a row without one, of a vessel that this day has not had yet, or of a later
 * clock or part of the day than the row above, belongs to the day above, and says so. Gives back what is said of the
 * row.
 */
export function takeDayAbove(
  { draft, problems, clock, partOfDay }: RowRead,
  above: Above | undefined,
  rows: readonly LogRow[],
): readonly CellProblem[] {
  const missing = problems.find(({ reason }) => reason === noDate);
  const day = above?.draft.day;
  if (missing === undefined || above === undefined || day === undefined) return problems;
  const laterClock = isLater(clock, above.clock);
  if (!laterClock && !isLater(partOfDay, above.partOfDay) && !isOtherVessel(draft.vessel, day, rows)) return problems;
  draft.day = laterClock ? Math.floor(day) + Number(clock) : day;
  const said = "no date: taken for the day of the row above";
  return problems.map((problem) => (problem === missing ? { ...missing, used: true, reason: said } : problem));
}

const isLater = (one: number | undefined, other: number | undefined): boolean =>
  one !== undefined && other !== undefined && one > other;

/** What the row above says of its moment. */
export type Above = Pick<RowRead, "draft" | "clock" | "partOfDay">;

/** Whether the day has rows of other vessels, and none of this one. */
function isOtherVessel(vessel: string | undefined, day: number, rows: readonly LogRow[]): boolean {
  if (vessel === undefined) return false;
  for (let at = rows.length - 1; at >= 0 && rows[at]?.day === day; at -= 1) {
    const above = rows[at]?.vessel;
    if (above === undefined || above === vessel) return false;
  }
  return true;
}
