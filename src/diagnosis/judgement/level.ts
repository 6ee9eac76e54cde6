import { type Band } from "../../bands/band";
import { isAbove, isBelow } from "../../maths/compare";
import { latest as latestIn } from "../../maths/latest";
import { median } from "../../maths/median";
import { quantities } from "../../quantities";
import { type Entry } from "./entry";
import { type LevelTrend, trendOf } from "./level-trend";
import { riseShare, steadyReadings, steadyShare, toleranceOf, trendReadings } from "./limits";
import { isLeap, isRiseBy } from "./reading-steps";

/** One reading against its limits: outside counts only when it is further out than the meters can be off. */
export type Side = "inside" | "barely low" | "barely high" | "low" | "high";

/**
 * What stands behind the latest reading: a second one or a trend, nothing because it is the only one, or nothing yet.
 */
export type Witness = "agreed" | "sole" | "once";

/** Where one quantity of the runoff stands. */
export interface Level extends LevelTrend {
  readonly latest: number;
  readonly before: number | undefined;
  readonly side: Side;
  readonly sideBefore: Side | undefined;
  readonly witness: Witness;
  /** Beyond the limit it breaches, in its own unit; 0 inside. */
  readonly beyond: number;
  /** Well above the reading before, or rising by its trend. */
  readonly leaptUp: boolean;
  /** Two readings of one day that agree. */
  readonly sameDay: boolean;
  /** So far from the reading before that no trend explains it. */
  readonly leapt: boolean;
  /** The two readings before the latest both outside on one side. */
  readonly outTwiceBefore: boolean;
  /** The last eight within a narrow span. */
  readonly steady: boolean;
  readonly values: readonly number[];
  readonly places: readonly number[];
}

/**
 * What the two latest readings, and the trend of the latest eight, say; `undefined` where the last two rows do not
 * tell it.
 */
export function levelOf(rows: readonly Entry[], name: "ph" | "ec", band: Band, water = 0): Level | undefined {
  const read = latestIn(rows, trendReadings, ({ runoffPh, runoffEc, day, place }) => {
    const value = name === "ph" ? runoffPh : runoffEc === undefined ? undefined : runoffEc - water;
    return value === undefined ? undefined : { value, day, place };
  });
  const [latest, before] = [read.at(-1), read.at(-2)];
  if (latest === undefined || !rows.slice(-2).some(({ place }) => place === latest.place)) return undefined;
  const values = read.map(({ value }) => value);
  const side = sideOf(latest.value, name, band);
  const sideBefore = before === undefined ? undefined : sideOf(before.value, name, band);
  const heading = trendOf(values, name);
  const { trend } = heading;
  const leapt = before !== undefined && isLeap(latest.value, before.value, name);
  const outward = !leapt && ((side === "high" && trend === "rising") || (side === "low" && trend === "falling"));
  const third = read.at(-3);
  const agreed = side === sideBefore || outward;
  const [low, high] = band[name];
  return {
    latest: latest.value,
    before: before?.value,
    side,
    sideBefore,
    witness: agreed ? "agreed" : before === undefined ? "sole" : "once",
    beyond: Math.max(0, low - latest.value, latest.value - high),
    ...heading,
    leaptUp:
      trend === "rising" ||
      (before !== undefined && isRiseBy(riseShare, before.value, latest.value)),
    sameDay: side === sideBefore && isSameDay(latest.day, before?.day),
    leapt,
    outTwiceBefore: isOut(sideBefore) && third !== undefined && sideOf(third.value, name, band) === sideBefore,
    steady: isSteady(values),
    values,
    places: [before, latest].flatMap((each) => each?.place ?? []),
  };
}

const isOut = (side: Side | undefined): boolean => side === "low" || side === "high";

const isSameDay = (day: number | undefined, other: number | undefined): boolean =>
  day !== undefined && other !== undefined && Math.floor(day) === Math.floor(other);

/** Where one value stands against a band. */
export function sideOf(value: number, name: "ph" | "ec", band: Band): Side {
  const { resolution } = quantities[name];
  const [low, high] = band[name];
  if (isBelow(value, low, resolution))
    return isAbove(value, low - toleranceOf(name, low, band), resolution) ? "barely low" : "low";
  if (isAbove(value, high, resolution))
    return isBelow(value, high + toleranceOf(name, high, band), resolution) ? "barely high" : "high";
  return "inside";
}

function isSteady(values: readonly number[]): boolean {
  if (values.length < steadyReadings) return false;
  const middle = median(values);
  return values.every((value) => Math.abs(value - middle) <= steadyShare * middle);
}
