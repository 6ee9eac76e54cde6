import { type Band } from "../bands/band";
import { isAbove, standing } from "../maths/compare";
import { ec25, isPlausible, quantities } from "../quantities";
import { doubts } from "./doubts";
import { type RootZoneReading, weakestFeedEc } from "./root-zone-reading";
import { saltRatio } from "./salt-ratio";

/** What one row of the log breaches, in the order in which it is said. */
export const rowFlagWords = [
  "check reading",
  "runoff pH low",
  "runoff pH high",
  "runoff EC low",
  "runoff EC high",
  "salt ratio high",
  "input pH low",
  "input pH high",
  "input EC high",
] as const;
export type RowFlag = (typeof rowFlagWords)[number];

/**
 * The salt ratio above which a runoff that is above its band is flagged as well, unless the grower sets another. Common
 * practice.
 */
export const usualRatioLimit = 1.5;

/**
 * What one row breaches: empty when every reading taken is in band, `undefined` when the runoff was not read and the
 * input is in band.
 *
 * Feeds the flag column. It looks at one row only: the judgement over several rows weighs it. A reading that is hard to
 * believe (EC 0.04 before the probe was in, 1800 typed for 1.8) is flagged "check reading" and not judged any further.
 * A high ratio by itself is no trouble, here as in the judgement: pots that leach little stand at 3 to 7 and grow
 * alike.
 *
 * Valid:    runoff limits of one method; a limit itself is in band; comparisons at the meter's resolution
 * Source:   bands: src/bands; [ku-hershey-1991] for the ratio; its limit: common practice
 *
 * @param ratioLimit the grower's own limit, which then holds whatever the runoff EC is
 * @example rowFlags({ runoffPh: 6, runoffEc: 4.1 }, bandFor("coir")) // ["runoff EC high"]
 */
export function rowFlags(row: RootZoneReading, band: Band, ratioLimit?: number): RowFlag[] | undefined {
  const { runoffPh, runoffEc, inputPh, inputEc } = row;
  const flags: RowFlag[] = [];
  if (doubts(row).length > 0) flags.push("check reading");
  const ph = sideOf(runoffPh, "ph", band.ph);
  if (ph !== "inside") flags.push(`runoff pH ${ph}`);
  const ec = sideOf(runoffEc, "ec", band.ec);
  if (ec !== "inside") flags.push(`runoff EC ${ec}`);
  if ((ratioLimit !== undefined || ec === "high") && isRatioHigh(row, ratioLimit ?? usualRatioLimit))
    flags.push("salt ratio high");
  const poured = sideOf(inputPh, "ph", band.ph);
  if (poured !== "inside") flags.push(`input pH ${poured}`);
  if (sideOf(inputEc, "ec", [0, band.feedEcHigh]) === "high") flags.push("input EC high");
  return flags.length === 0 && runoffPh === undefined && runoffEc === undefined ? undefined : flags;
}

/** A reading not taken, or not to be believed, breaches nothing. */
function sideOf(
  value: number | undefined,
  name: "ph" | "ec",
  limits: readonly [number, number],
): "low" | "inside" | "high" {
  return value === undefined || !isPlausible(value, name)
    ? "inside"
    : standing(value, limits, quantities[name].resolution);
}

function isRatioHigh({ inputEc, runoffEc }: RootZoneReading, limit: number): boolean {
  if (inputEc === undefined || runoffEc === undefined) return false;
  if (inputEc < weakestFeedEc || !isPlausible(inputEc, "ec") || !isPlausible(runoffEc, "ec")) return false;
  return isAbove(saltRatio(ec25(runoffEc), ec25(inputEc)), limit, quantities.saltRatio.resolution);
}
