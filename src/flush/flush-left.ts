import { isAbove } from "../maths/compare";
import { type Ec25, type Litres, quantities } from "../quantities";
import { meterTolerance } from "../readings/series-unit";
import { Refusal } from "../refusal";
import { fitWashout } from "./fit-washout";
import {
  believableEc,
  believableEcs,
  ecSetAside,
  type FlushReading,
  litresPoured,
  untilLastFilled,
} from "./flush-reading";
import { doubtfulPortions } from "./portions";
import { washingCourse } from "./washing-course";
import { reachable, washoutEc, washoutLitres } from "./washout";
import { inLitres, inMillisiemens } from "./words";

/** Below three readings a curve is a guess: two always lie on one. */
const fewestReadings = 3;

/**
 * A last portion that takes off less than half of what the fit expects is the bend of a flattening curve. Common
 * practice.
 */
const leastOfExpected = 0.5;

/** An amount of water still to pour, or an honest "cannot say", with the reasons for either. */
export interface FlushLeft {
  readonly litres: Litres | "cannot say";
  readonly reasons: readonly [string, ...string[]];
}

/**
 * Litres of water still needed, from the washout fitted to this pot's own readings.
 *
 * Errs to "cannot say": fewer than three readings, a curve that flattens or rises, or no litres written.
 *
 * Formula:  L = ln((EC last - ECw) / (ECt - ECw)) / r; r by `fitWashout`
 * Valid:    at least 3 readings of one flush, still falling
 * Source:   as `washoutEc`
 *
 * @returns L, 0 when the last reading is at the target
 * @throws {Refusal} `impossible` when the target does not lie above the water's EC
 */
export function flushLeft(readings: readonly FlushReading[], targetEc: Ec25, waterEc: Ec25): FlushLeft {
  const target = reachable(targetEc, waterEc);
  const filled = untilLastFilled(readings);
  const last = believableEc(filled.at(-1)?.ec);
  if (last instanceof Refusal) return cannotSay(last.message);
  const now = `runoff EC ${inMillisiemens(last)}, target ${inMillisiemens(target)}`;
  if (!isAbove(last, target, quantities.ec.resolution))
    return { litres: 0 as Litres, reasons: [`already there: ${now}`] };
  const doubt = doubtfulPortions(filled) ?? whyNot(filled);
  const ratePerLitre = doubt === undefined ? fittedRate(filled, waterEc) : undefined;
  if (ratePerLitre === undefined)
    return cannotSay(doubt ?? "the readings draw no falling curve", now, ...ecSetAside(filled));
  const slowing = fallsShort(filled, waterEc, ratePerLitre);
  if (slowing !== undefined) return cannotSay(slowing, now, ...ecSetAside(filled));
  const litres = washoutLitres(last, target, { waterEc, ratePerLitre });
  const far =
    litres > litresPoured(filled)
      ? ["this looks further ahead than the readings reach: trust the next reading more"]
      : [];
  const fit = `fitted to ${believableEcs(filled).length} readings: a litre carries off ${((1 - Math.exp(-ratePerLitre)) * 100).toFixed(1)} % of the excess`;
  return {
    litres,
    reasons: [`${inLitres(litres)} more; ${now}`, fit, ...far, "measure after each portion", ...ecSetAside(filled)],
  };
}

const cannotSay = (...reasons: [string, ...string[]]): FlushLeft => ({ litres: "cannot say", reasons });

function whyNot(filled: readonly FlushReading[]): string | undefined {
  const read = believableEcs(filled);
  if (read.length < fewestReadings)
    return `runoff EC read ${read.length === 1 ? "once" : `${read.length} times`} is too few: at least ${fewestReadings} readings needed`;
  const course = washingCourse(read.map(({ ec }) => ec));
  if (course === "flat") return "the last three readings are level: more water no longer helps";
  if (course === "rising") return "the runoff EC is rising: wait, then measure again";
  const first = read[0];
  if (first === undefined || litresPoured(filled.slice(first.row + 1)) === 0)
    return "no litres poured between the readings are written down";
  return undefined;
}

/** Whether the last fall is much smaller than the fitted curve says, by more than the meter's tolerance. */
function fallsShort(filled: readonly FlushReading[], waterEc: Ec25, ratePerLitre: number): string | undefined {
  const [before, last] = believableEcs(filled).slice(-2);
  if (before === undefined || last === undefined) return undefined;
  const between = litresPoured(filled.slice(before.row + 1));
  const expected = before.ec - washoutEc(before.ec, waterEc, { litres: between, ratePerLitre });
  const fall = before.ec - last.ec;
  const isShort =
    fall < leastOfExpected * expected && isAbove(expected, fall + meterTolerance(before.ec), quantities.ec.resolution);
  return isShort
    ? `flattening: the last portion took off ${inMillisiemens(fall)} where the fit expects ${inMillisiemens(expected)}`
    : undefined;
}

function fittedRate(filled: readonly FlushReading[], waterEc: Ec25): number | undefined {
  let poured = 0;
  const soFar = filled.map(({ litres }) => (poured += litres ?? 0) as Litres);
  const points = believableEcs(filled).map(({ row, ec }) => ({ litresSoFar: soFar[row] ?? (poured as Litres), ec }));
  return fitWashout(points, waterEc);
}
