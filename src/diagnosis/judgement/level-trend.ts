import { isAbove, isBelow } from "../../maths/compare";
import { mannKendall } from "../../maths/mann-kendall";
import { quantities } from "../../quantities";
import { trendChance } from "./limits";
import { shareResolution } from "./reading-steps";

/** Where the latest readings of one quantity are heading. */
export interface LevelTrend {
  readonly trend: "rising" | "falling" | "none";
  /** The trend is told by two clear steps in a row alone: too few readings, or too restless ones, for more. */
  readonly inSteps: boolean;
}

/** Rising or falling beyond chance, or by three steps in a row that each exceed what a meter can be off. */
export function trendOf(values: readonly number[], name: "ph" | "ec"): LevelTrend {
  const { s, oneSided } = mannKendall(values.map((value, day) => ({ day, value })));
  if (s !== 0 && oneSided <= trendChance) return { trend: s > 0 ? "rising" : "falling", inSteps: false };
  const trend = s === 0 ? "none" : stepsOf(values, name);
  return { trend, inSteps: trend !== "none" };
}

function stepsOf(values: readonly number[], name: "ph" | "ec"): LevelTrend["trend"] {
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
