import { noDate } from "../dates/row-moment";
import { type Side } from "../columns/side-columns";
import { type CellProblem } from "../reading";
import { type Draft } from "./draft";

const inputFields = ["inputEc", "inputPh", "inputLitres"] as const satisfies readonly (keyof Draft)[];

interface Log {
  readonly rows: Draft[];
  readonly problems: CellProblem[];
}

/**
 * Where feed and runoff stand in rows of their own, the two of one day and pot become one reading: the runoff's row,
 * which names the feed's row too. A row without the other side stays as it is.
 */
export function joinSides({ rows, problems }: Log, sideAt: (row: number) => Side | undefined): void {
  const open = new Map<string, Draft>();
  const gone = new Set<Draft>();
  let above: Draft | undefined;
  for (const draft of rows) {
    const side = sideAt(draft.row);
    if (side === undefined) continue;
    if (above !== undefined && sideAt(above.row) !== side) takeFromAbove(draft, above, problems);
    above = draft;
    const key = `${Math.floor(draft.day ?? Number.NaN)}|${draft.vessel ?? ""}`;
    const other = open.get(key);
    open.delete(key);
    if (other === undefined || sideAt(other.row) === side) {
      open.set(key, draft);
      continue;
    }
    const [feed, runoff] = side === "runoff" ? [other, draft] : [draft, other];
    gone.add(feed);
    join(feed, runoff);
  }
  rows.splice(0, rows.length, ...rows.filter((draft) => !gone.has(draft)));
}

/** A day or a pot typed once over the two rows. */
function takeFromAbove(draft: Draft, above: Draft, problems: CellProblem[]): void {
  draft.vessel ??= above.vessel;
  if (above.day === undefined || draft.vessel !== above.vessel) return;
  const at = problems.findIndex(({ row, reason }) => row === draft.row && reason === noDate);
  const missing = problems[at];
  if (missing === undefined) return;
  draft.day = above.day;
  problems[at] = { ...missing, used: true, reason: "no date: taken for the day of the row above" };
}

function join(feed: Draft, runoff: Draft): void {
  for (const field of inputFields) (runoff[field] as number | undefined) ??= feed[field];
  runoff.feedRow = feed.row;
  runoff.solutionCelsius ??= feed.solutionCelsius;
  runoff.airCelsius ??= feed.airCelsius;
  runoff.humidityPercent ??= feed.humidityPercent;
  runoff.notes = [feed.notes, runoff.notes].filter((note) => note !== undefined).join("; ") || undefined;
  runoff.events = [
    ...feed.events,
    ...runoff.events.filter(({ kind }) => !feed.events.some((event) => event.kind === kind)),
  ];
  runoff.plant =
    feed.plant === undefined && runoff.plant === undefined ? undefined : { ...feed.plant, ...runoff.plant };
  const unread = [...(feed.unread ?? []), ...(runoff.unread ?? [])];
  if (unread.length > 0) runoff.unread = unread;
}
