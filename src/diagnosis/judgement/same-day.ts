import { isAbove } from "../../maths/compare";
import { quantities } from "../../quantities";
import { type Entry, tells } from "./entry";
import { type Facts } from "./facts";

/** Hours within which a pot that was given nothing reads the same; without hours the day counts. Common practice. */
const sameHours = 6;
const hoursADay = 24;
/** Further apart than two samples of one pot are: EC as a ratio, and pH. Common practice. */
const apart = { ecTimes: 1.5, ph: 0.7 } as const;

/**
 * Two readings a few hours apart, one in its band and one out, that cannot both be true, whichever came first: the
 * two figures and whose they are.
 *
 * Errs to doubt: a standard and a third sample cost ten minutes.
 *
 * Source:   common practice
 */
export function sameDayApart({ evidence, ec, ph }: Facts): ReadonlyMap<"ec" | "ph", readonly [number, number]> {
  const [before, now] = evidence.slice(-2);
  const found = new Map<"ec" | "ph", readonly [number, number]>();
  if (before === undefined || now === undefined || !isSameTime(before, now) || isChanged(now)) return found;
  for (const [name, level] of [["ec", ec], ["ph", ph]] as const) {
    if (level?.before === undefined || level.side === level.sideBefore) continue;
    if (isApart(level.before, level.latest, name)) found.set(name, [level.before, level.latest]);
  }
  return found;
}

function isSameTime({ day: before }: Entry, { day: now }: Entry): boolean {
  if (before === undefined || now === undefined) return false;
  const isHourTold = !Number.isInteger(before) && !Number.isInteger(now);
  return isHourTold ? now - before <= sameHours / hoursADay : Math.floor(now) === Math.floor(before);
}

/** Something was done in between that moves a reading. */
const isChanged = (now: Entry): boolean =>
  tells(now, "feed change", "plain water", "drench", "repotting", "topped up", "tank diluted", "tank changed", "calibration");

const isApart = (before: number, now: number, name: "ec" | "ph"): boolean =>
  name === "ec"
    ? isAbove(Math.max(before, now), apart.ecTimes * Math.min(before, now), quantities.ec.resolution)
    : isAbove(Math.abs(now - before), apart.ph, quantities.ph.resolution);
