import {
  ec25, leachingFraction, leachingShare, litres, phShift, ph, ratioCeiling, saltRatio, verdict,
} from "../src/index";
import { eachCell, judged, single, whole } from "./answers";
import { bandIn } from "./band";
import { amount, flag, one, reading } from "./cells";
import { inOneCell, isBlank, rootZoneReadings } from "./root-zone";

/**
 * Salt ratio: runoff EC over input EC. 1 means what goes in comes out; read a high ratio beside the leaching fraction.
 * @customfunction SALTRATIO
 * @helpurl https://localhost:3000/docs/functions.html#saltratio
 * @param runoff_ec mS/cm at 25 C of what drained, cell or range
 * @param input_ec mS/cm at 25 C of what was poured in, cell or range
 * @returns no unit
 * @remarks Both readings on one scale. A blank or 0 is "not measured" and gives a blank; above 200 mS/cm it refuses, for that is uS/cm or ppm.
 * @example =RUNOFF.SALTRATIO(2.4, 1.5) -> 1.6
 * @example =RUNOFF.SALTRATIO({3;2.1}, {1.5;1.4}) -> {2;1.5}
 * @see [ku-hershey-1991], common practice
 */
export function saltratio(runoff_ec: any[][], input_ec: any[][]): any[][] {
  return eachCell(saltRatio, reading(runoff_ec, ec25, "runoff EC"), reading(input_ec, ec25, "input EC"));
}

/**
 * pH shift: runoff pH less input pH. Below 0 the pot turns the solution more acid, above 0 less acid.
 * @customfunction PHSHIFT
 * @helpurl https://localhost:3000/docs/functions.html#phshift
 * @param runoff_ph pH of what drained, cell or range
 * @param input_ph pH of what was poured in, cell or range
 * @returns pH units
 * @remarks A blank or 0 is "not measured" and gives a blank; outside 0 to 14 it refuses.
 * @example =RUNOFF.PHSHIFT(5.4, 5.9) -> -0.5
 * @see common practice
 */
export function phshift(runoff_ph: any[][], input_ph: any[][]): any[][] {
  return eachCell(phShift, reading(runoff_ph, ph, "runoff pH"), reading(input_ph, ph, "input pH"));
}

/**
 * Leaching fraction: the share of what was poured in that drained out again.
 * @customfunction LEACHFRACTION
 * @helpurl https://localhost:3000/docs/functions.html#leachfraction
 * @param runoff_volume litres, or any unit that both volumes share, cell or range
 * @param input_volume the same unit, cell or range
 * @returns 0 to 1
 * @remarks 0 runoff beside a measured input is a fraction of 0; on desktop versions that hand a blank over as 0 a runoff left blank reads so too. More runoff than input is refused.
 * @example =RUNOFF.LEACHFRACTION(0.4, 2) -> 0.2
 * @see [rhoades-1974], [ku-hershey-1991]
 */
export function leachfraction(runoff_volume: any[][], input_volume: any[][]): any[][] {
  const poured = { ...amount(input_volume, litres, "input volume") };
  return eachCell(leachingFraction, amount(runoff_volume, litres, "runoff volume"), { ...poured, read: unlessZero(poured.read) });
}

/** An input volume of 0 is a row on which nothing was poured: its answers are blank. */
function unlessZero<T>(read: (cell: unknown) => T | undefined): (cell: unknown) => T | undefined {
  return (cell) => {
    const value = read(cell);
    return value === 0 ? undefined : value;
  };
}

/**
 * Ratio ceiling: the salt ratio a bed settles at if it leaches this share and the roots take no salt. A line to hold a ratio against.
 * @customfunction RATIOCEILING
 * @helpurl https://localhost:3000/docs/functions.html#ratioceiling
 * @param leaching_fraction 0 to 1, cell or range
 * @returns no unit, 1 or more
 * @remarks A reference line, never a prediction: measured pots stood at 0.71 to 1.14 of it. Blank or 0 gives a blank; above 1 it refuses.
 * @example =RUNOFF.RATIOCEILING(0.2) -> 5
 * @see [handbook-60], [ku-hershey-1991]
 */
export function ratioceiling(leaching_fraction: any[][]): any[][] {
  return eachCell(ratioCeiling, reading(leaching_fraction, leachingShare, "leaching fraction"));
}

/**
 * Verdict: in band / salt buildup / pH out of range / salt buildup and pH out of range / confirm with a second reading / check the meter / cannot say.
 * @customfunction DIAGNOSE
 * @helpurl https://localhost:3000/docs/functions.html#diagnose
 * @param input_ph pH of what was poured in, column or row, oldest first
 * @param input_ec mS/cm at 25 C of what was poured in, column or row
 * @param runoff_ph pH of what drained, column or row
 * @param runoff_ec mS/cm at 25 C of what drained, column or row
 * @param band a text such as "coir" or "coir, heavy", or four cells: pH low, pH high, EC low, EC high
 * @param [leaching_fraction] 0 to 1: a high salt ratio is judged beside it
 * @param [explain] TRUE adds reasons, what to do next and when to measure again in the cell to the right
 * @returns words
 * @remarks Names a trouble only after two readings in a row outside the band by more than meters can be off (pH 0.1, EC 3 %); a high salt ratio alone is none. Runoff weaker than the band is "cannot say" with the reason. Soil: by trend, with wider doubt. Rows without runoff readings change nothing.
 * @example =RUNOFF.DIAGNOSE({5.9;5.9}, {2;2}, {6;6.1}, {2.8;3}, "coir") -> in band
 * @example =RUNOFF.DIAGNOSE({5.9;5.9}, {2;2}, {6;6.1}, {4.6;4.9}, "coir") -> salt buildup
 * @example =RUNOFF.DIAGNOSE({5.9;5.9}, {2;2}, {6;6.1}, {3;4.9}, "coir") -> confirm with a second reading
 * @see [ku-hershey-1991]
 * @see [usgs-nfm]
 * @see common practice
 */
export function diagnose(
  input_ph: any[][],
  input_ec: any[][],
  runoff_ph: any[][],
  runoff_ec: any[][],
  band: any[][],
  leaching_fraction?: any[][],
  explain?: any[][],
): any[][] {
  return whole(() => {
    const limits = bandIn(band);
    const readings = rootZoneReadings(input_ph, input_ec, runoff_ph, runoff_ec);
    const leachingFraction = one(reading(leaching_fraction, leachingShare, "leaching fraction"));
    const explained = flag(explain, "explain", false);
    if (limits === undefined || readings.every(isBlank)) return single(undefined);
    return judged(inOneCell(verdict(readings, limits, { leachingFraction })), explained);
  });
}
