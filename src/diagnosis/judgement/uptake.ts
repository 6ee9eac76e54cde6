import { median } from "../../maths/median";
import { type Entry, litresKept, shareDrained } from "./entry";
import { littleRunoff, muchRunoff, noRunoff } from "./limits";

/** What the volumes of the rows tell. */
export interface WaterBalance {
  /** The share that drains, by the latest waterings that tell both volumes, or as given. */
  readonly share: number | undefined;
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
  const shares = rows.flatMap((entry) => shareDrained(entry) ?? []).slice(-shareWaterings);
  const share = shares.length > 0 ? median(shares) : given;
  const poured = all
    .flatMap(({ inputLitres }) => (inputLitres !== undefined && inputLitres > 0 ? [inputLitres] : []))
    .slice(-shareWaterings);
  const kept = all.flatMap((entry) => litresKept(entry) ?? []).slice(-shareWaterings);
  return {
    share,
    runoff: share === undefined ? undefined : runoffWord(share),
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
 * What the latest two waterings left in the pot over the median of those before. Not by the day: how many waterings
 * between two rows went unlogged nobody can tell, and a wider gap is no sick plant.
 */
function drinksNow(rows: readonly Entry[]): number | undefined {
  const kept = rows.flatMap((entry) => litresKept(entry) ?? []);
  if (kept.length < fewestWaterings) return undefined;
  const baseline = median(kept.slice(0, -latestWaterings));
  return baseline > 0 ? median(kept.slice(-latestWaterings)) / baseline : undefined;
}
