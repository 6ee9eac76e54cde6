import { quantities } from "../../quantities";
import { columnOf } from "../columns/holds";
import { type Draft } from "./draft";
import { type CellProblem, type ColumnReading } from "../reading";

/** What a pH of feed and runoff is, all but always; an EC this high beside a pH below 3 is that pH. Common practice. */
const usualPh: readonly [number, number] = [4.5, 7.5];
const [lowestPh] = quantities.ph.plausible;

const sides = [
  { ec: "inputEc", ph: "inputPh", ecColumn: "input EC", phColumn: "input pH" },
  { ec: "runoffEc", ph: "runoffPh", ecColumn: "runoff EC", phColumn: "runoff pH" },
] as const;

interface Found {
  readonly draft: Draft;
  readonly problems: CellProblem[];
}

/** Leaves out an EC and a pH that stand in each other's column, and says so at both; whether it found such a pair. */
export function dropSwapped({ draft, problems }: Found, columns: readonly ColumnReading[]): boolean {
  let dropped = false;
  for (const { ec, ph, ecColumn, phColumn } of sides) {
    const phValue = draft[ph];
    if (phValue === undefined || !(phValue < lowestPh)) continue;
    const ecValue = draft[ec];
    if (ecValue === undefined || !(ecValue >= usualPh[0] && ecValue <= usualPh[1])) continue;
    dropped = true;
    draft[ec] = undefined;
    draft[ph] = undefined;
    const places = [ecColumn, phColumn].map((quantity) => columnOf(columns, quantity));
    for (let at = problems.length - 1; at >= 0; at -= 1)
      if (places.includes(problems[at]?.column ?? -1)) problems.splice(at, 1);
    const reason = `EC ${ecValue} and pH ${phValue} look as if they had changed places: neither is used`;
    for (const column of places) problems.push({ row: draft.row, column, used: false, reason });
  }
  return dropped;
}
