import { type Band } from "../bands/band";
import { isAbove, standing } from "../maths/compare";
import { ec25, isPlausible, quantities } from "../quantities";
import { saltRatio } from "./salt-ratio";

/** What one row of the log breaches, in the order in which it is said. */
export const rowFlagWords = [
  "check reading",
  "runoff pH low",
  "runoff pH high",
  "runoff EC low",
  "runoff EC high",
  "salt ratio high",
] as const;
export type RowFlag = (typeof rowFlagWords)[number];

/**
 * What was read on one irrigation: pH, and EC in mS/cm at 25 C; a reading not taken is `undefined`. Plain numbers, because
 * a judgement weighs by itself whether a reading can be believed, where a formula would refuse it.
 */
export interface RootZoneReading {
  readonly inputPh?: number | undefined;
  readonly inputEc?: number | undefined;
  readonly runoffPh?: number | undefined;
  readonly runoffEc?: number | undefined;
}

/** The salt ratio above which a row is flagged, unless the grower sets another. Common practice. */
export const usualRatioLimit = 1.5;

/** Below this input EC, in mS/cm, the pot was given water, not feed, and a ratio against it says nothing. Common practice. */
export const weakestFeedEc = 0.5;

/**
 * What one row breaches: empty when every reading taken is in band, `undefined` when the runoff was not read at all.
 *
 * Feeds the flag column. It looks at one row only: the verdict over several rows weighs it. A reading that is hard to
 * believe (EC 0.04 before the probe was in, 1800 typed for 1.8) is flagged "check reading" and not judged any further.
 *
 * Valid:    runoff limits of one method; a limit itself is in band; comparisons at the meter's resolution
 * Source:   bands: src/bands/band-table.ts; ratio limit: common practice
 *
 * @example rowFlags({ runoffPh: 6, runoffEc: 4.1 }, bandFor("coir")) // ["runoff EC high"]
 */
export function rowFlags(row: RootZoneReading, band: Band, ratioLimit: number = usualRatioLimit): RowFlag[] | undefined {
  const { runoffPh, runoffEc } = row;
  if (runoffPh === undefined && runoffEc === undefined) return undefined;
  const flags: RowFlag[] = [];
  if (!isBelievable(row)) flags.push("check reading");
  if (runoffPh !== undefined && isPlausible(runoffPh, "ph")) {
    const ph = standing(runoffPh, band.ph, quantities.ph.resolution);
    if (ph !== "inside") flags.push(`runoff pH ${ph}`);
  }
  if (runoffEc !== undefined && isPlausible(runoffEc, "ec")) {
    const ec = standing(runoffEc, band.ec, quantities.ec.resolution);
    if (ec !== "inside") flags.push(`runoff EC ${ec}`);
  }
  if (isRatioHigh(row, ratioLimit)) flags.push("salt ratio high");
  return flags;
}

function isBelievable({ inputPh, inputEc, runoffPh, runoffEc }: RootZoneReading): boolean {
  const believed = (value: number | undefined, name: "ph" | "ec"): boolean => value === undefined || isPlausible(value, name);
  // Plain water may read almost nothing, but not less than a meter can show.
  const inputEcBelieved = inputEc === undefined || (inputEc >= quantities.ec.resolution && inputEc <= quantities.ec.plausible[1]);
  return believed(inputPh, "ph") && inputEcBelieved && believed(runoffPh, "ph") && believed(runoffEc, "ec");
}

function isRatioHigh({ inputEc, runoffEc }: RootZoneReading, limit: number): boolean {
  if (inputEc === undefined || runoffEc === undefined) return false;
  if (inputEc < weakestFeedEc || !isPlausible(inputEc, "ec") || !isPlausible(runoffEc, "ec")) return false;
  return isAbove(saltRatio(ec25(runoffEc), ec25(inputEc)), limit, quantities.saltRatio.resolution);
}
