import { holds } from "../columns/holds";
import { type LogQuantity } from "../log";
import { type CellProblem, type ColumnReading } from "../reading";
import { type Draft } from "./draft";
import { inAnotherUnit, type Multiple, threeFigures } from "./other-units";

/** So many times the readings around it, or so small a part of them: a decimal point that slipped. Common practice. */
const slipTimes = 8;
/** Readings before and after one, of the same vessel, that tell what is usual there. */
const reach = 2;

/** Quantities of which a multiple tells something; a pH or a temperature has none. */
const multiples = [
  ["input EC", "inputEc"],
  ["runoff EC", "runoffEc"],
  ["input volume", "inputLitres"],
  ["runoff volume", "runoffLitres"],
] as const satisfies readonly (readonly [LogQuantity, Multiple])[];

/**
 * Finds what stands out from its neighbours: 450 L among 0.4, 12 mS/cm among 1.4. What must be another unit is left
 * out; an EC that is only far off is used with a doubt, for it may be the trouble itself.
 */
export function dropOutliers(rows: readonly Draft[], columns: readonly ColumnReading[]): CellProblem[] {
  const vessels = [...byVessel(rows).values()];
  return multiples.flatMap(([quantity, field]) => {
    const column = columns.find((each) => holds(each, quantity));
    if (column === undefined) return [];
    return [...inAnotherUnit(rows, field, column), ...slips(vessels, field, column)];
  });
}

/** Single EC readings far above, and for the runoff also far below, what the same vessel shows before and after. */
function slips(vessels: readonly (readonly Draft[])[], field: Multiple, { column }: ColumnReading): CellProblem[] {
  if (field !== "inputEc" && field !== "runoffEc") return [];
  const found: CellProblem[] = [];
  for (const own of vessels) {
    if (allAlike(own, field)) continue;
    const read = own.filter((row) => row[field] !== undefined);
    const values = read.map((row) => Number(row[field]));
    for (const [at, draft] of read.entries()) {
      if (isLike(values[at], values[at - 1] ?? values[at + 1])) continue;
      const usual = usualAthreeFigures(values, at);
      const times = Number(values[at]) / Number(usual);
      const isOdd =
        times >= slipTimes || (times <= 1 / slipTimes && (field === "runoffEc" || draft.events.length === 0));
      if (!isOdd) continue;
      const said = `${threeFigures(Number(values[at]))} among readings near ${threeFigures(usual ?? 0)} mS/cm`;
      found.push({ row: draft.row, column, used: true, reason: `${said}: has a decimal point slipped? Measure again` });
    }
  }
  return found;
}

function byVessel(rows: readonly Draft[]): Map<string | undefined, Draft[]> {
  const found = new Map<string | undefined, Draft[]>();
  for (const row of rows) {
    const own = found.get(row.vessel);
    if (own) own.push(row);
    else found.set(row.vessel, [row]);
  }
  return found;
}

/** Whether every reading is like the one before it, so that none stands out: so it is with nearly all pots. */
function allAlike(rows: readonly Draft[], field: Multiple): boolean {
  let before: number | undefined;
  for (const row of rows) {
    const value = row[field];
    if (value === undefined) continue;
    if (before !== undefined && !isLike(value, before)) return false;
    before = value;
  }
  return true;
}

/**
 * Whether a reading is so near its neighbour that it cannot stand out: neighbours that agree are within `agreeing` of
 * the usual. Nearly all are, and are settled here.
 */
function isLike(value: number | undefined, neighbour: number | undefined): boolean {
  const times = Number(value) / Number(neighbour);
  return times < slipTimes / agreeing && times > agreeing / slipTimes;
}

/**
 * What the readings around one have in common: their middle, of two middles the nearer to it; where none of them stands
 * out from the others itself.
 */
function usualAthreeFigures(values: readonly number[], at: number): number | undefined {
  const around: number[] = [];
  for (let place = Math.max(0, at - reach); place <= Math.min(values.length - 1, at + reach); place += 1) {
    if (place !== at) around.push(values[place] ?? 0);
  }
  around.sort((a, b) => a - b);
  const [least, greatest] = [around[0], around.at(-1)];
  if (least === undefined || greatest === undefined || around.length < reach || greatest > least * agreeing)
    return undefined;
  const isBelow = Number(values[at]) < least;
  return around[Math.floor((isBelow ? around.length - 1 : around.length) / 2)];
}

/** Neighbours within this multiple of each other agree on what is usual. */
const agreeing = 3;
