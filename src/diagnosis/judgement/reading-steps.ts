import { isAbove, isBelow } from "../../maths/compare";
import { quantities } from "../../quantities";

/**
 * Further from the reading before than a root zone goes between two waterings: half as much EC again, 0.7 of a pH
 * unit. Common practice.
 */
const leapSize = { ecShare: 0.5, ph: 0.7 } as const;

export function isLeap(latest: number, before: number, name: "ph" | "ec"): boolean {
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
export const shareResolution = 0.001;
