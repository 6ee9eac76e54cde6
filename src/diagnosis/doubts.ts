import { isPlausible, quantities, written } from "../quantities";
import { type RootZoneReading, weakestFeedEc } from "./root-zone-reading";

/**
 * Why a reading cannot be trusted, one fact a line; empty when nothing speaks against it.
 *
 * Feeds the verdict before anything else: a ghost reading or a wrong unit must never start a flush. Plain water may
 * read almost nothing, so an input EC is doubted only when it is too high, or below what a meter can show.
 *
 * Source:   believable ranges: src/quantities.ts
 */
export function doubts({ inputPh, inputEc, runoffPh, runoffEc }: RootZoneReading): string[] {
  const inputEcBelieved =
    inputEc === undefined || (inputEc >= quantities.ec.resolution && inputEc <= quantities.ec.plausible[1]);
  const said = [
    ...doubt("input pH", inputPh, "ph"),
    ...(inputEcBelieved ? [] : [hardToBelieve("input EC", inputEc, "ec")]),
    ...doubt("runoff pH", runoffPh, "ph"),
    ...doubt("runoff EC", runoffEc, "ec"),
  ];
  if (said.length > 0 || inputEc === undefined || runoffEc === undefined || inputEc < weakestFeedEc) return said;
  const ratio = runoffEc / inputEc;
  if (isPlausible(ratio, "saltRatio")) return [];
  return [
    `runoff EC ${written(runoffEc, "ec")} against input EC ${written(inputEc, "ec")}: the two cannot both be right`,
  ];
}

function doubt(called: string, value: number | undefined, name: "ph" | "ec"): string[] {
  return value === undefined || isPlausible(value, name) ? [] : [hardToBelieve(called, value, name)];
}

function hardToBelieve(called: string, value: number, name: "ph" | "ec"): string {
  const [low, high] = quantities[name].plausible;
  return `${called} ${written(value, name).replace("pH ", "")} is hard to believe: usual is ${low} to ${high}`;
}
