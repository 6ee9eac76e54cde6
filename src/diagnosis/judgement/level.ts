import { type Band } from "../../bands/band";
import { isAbove, isBelow } from "../../maths/compare";
import { mannKendall } from "../../maths/mann-kendall";
import { median } from "../../maths/median";
import { quantities } from "../../quantities";
import { type Entry } from "./entry";
import { riseShare, steadyReadings, steadyShare, toleranceOf, trendChance, trendReadings } from "./limits";

/** One reading against its limits: outside counts only when it is further out than the meters can be off. */
export type Side = "inside" | "barely low" | "barely high" | "low" | "high";

/**
 * What stands behind the latest reading: a second one or a trend, nothing because it is the only one, or nothing yet.
 */
export type Witness = "agreed" | "sole" | "once";

/** Where one quantity of the runoff stands. */
export interface Level {
  readonly latest: number;
  readonly before: number | undefined;
  readonly side: Side;
  readonly sideBefore: Side | undefined;
  readonly witness: Witness;
  /** Beyond the limit it breaches, in its own unit; 0 inside. */
  readonly beyond: number;
  readonly trend: "rising" | "falling" | "none";
  /** The trend is told by two clear steps in a row alone: too few readings, or too restless ones, for more. */
  readonly inSteps: boolean;
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
  const read = rows.flatMap(({ runoffPh, runoffEc, day, place }) => {
    const value = name === "ph" ? runoffPh : runoffEc === undefined ? undefined : runoffEc - water;
    return value === undefined ? [] : [{ value, day, place }];
  });
  const [latest, before] = [read.at(-1), read.at(-2)];
  if (latest === undefined || !rows.slice(-2).some(({ place }) => place === latest.place)) return undefined;
  const values = read.slice(-trendReadings).map(({ value }) => value);
  const side = sideOf(latest.value, name, band);
  const sideBefore = before === undefined ? undefined : sideOf(before.value, name, band);
  const { trend, inSteps } = trendOf(values, name);
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
    trend,
    inSteps,
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

/** Rising or falling beyond chance, or by three steps in a row that each exceed what a meter can be off. */
function trendOf(values: readonly number[], name: "ph" | "ec"): Pick<Level, "trend" | "inSteps"> {
  const { s, oneSided } = mannKendall(values.map((value, day) => ({ day, value })));
  if (s !== 0 && oneSided <= trendChance) return { trend: s > 0 ? "rising" : "falling", inSteps: false };
  const trend = s === 0 ? "none" : stepsOf(values, name);
  return { trend, inSteps: trend !== "none" };
}

function stepsOf(values: readonly number[], name: "ph" | "ec"): Level["trend"] {
  const three = values.slice(-3);
  const steps = three.slice(1).map((value, at) => value - (three[at] ?? value));
  const most = Math.max(...three);
  const [least, resolution] =
    name === "ph"
      ? [toleranceStep.ph, quantities.ph.resolution]
      : [toleranceStep.ecShare * most, shareResolution * most];
  if (steps.length === 2 && steps.every((step) => isAbove(step, least, resolution))) return "rising";
  if (steps.length === 2 && steps.every((step) => isBelow(step, -least, resolution))) return "falling";
  return "none";
}

/** A step between neighbours that is more than the meter: pH, and EC as a share. As `toleranceOf`. */
const toleranceStep = { ph: 0.1, ecShare: 0.05 } as const;

/**
 * Further from the reading before than a root zone goes between two waterings: half as much EC again, 0.7 of a pH
 * unit. Common practice.
 */
const leapSize = { ecShare: 0.5, ph: 0.7 } as const;

function isLeap(latest: number, before: number, name: "ph" | "ec"): boolean {
  if (name === "ec") return isRiseBy(leapSize.ecShare, before, latest) || isFallBy(leapSize.ecShare, before, latest);
  return isAbove(Math.abs(latest - before), leapSize.ph, quantities.ph.resolution);
}

/**
 * A step of EC from one reading to the next, as a share of the one before: the same step in mS/cm is more on a weak
 * drain, and the same share is the same judgement at any strength.
 */
export const isRiseBy = (share: number, before: number, latest: number): boolean =>
  isAbove(latest, before * (1 + share), shareResolution * Math.abs(before));

/** The mirror of `isRiseBy`. */
export const isFallBy = (share: number, before: number, latest: number): boolean =>
  isBelow(latest, before * (1 - share), shareResolution * Math.abs(before));

/** At a thousandth of the reading, so that no unit and no strength decides. */
const shareResolution = 0.001;

function isSteady(values: readonly number[]): boolean {
  if (values.length < steadyReadings) return false;
  const middle = median(values);
  return values.every((value) => Math.abs(value - middle) <= steadyShare * middle);
}
