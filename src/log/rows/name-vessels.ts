import { quoted } from "../../cells/text";
import { columnOf } from "../columns/holds";
import { type ColumnReading } from "../reading";
import { type BodyState } from "./body-state";
import { joinVessels } from "./vessels";

/** Each name once, over the rows of its pot: a merged cell leaves the rows below it blank. */
export function fillVessels(state: BodyState, columns: readonly ColumnReading[]): void {
  const column = columnOf(columns, "vessel");
  const named = state.rows.filter(({ vessel }) => vessel !== undefined);
  const names = new Set(named.map(({ vessel }) => vessel));
  const isMerged =
    names.size === named.length && named.length * 2 <= state.rows.length && state.rows[0]?.vessel !== undefined;
  if (column < 0 || !isMerged) return;
  let above: string | undefined;
  for (const draft of state.rows) {
    if (draft.vessel !== undefined) above = draft.vessel;
    else if (above !== undefined) {
      draft.vessel = above;
      state.problems.push({
        row: draft.row,
        column,
        used: true,
        reason: `no pot named: taken for ${quoted(above)} above`,
      });
    }
  }
}

/** Gives every row the one name of its pot, and gives back the names in the order of their first appearance. */
export function nameVessels(state: BodyState, columns: readonly ColumnReading[]): string[] {
  // Where no column names the pots, headings over their rows do, in the first.
  const column = Math.max(0, columnOf(columns, "vessel"));
  const { names, joined } = joinVessels(state.rows);
  const inOrder = new Set<string>();
  for (const draft of state.rows) {
    const name = draft.vessel === undefined ? undefined : names.get(draft.vessel);
    draft.vessel = name;
    if (name !== undefined) inOrder.add(name);
  }
  for (const { row, reason } of joined) state.problems.push({ row, column, used: true, reason });
  return [...inOrder];
}
