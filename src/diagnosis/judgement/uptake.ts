import { latest } from "../../maths/latest";
import { median } from "../../maths/median";
import { daysBetween, type Entry, litresKept, shareDrained, tells } from "./entry";
import { littleRunoff, muchRunoff, noRunoff } from "./limits";

/** What the volumes of the rows tell. */
export interface WaterBalance {
  /** The share that drains, by the latest waterings that tell both volumes, or as given. */
  readonly share: number | undefined;
  /** By the volumes; by the notes ("hardly drains") where no volume tells. */
  readonly runoff: "none" | "little" | "enough" | "much" | undefined;
  /** Litres of an ordinary watering. */
  readonly litres: number | undefined;
  /** Litres kept by the pot at an ordinary watering. */
  readonly kept: number | undefined;
  /** What it drinks now as a share of before; `undefined` without enough waterings. */
  readonly drinks: number | undefined;
}

/** So many waterings make "now". Common practice. */
const latestWaterings = 2;
const shareWaterings = 5;
/** Where no volume tells, so many of the latest notes may. Common practice. */
const notedRows = 2;
/** Fewer waterings are no baseline. Common practice. */
const fewestWaterings = 4;

/**
 * The balance of the waterings; rows of a flush must not be among them. What drained before a flush explains nothing
 * after it;
 * what the pot takes and drinks is the same pot's.
 *
 * @param before the waterings before the latest flush
 */
export function waterBalance(
  rows: readonly Entry[],
  given: number | undefined,
  before: readonly Entry[] = [],
): WaterBalance {
  const all = [...before, ...rows];
  const shares = latest(rows, shareWaterings, shareDrained);
  const share = shares.length > 0 ? median(shares) : given;
  const isScant = rows.slice(-notedRows).some((entry) => tells(entry, "little drain"));
  const poured = latest(all, shareWaterings, ({ inputLitres = 0 }) => (inputLitres > 0 ? inputLitres : undefined));
  const kept = latest(all, shareWaterings, litresKept);
  return {
    share,
    runoff: share !== undefined ? runoffWord(share) : isScant ? "little" : undefined,
    litres: poured.length === 0 ? undefined : median(poured),
    kept: kept.length === 0 ? undefined : median(kept),
    drinks: drinksNow(all),
  };
}

function runoffWord(share: number): NonNullable<WaterBalance["runoff"]> {
  if (share < noRunoff) return "none";
  if (share < littleRunoff) return "little";
  return share <= muchRunoff ? "enough" : "much";
}

/**
 * What the latest two waterings left in the pot over the median of those before; low only where it is low by the day
 * as well. By the watering alone a pot watered more often looks sick, and by the day alone one whose waterings went
 * unlogged: the milder of the two is told.
 */
function drinksNow(rows: readonly Entry[]): number | undefined {
  const told = rows.filter((entry) => shareDrained(entry) !== undefined);
  if (told.length < fewestWaterings) return undefined;
  const byWatering = latestOverBefore(told.flatMap((entry) => litresKept(entry) ?? []));
  const byDay = latestOverBefore(told.flatMap((entry, at) => litresADay(told[at - 1], entry) ?? []));
  return byWatering === undefined || byDay === undefined ? byWatering : Math.max(byWatering, byDay);
}

/** Litres a day since the watering before. */
function litresADay(before: Entry | undefined, now: Entry): number | undefined {
  const days = daysBetween(before, now);
  const kept = litresKept(now);
  return kept === undefined || days === undefined || !(days > 0) ? undefined : kept / days;
}

/** The latest two over the median of those before; `undefined` where that says nothing. */
function latestOverBefore(litres: readonly number[]): number | undefined {
  const before = litres.slice(0, -latestWaterings);
  const baseline = before.length === 0 ? 0 : median(before);
  return baseline > 0 ? median(litres.slice(-latestWaterings)) / baseline : undefined;
}
